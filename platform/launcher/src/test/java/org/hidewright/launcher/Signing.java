package org.hidewright.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Signs jars with the tools of the JDK, by keys that their owners made alone. */
final class Signing {
    private final Path folder;

    Signing(Path folder) {
        this.folder = folder;
    }

    private String run(String tool, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", tool).toString());
        command.addAll(List.of("-keystore", folder.resolve("keys.p12").toString(), "-storepass", "no secret"));
        command.addAll(tool.equals("keytool") ? 1 : command.size(), List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(said);
        }
        return said;
    }

    /** The fingerprint of a new key, as keytool prints it. */
    String key(String owner) throws IOException, InterruptedException {
        run("keytool", "-genkeypair", "-alias", owner, "-dname", "CN=" + owner, "-keyalg", "EC");
        String listed = run("keytool", "-list", "-alias", owner);
        return listed.substring(listed.lastIndexOf("SHA-256)") + 9)
                .replaceAll("[^0-9A-F]", "")
                .toLowerCase(Locale.ROOT);
    }

    Path sign(Path jar, String owner) throws IOException, InterruptedException {
        run("jarsigner", "-sigfile", owner.toUpperCase(Locale.ROOT), jar.toString(), owner);
        return jar;
    }

    void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
