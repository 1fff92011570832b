package org.hidewright.distribution;

import static org.hidewright.distribution.HostilePacking.TEXTS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.jar.JarFile;

/** Signed jars. Nobody’s signature is asked for or trusted; one that does not hold says that the jar is not what its author gave away. */
final class HostileSignatures {
    private static final String CHANGED =
            "{file} was not started: it is signed, and was changed since. Get it again from its author, or take it out of {addons}.";
    private static final String BLOCK = "META-INF/STRANGER.EC";

    private final JarSigning signing;

    /** @param scratch an empty folder for keys */
    HostileSignatures(Path scratch) throws IOException, InterruptedException, GeneralSecurityException {
        signing = new JarSigning(scratch);
    }

    List<HostileJar> jars() throws IOException {
        ZipBytes headers = signed("signed-headers");
        String manifest = new String(headers.content(JarFile.MANIFEST_NAME), StandardCharsets.UTF_8);
        byte[] later = manifest.replace("Bundle-Version: 1.0.0", "Bundle-Version: 1.0.9")
                .getBytes(StandardCharsets.UTF_8);
        return List.of(
                HostileJar.of("signed-whole", signed("signed-whole").bytes()), // though its key ran out
                HostileJar.of(
                        "signed-changed",
                        signed("signed-changed").changed(TEXTS, texts()).bytes(),
                        CHANGED),
                HostileJar.of(
                        "signed-more",
                        signed("signed-more")
                                .with("net/example/odd/More.class", "")
                                .bytes(),
                        CHANGED),
                HostileJar.of(
                        "signed-less", signed("signed-less").without(TEXTS).bytes(), CHANGED),
                HostileJar.of(
                        "signed-headers",
                        headers.changed(JarFile.MANIFEST_NAME, later).bytes(),
                        CHANGED),
                HostileJar.of(
                        "signed-by-nobody",
                        signed("signed-by-nobody").without(BLOCK).bytes(),
                        CHANGED),
                HostileJar.of(
                        "signed-badly",
                        signed("signed-badly").changed(BLOCK, texts()).bytes(),
                        CHANGED));
    }

    private ZipBytes signed(String id) throws IOException {
        return ZipBytes.of(signing.signed(HostileJar.sound(id).packed()));
    }

    private static byte[] texts() {
        return "odd.title = Another".getBytes(StandardCharsets.UTF_8);
    }
}
