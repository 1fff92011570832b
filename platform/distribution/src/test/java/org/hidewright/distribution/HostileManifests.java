package org.hidewright.distribution;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;

/** Jars whose manifests are none, lie, or want what they cannot have. */
final class HostileManifests {
    private static final String UNREADABLE =
            "{file} was not started: it cannot be read as a bundle. Copy it again, or take it out of {addons}.";
    private static final String NAMELESS =
            "{file} was not started: it is a jar without a bundle’s name. Ask its author for the bundle, or take it out of {addons}.";
    private static final String LACKS =
            "{bundle} was not started: it needs %s, and nothing here offers it. Add the bundle it came with, or ask its author."
                    + HostileJar.UNTIL;
    private static final String PART =
            "{file} was not started: it wants to become a part of %s, which belongs to the program. "
                    + "Ask its author for a bundle of its own, or take it out of {addons}.";
    private static final String NAME_OF_PROGRAM =
            "{file} was not started: it has the name %s, which belongs to the program. "
                    + "Ask its author for a bundle with a name of its own, or take it out of {addons}.";
    private static final String NAME_TAKEN =
            "{file} was not started: it has the name of another bundle, %s, which %s brings and which is used. Keep one of the two.";

    private HostileManifests() {}

    static List<HostileJar> jars() throws IOException {
        List<HostileJar> jars = new ArrayList<>(unreadable());
        jars.addAll(wanting());
        jars.addAll(takingNames());
        jars.addAll(takingParts());
        return jars;
    }

    /** What every manifest of a bundle begins with. */
    static String head(String id) {
        return "Manifest-Version: 1.0\nBundle-ManifestVersion: 2\nBundle-SymbolicName: net.example." + id + "\n";
    }

    private static HostileJar manifest(String name, String text, Charset charset, String... told) {
        byte[] jar = ZipBytes.of(new byte[0])
                .with(JarFile.MANIFEST_NAME, text.getBytes(charset))
                .bytes();
        return HostileJar.of(name, jar, told);
    }

    private static HostileJar manifest(String name, String text, String... told) {
        return manifest(name, text, StandardCharsets.UTF_8, told);
    }

    private static List<HostileJar> unreadable() throws IOException {
        return List.of(
                HostileJar.of(
                        "no-manifest",
                        ZipBytes.of(HostileJar.sound("no-manifest").packed())
                                .without(JarFile.MANIFEST_NAME)
                                .bytes(),
                        UNREADABLE),
                manifest("utf-16", head("utf-16"), StandardCharsets.UTF_16, UNREADABLE),
                manifest(
                        "latin",
                        head("latin") + "Bundle-Name: für\nBundle-Activator: net.example.Gone\n",
                        StandardCharsets.ISO_8859_1,
                        "f\ufffdr was not started: it broke down while starting (net.example.Gone not found by {bundle}). Tell its author."
                                + HostileJar.UNTIL),
                manifest("no-headers", head("no-headers") + "this is no header\n", UNREADABLE),
                manifest("contradicting", head("one") + "Bundle-SymbolicName: net.example.two\n", UNREADABLE),
                // Nothing is wrong with a long line, and nothing is done with it
                manifest("long-line", head("long-line") + "X-Long: " + "x".repeat((1 << 20) - 200) + "\n"),
                manifest("nameless", "Manifest-Version: 1.0\nBundle-ManifestVersion: 2\n", UNREADABLE),
                manifest("library", "Manifest-Version: 1.0\n", NAMELESS),
                manifest("name-of-a-path", head("../../odd one"), NAMELESS),
                manifest("version", head("version") + "Bundle-Version: soon\n", UNREADABLE),
                manifest("format", head("format").replace("ManifestVersion: 2", "ManifestVersion: 99"), UNREADABLE),
                manifest("capabilities", head("capabilities") + "Provide-Capability: " + capabilities(), UNREADABLE),
                HostileJar.of(
                        "called-at-length",
                        HostileJar.starting("called-at-length", "throw new IllegalStateException(\"no awl\");")
                                .header("Bundle-Name", "N\u001b[2J\u202e" + "x".repeat(10_000))
                                .packed(),
                        "N [2J " + "x".repeat(94)
                                + "… was not started: it broke down while starting (no awl). Tell its author."
                                + HostileJar.UNTIL));
    }

    /** So many that reading them takes a while, and the first is that of the system itself. */
    private static String capabilities() {
        StringBuilder all = new StringBuilder("osgi.ee;osgi.ee=JavaSE;version:Version=99");
        for (int i = 0; i < 10_000; i++) {
            all.append(",\n com.example.c").append(i).append(";size:Long=9223372036854775807");
        }
        return all.append('\n').toString();
    }

    private static List<HostileJar> wanting() throws IOException {
        return List.of(
                HostileJar.of(
                        "wants-package",
                        HostileJar.sound("wants-package")
                                .header("Import-Package", "com.example.buckles")
                                .packed(),
                        LACKS.formatted("com.example.buckles")),
                HostileJar.of(
                        "wants-contract",
                        HostileJar.sound("wants-contract")
                                .header("Import-Package", "org.hidewright.api.calculator;version=\"[2,3)\"")
                                .packed(),
                        "{bundle} was not started: it needs org.hidewright.api.calculator [2.0.0,3.0.0), and this workbench offers 1.3.0. "
                                + "Install a build of it made for what is here, or update the workbench."
                                + HostileJar.UNTIL),
                HostileJar.of(
                        "wants-bundle",
                        HostileJar.sound("wants-bundle")
                                .header("Require-Bundle", "com.example.buckles")
                                .packed(),
                        LACKS.formatted("com.example.buckles")),
                HostileJar.of(
                        "wants-press",
                        HostileJar.sound("wants-press")
                                .header("Require-Capability", "com.example.press;filter:=\"(tons=40)\"")
                                .packed(),
                        LACKS.formatted("com.example.press (tons=40)")));
    }

    private static List<HostileJar> takingNames() throws IOException {
        List<HostileJar> jars = new ArrayList<>();
        for (String own : List.of("org.hidewright.core", "org.apache.felix.framework", "system.bundle")) {
            jars.add(
                    HostileJar.of("name-of-" + own, StrangeBundle.named(own).packed(), NAME_OF_PROGRAM.formatted(own)));
        }
        for (String taken : List.of("org.hidewright.documents", "org.hidewright.thickness")) {
            jars.add(HostileJar.of(
                    "name-of-" + taken,
                    StrangeBundle.named(taken).packed(),
                    NAME_TAKEN.formatted(taken, taken + ".jar")));
        }
        byte[] twin = StrangeBundle.named("net.example.twin").packed();
        jars.add(HostileJar.of("twin-1", twin));
        jars.add(
                HostileJar.of(
                        "twin-2",
                        twin,
                        "{file} was not started: another bundle of the same name and version lies in the folders. Keep one of the two."));
        jars.add(HostileJar.of(
                "twin-3",
                StrangeBundle.named("net.example.twin")
                        .header("Bundle-Version", "2.0")
                        .packed(),
                NAME_TAKEN.formatted("net.example.twin", "twin-1.jar")));
        return jars;
    }

    private static List<HostileJar> takingParts() throws IOException {
        List<HostileJar> jars = new ArrayList<>();
        for (String host : List.of("org.hidewright.catalogue", "org.hidewright.core", "org.hidewright.straps")) {
            jars.add(HostileJar.of("part-of-" + host, part("x", host).packed(), PART.formatted(host)));
        }
        jars.add(HostileJar.of(
                "part-of-framework",
                part("x", "system.bundle;extension:=framework").packed(),
                PART.formatted("system.bundle")));
        jars.add(HostileJar.of(
                "part-of-nothing",
                part("part-of-nothing", "com.example.gone").packed(),
                LACKS.formatted("com.example.gone")));
        // It would be preferred for its version, and the program lose its papers
        jars.add(HostileJar.of(
                "offering-libraries",
                HostileJar.sound("offering-libraries")
                        .header(
                                "Export-Package",
                                "org.apache.pdfbox.io;version=3.0.99,org.apache.fontbox.ttf;version=3.0.99,"
                                        + "org.apache.commons.logging;version=1.9")
                        .packed()));
        return jars;
    }

    private static StrangeBundle part(String id, String host) {
        return StrangeBundle.named("net.example." + id)
                .without("Import-Package")
                .header("Fragment-Host", host);
    }
}
