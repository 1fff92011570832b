package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reference pages of the contract are made of its comments: whatever others see of it has one. */
class UncommentedMembersTest {
    @TempDir
    Path folder;

    @Test
    void everythingOfTheContractSaysWhatItIs() throws IOException {
        List<Path> sources;
        try (Stream<Path> files = Files.walk(Path.of("../../api"))) {
            sources = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> file.toString().replace('\\', '/').contains("/src/main/java/"))
                    .toList();
        }
        assertTrue(sources.size() > 150, "sources: " + sources.size());
        assertEquals(List.of(), UncommentedMembers.in(sources));
    }

    @Test
    void whatSaysNothingIsFound() throws IOException {
        Path file = Files.writeString(folder.resolve("Rivet.java"), """
                /** A rivet. */
                public final class Rivet implements Comparable<Rivet> {
                    /** Its cap. */
                    public static final int CAP = 9;
                    public static final int POST = 3;
                    private int set;

                    /** Sets it. */
                    public void set() {}

                    public int post() { return POST; }

                    protected void loosen() {}

                    void look() {}

                    @Override
                    public int compareTo(Rivet other) { return 0; }

                    /** Sides. */
                    public enum Side {
                        FRONT,
                        /** The other. */
                        BACK
                    }

                    public interface Setter {
                        void strike();
                    }

                    static final class Inner {
                        public void nobodySeesIt() {}
                    }
                }
                """);
        assertEquals(
                List.of(
                        "Rivet.java:5 POST",
                        "Rivet.java:11 post",
                        "Rivet.java:13 loosen",
                        "Rivet.java:22 FRONT",
                        "Rivet.java:27 Setter",
                        "Rivet.java:28 strike"),
                UncommentedMembers.in(List.of(file)));
    }
}
