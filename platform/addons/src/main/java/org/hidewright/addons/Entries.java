package org.hidewright.addons;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** The files inside a bundle, under their names with slashes: of a jar, or of a folder that is an unpacked one. */
interface Entries extends Closeable {
    /** Names of all files. */
    List<String> names() throws IOException;

    /** Opens a file of {@link #names}. */
    InputStream open(String name) throws IOException;

    /** @throws IOException if it is no jar */
    static Entries ofJar(Path file) throws IOException {
        JarFile jar = new JarFile(file.toFile(), false);
        return new Entries() {
            @Override
            public List<String> names() {
                return jar.stream()
                        .filter(entry -> !entry.isDirectory())
                        .map(ZipEntry::getName)
                        .toList();
            }

            @Override
            public InputStream open(String name) throws IOException {
                return jar.getInputStream(jar.getEntry(name));
            }

            @Override
            public void close() throws IOException {
                jar.close();
            }
        };
    }

    /** Links are not followed, so that nothing from elsewhere comes in. */
    static Entries ofFolder(Path folder) {
        return new Entries() {
            @Override
            public List<String> names() throws IOException {
                try (Stream<Path> all = Files.walk(folder)) {
                    return all.filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                            .map(path -> folder.relativize(path)
                                    .toString()
                                    .replace(folder.getFileSystem().getSeparator(), "/"))
                            .sorted()
                            .toList();
                }
            }

            @Override
            public InputStream open(String name) throws IOException {
                return Files.newInputStream(folder.resolve(name));
            }

            @Override
            public void close() {
                // nothing is held open
            }
        };
    }
}
