package org.hidewright.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** A bundle with nothing in it but its manifest. */
final class AddOnJar {

    private AddOnJar() {}

    static void write(Path file, String symbolicName) throws IOException {
        write(file, symbolicName, Map.of());
    }

    /** @param headers what else its manifest says */
    static void write(Path file, String symbolicName, Map<String, String> headers) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("Bundle-ManifestVersion", "2");
        manifest.getMainAttributes().putValue("Bundle-SymbolicName", symbolicName + ";singleton:=true");
        headers.forEach(manifest.getMainAttributes()::putValue);
        Files.createDirectories(file.getParent());
        new JarOutputStream(Files.newOutputStream(file), manifest).close();
    }
}
