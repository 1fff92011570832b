package org.hidewright.addons;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes bundles for tests, as jars or unpacked. */
final class Jar {
    private final Map<String, byte[]> entries = new LinkedHashMap<>();

    /** A jar without a manifest. */
    static Jar empty() {
        return new Jar();
    }

    static Jar bundle(String id, String... headers) {
        StringBuilder manifest = new StringBuilder("Manifest-Version: 1.0\nBundle-ManifestVersion: 2\n");
        if (!id.isEmpty()) {
            manifest.append("Bundle-SymbolicName: ").append(id).append('\n');
        }
        for (int i = 0; i < headers.length; i += 2) {
            manifest.append(headers[i]).append(": ").append(headers[i + 1]).append('\n');
        }
        return new Jar().with(JarFile.MANIFEST_NAME, manifest.append('\n').toString());
    }

    Jar with(String entry, String text) {
        entries.put(entry, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** With a class of the tests. */
    Jar with(Class<?> type) throws IOException {
        String entry = type.getName().replace('.', '/') + ".class";
        try (InputStream from = type.getClassLoader().getResourceAsStream(entry)) {
            entries.put(entry, from.readAllBytes());
        }
        return this;
    }

    Jar component(String file, String property, String value) {
        return with(
                file,
                "<scr:component xmlns:scr=\"http://www.osgi.org/xmlns/scr/v1.3.0\" name=\"x\">\n"
                        + "<property name=\"other\" type=\"String\" value=\"else\"/><property name=\"" + property
                        + "\">a\nb</property>\n<property name=\"" + property + "\" type=\"String\" value=\"" + value
                        + "\"/></scr:component>");
    }

    Path write(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                jar.putNextEntry(new ZipEntry(entry.getKey()));
                jar.write(entry.getValue());
            }
        }
        return file;
    }

    Path unpack(Path folder) throws IOException {
        for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
            Path file = folder.resolve(entry.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, entry.getValue());
        }
        return folder;
    }
}
