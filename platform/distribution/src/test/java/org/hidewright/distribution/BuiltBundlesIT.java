package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The bundles as built, held against the rules of the house. */
class BuiltBundlesIT {

    private static final Pattern NAME_AND_VERSION = Pattern.compile("(.+)-(\\d[^-]*)\\.jar");

    @Test
    void everyBundleKeepsToWhatItMaySee() throws IOException {
        List<String> breaches = new ArrayList<>();
        List<Path> bundles = new ArrayList<>(BuiltProgram.bundles());
        bundles.addAll(BuiltProgram.samples());
        assertTrue(bundles.size() > 5, "only these were looked at: " + bundles);
        for (Path bundle : bundles) {
            breaches.addAll(WhoMaySeeWhom.breaches(BuiltProgram.manifest(bundle)));
        }
        assertEquals(List.of(), breaches);
    }

    @Test
    void everyPartThatIsShippedHasItsLicenceListed() throws IOException {
        String listed = Files.readString(Path.of("..", "..", "docs", "licences.md"));
        List<String> missing = new ArrayList<>();
        for (Path part : BuiltProgram.parts()) {
            Matcher name = NAME_AND_VERSION.matcher(part.getFileName().toString());
            assertTrue(name.matches(), "a part without a version: " + part.getFileName());
            if (!listed.contains("| " + name.group(1) + " | " + name.group(2) + " |")) {
                missing.add(part.getFileName().toString());
            }
        }
        assertTrue(BuiltProgram.parts().size() > 5, "only these were looked at: " + BuiltProgram.parts());
        assertEquals(List.of(), missing);
    }

    @Test
    void theContractShowsNoTypeOfAThirdParty() throws Exception {
        List<String> foreign = new ArrayList<>();
        int looked = 0;
        for (String name : classesOfTheContract()) {
            Class<?> type = Class.forName(name, false, BuiltBundlesIT.class.getClassLoader());
            for (String other : ForeignTypes.shownBy(type)) {
                foreign.add(name + " shows " + other);
            }
            looked++;
        }
        assertTrue(looked > 10, "only " + looked + " classes were looked at");
        assertEquals(List.of(), foreign);
    }

    private static List<String> classesOfTheContract() throws IOException {
        List<String> names = new ArrayList<>();
        Path contract = BuiltProgram.bundles().stream()
                .filter(path -> path.getFileName().toString().startsWith("org.hidewright.api.contract"))
                .findFirst()
                .orElseThrow();
        try (JarFile jar = new JarFile(contract.toFile())) {
            jar.stream()
                    .map(entry -> entry.getName())
                    .filter(entry -> entry.startsWith("org/hidewright/api/") && entry.endsWith(".class"))
                    .filter(entry -> !entry.endsWith("package-info.class"))
                    .forEach(entry -> names.add(entry.substring(0, entry.length() - ".class".length())
                            .replace('/', '.')));
        }
        return names;
    }
}
