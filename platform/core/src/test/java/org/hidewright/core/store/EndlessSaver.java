package org.hidewright.core.store;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;

/**
 * Saves one known text after the other until it is killed. What is saved is acknowledged on the one stream, by its number;
 * where a save has come to is told on the other.
 */
final class EndlessSaver {
    /** Long enough that writing takes its time. */
    private static final int SLIPS = 2_000;

    /** While the version before is kept; the steps of that are not told apart. */
    private static final String KEEP = "KEEP";

    /** What it tells. */
    static final List<String> STEPS =
            List.of(SaveStep.WRITE.name(), SaveStep.SYNC.name(), KEEP, SaveStep.RENAME.name());

    private EndlessSaver() {}

    /** The text saved by the save of a number; each is different, and longer or shorter than the one before. */
    static String text(int number) {
        StringBuilder text = new StringBuilder("{\"hidewright\": 1, \"name\": \"Save " + number + "\", \"slips\": [\n");
        for (int i = 0; i < SLIPS + 500 * (number % 3); i++) {
            text.append(
                    "  {\"id\": \"slip-" + i + "\", \"calculator\": \"thickness\", \"questions\": {\"thickness\": \""
                            + number + "." + i + " mm\"}},\n");
        }
        return text + "  {\"id\": \"last\", \"calculator\": \"thickness\"}\n]}\n";
    }

    private static Project project(int number) {
        return ProjectReader.read(text(number)).project().orElseThrow();
    }

    /** Dawdles a moment before each step, so that a kill finds the short ones too. */
    private static final class Telling implements Disk {
        private final Path file;
        private final PrintStream phases;
        private final SplittableRandom random =
                new SplittableRandom(ProcessHandle.current().pid());

        Telling(Path file, PrintStream phases) {
            this.file = file;
            this.phases = phases;
        }

        @Override
        public void begins(SaveStep step, Path of) throws IOException {
            phases.print((of.equals(file) ? step.name() : KEEP) + "\n");
            phases.flush();
            if (random.nextBoolean()) {
                long until = System.nanoTime() + random.nextLong(1_000_000);
                while (System.nanoTime() < until) {
                    Thread.onSpinWait();
                }
            }
        }
    }

    public static void main(String[] arguments) throws Exception {
        ProjectFile opened = ProjectFile.open(Path.of(arguments[0]));
        Disk telling = new Telling(Path.of(arguments[0]).toRealPath(), System.err);
        for (int number = 1; ; number++) {
            opened = opened.save(project(number), telling);
            System.err.print("BETWEEN\n");
            System.err.flush();
            System.out.print(number + "\n");
            System.out.flush();
        }
    }
}
