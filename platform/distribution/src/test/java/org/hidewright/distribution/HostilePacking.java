package org.hidewright.distribution;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Jars that are torn, or packed as no honest one is: none of them is started, and none is unpacked anywhere. */
final class HostilePacking {
    static final String CLASS = StrangeBundle.file("Odd");
    static final String TEXTS = "net/example/odd/messages.properties";
    static final String DESCRIPTION = "OSGI-INF/net.example.odd.Odd.xml";
    /** What would show that a name was believed. */
    static final String CLIMBED = "climbed";

    private static final String UNREADABLE =
            "{file} was not started: it cannot be read as a bundle. Copy it again, or take it out of {addons}.";
    private static final String DAMAGED =
            "{file} was not started: what is in it is not what was packed into it. Copy it again, or take it out of {addons}.";
    private static final String LEADS_OUT =
            "{file} was not started: the name of a file in it leads out of the folder it lies in, as no honest jar does. "
                    + "Take it out of {addons}, and do not unpack it.";
    private static final String TOO_MUCH =
            "{file} was not started: it unpacks to more than a bundle needs (100 MB, 1 MB for one text, or 65535 files). "
                    + "Take it out of {addons}, or ask its author for a smaller one.";
    private static final String DOUBLED =
            "{file} was not started: a file is in it twice, and nobody can tell which is meant. "
                    + "Ask its author to pack it again, or take it out of {addons}.";

    private static final int MANY = 100_000;
    private static final int BOMB = 200 << 20;

    private HostilePacking() {}

    /** @param scratch a folder of the test, that an absolute name points into */
    static List<HostileJar> jars(Path scratch) throws IOException {
        List<HostileJar> jars = new ArrayList<>(torn());
        jars.addAll(climbing(scratch));
        jars.addAll(bombs());
        jars.add(HostileJar.of("many", many(), TOO_MUCH));
        jars.add(
                HostileJar.of("doubled", sound("doubled").with(CLASS, "another").bytes(), DOUBLED));
        return jars;
    }

    private static ZipBytes sound(String id) throws IOException {
        return ZipBytes.of(HostileJar.sound(id).packed());
    }

    private static List<HostileJar> torn() throws IOException {
        byte[] whole = HostileJar.sound("torn").packed();
        byte[] directory = whole.clone();
        Arrays.fill(directory, whole.length - 400, whole.length - 100, (byte) 'U');
        return List.of(
                HostileJar.of("empty", new byte[0], UNREADABLE),
                HostileJar.of("text", "buy thread".getBytes(StandardCharsets.UTF_8), UNREADABLE),
                HostileJar.of("half", Arrays.copyOf(whole, whole.length / 2), UNREADABLE),
                HostileJar.of("tail", Arrays.copyOfRange(whole, whole.length / 2, whole.length), UNREADABLE),
                HostileJar.of("directory", directory, UNREADABLE),
                HostileJar.of(
                        "sum-of-class", sound("sum-of-class").wrongSum(CLASS).bytes(), DAMAGED),
                HostileJar.of(
                        "sum-of-texts", sound("sum-of-texts").wrongSum(TEXTS).bytes(), DAMAGED),
                HostileJar.of(
                        "sum-of-manifest",
                        sound("sum-of-manifest").wrongSum(JarFile.MANIFEST_NAME).bytes(),
                        DAMAGED));
    }

    private static List<HostileJar> climbing(Path scratch) throws IOException {
        List<HostileJar> jars = new ArrayList<>();
        List<String> names = List.of(
                "../../" + CLIMBED,
                "a/../../../" + CLIMBED,
                scratch.resolve(CLIMBED).toString(),
                "..\\..\\" + CLIMBED,
                "\\\\bench\\share\\" + CLIMBED,
                "C:\\" + CLIMBED,
                "c:/" + CLIMBED);
        for (String name : names) {
            String id = "climbing-" + jars.size();
            jars.add(HostileJar.of(id, sound(id).with(name, CLIMBED).bytes(), LEADS_OUT));
        }
        byte[] inner = StrangeBundle.named("net.example.inner").packed();
        String up = "../../../../" + CLIMBED;
        jars.add(HostileJar.of(
                "climbing-class-path",
                ZipBytes.of(HostileJar.sound("climbing-class-path")
                                .header("Bundle-ClassPath", ".," + up + ".jar")
                                .packed())
                        .with(up + ".jar", inner)
                        .bytes(),
                LEADS_OUT));
        jars.add(HostileJar.of(
                "climbing-library",
                ZipBytes.of(HostileJar.sound("climbing-library")
                                .header("Bundle-NativeCode", up + ".so")
                                .packed())
                        .with(up + ".so", inner)
                        .bytes(),
                LEADS_OUT));
        // Nothing is unpacked, so that a link is a file like any other
        jars.add(HostileJar.of(
                "link", sound("link").link("link", "../../" + CLIMBED).bytes()));
        return jars;
    }

    private static List<HostileJar> bombs() throws IOException {
        byte[] long200MB = new byte[BOMB];
        Arrays.fill(long200MB, (byte) ' ');
        byte[] long50MB = Arrays.copyOf(long200MB, BOMB / 4);
        return List.of(
                HostileJar.of(
                        "bomb-of-texts",
                        sound("bomb-of-texts").changed(TEXTS, long200MB).bytes(),
                        TOO_MUCH),
                HostileJar.of(
                        "bomb-of-manifest",
                        sound("bomb-of-manifest")
                                .changed(JarFile.MANIFEST_NAME, long50MB)
                                .bytes(),
                        TOO_MUCH),
                HostileJar.of(
                        "bomb-of-description",
                        sound("bomb-of-description")
                                .changed(DESCRIPTION, long50MB)
                                .bytes(),
                        TOO_MUCH),
                HostileJar.of(
                        "bomb-inside",
                        ZipBytes.of(HostileJar.sound("bomb-inside")
                                        .header("Bundle-ClassPath", ".,inner.jar")
                                        .packed())
                                .with("inner.jar", long200MB)
                                .bytes(),
                        TOO_MUCH),
                HostileJar.of(
                        "bomb-of-template",
                        ZipBytes.of(StrangeBundle.named("net.example.bomb-of-template")
                                        .header("Hidewright-Templates", "bomb-of-template.json")
                                        .packed())
                                .with("bomb-of-template.json", long50MB)
                                .bytes(),
                        TOO_MUCH));
    }

    private static byte[] many() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(JarFile.MANIFEST_NAME));
            zip.write(HostileManifests.head("many").getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < MANY; i++) {
                zip.putNextEntry(new ZipEntry("f/" + i));
            }
        }
        return bytes.toByteArray();
    }
}
