package org.hidewright.distribution;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.util.zip.ZipFile;
import jdk.security.jarsigner.JarSigner;

/** Signs jars with a key that its owner made alone, and that ran out long ago: it says who somebody claims to be, no more. */
final class JarSigning {
    private static final char[] PASSWORD = "no secret".toCharArray();
    private static final String OWNER = "stranger";

    private final Path scratch;
    private final KeyStore.PrivateKeyEntry key;

    JarSigning(Path scratch) throws IOException, InterruptedException, GeneralSecurityException {
        this.scratch = scratch;
        Path keys = scratch.resolve("keys.p12");
        Process made = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keystore",
                        keys.toString(),
                        "-storepass",
                        new String(PASSWORD),
                        "-alias",
                        OWNER,
                        "-dname",
                        "CN=A stranger",
                        "-keyalg",
                        "EC",
                        "-startdate",
                        "2020/01/01",
                        "-validity",
                        "1")
                .inheritIO()
                .start();
        if (made.waitFor() != 0) {
            throw new IOException("keytool made no key");
        }
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(keys)) {
            store.load(in, PASSWORD);
        }
        key = (KeyStore.PrivateKeyEntry) store.getEntry(OWNER, new KeyStore.PasswordProtection(PASSWORD));
    }

    Certificate certificate() {
        return key.getCertificate();
    }

    byte[] signed(byte[] jar) throws IOException {
        Path plain = Files.write(scratch.resolve("plain.jar"), jar);
        Path signed = scratch.resolve("signed.jar");
        try (ZipFile from = new ZipFile(plain.toFile());
                OutputStream to = Files.newOutputStream(signed)) {
            new JarSigner.Builder(key).signerName("STRANGER").build().sign(from, to);
        }
        return Files.readAllBytes(signed);
    }
}
