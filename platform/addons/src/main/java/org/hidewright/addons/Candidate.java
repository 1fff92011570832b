package org.hidewright.addons;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.template.TemplateFiles;

/**
 * A bundle that is to be installed.
 *
 * @param from where it lies, as the maker calls it
 * @param described what it says of itself
 * @param jar its bytes as a jar
 */
record Candidate(Path from, Described described, byte[] jar) {
    private static final String JAR = ".jar";
    /** The first that a jar can hold. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    /**
     * The bundles that were named.
     *
     * @param sound looks the jars over
     * @param follow whether templates in folders are read from there from now on
     * @throws FileTrouble if one is not there, cannot be read or is no bundle
     */
    static List<Candidate> of(List<Path> given, Soundness sound, boolean follow) throws FileTrouble {
        List<Candidate> candidates = new ArrayList<>();
        for (Path path : given) {
            if (!Files.exists(path)) {
                throw Trouble.of(AddOnNotices.ADD_ON_NOT_THERE.with(path.toString()));
            } else if (!Files.isDirectory(path)) {
                candidates.add(ofJar(path, sound));
            } else if (Files.exists(path.resolve(JarFile.MANIFEST_NAME))) {
                candidates.add(ofUnpacked(path, sound, follow));
            } else {
                candidates.addAll(ofJarsIn(path, sound));
            }
        }
        return candidates;
    }

    /** The bundles whose jars lie in a folder, by the names of their files. */
    static List<Candidate> ofJarsIn(Path folder, Soundness sound) throws FileTrouble {
        List<Candidate> candidates = new ArrayList<>();
        for (Path jar : jarsIn(folder)) {
            candidates.add(ofJar(jar, sound));
        }
        return candidates;
    }

    private static List<Path> jarsIn(Path folder) throws FileTrouble {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> jars = all.filter(path -> path.toString().endsWith(JAR) && Files.isRegularFile(path))
                    .filter(path -> !IndexFile.isPacked(path))
                    .sorted()
                    .toList();
            if (jars.isEmpty()) {
                throw Trouble.of(AddOnNotices.ADD_ON_EMPTY_FOLDER.with(folder.toString()));
            }
            return jars;
        } catch (IOException e) {
            throw Trouble.notRead(folder, e);
        }
    }

    /** What lies in the folder of add-ons, as it is. */
    static Candidate installed(Path jar) throws FileTrouble {
        try (Entries entries = Entries.ofJar(jar)) {
            return new Candidate(jar, Described.read(jar, entries), Files.readAllBytes(jar));
        } catch (IOException e) {
            throw Trouble.notRead(jar, e);
        }
    }

    /** The same, where even one that is torn is told, by the name of its file. */
    static Candidate kept(Path jar) throws FileTrouble {
        try {
            return installed(jar);
        } catch (FileTrouble torn) {
            try {
                return new Candidate(
                        jar, Described.nameless(String.valueOf(jar.getFileName())), Files.readAllBytes(jar));
            } catch (IOException e) {
                throw Trouble.notRead(jar, e);
            }
        }
    }

    static Candidate ofJar(Path file, Soundness sound) throws FileTrouble {
        Soundness.mustBeNone(file, sound.packing(file));
        try (Entries entries = Entries.ofJar(file)) {
            return new Candidate(file, described(file, entries), Files.readAllBytes(file));
        } catch (ZipException e) {
            throw Trouble.of(AddOnNotices.ADD_ON_NO_JAR.with(file.toString()));
        } catch (IOException e) {
            throw Trouble.notRead(file, e);
        }
    }

    /** Only the maker says which folder is followed. */
    private static Described described(Path named, Entries entries) throws IOException, FileTrouble {
        Described described = Described.read(named, entries);
        if (!described.follows().isEmpty()) {
            throw Trouble.of(AddOnNotices.ADD_ON_FOLLOWS.with(named.toString()));
        }
        return described;
    }

    /** Packed as it lies there; the manifest first, where readers of jars look for it. */
    private static Candidate ofUnpacked(Path folder, Soundness sound, boolean follow) throws FileTrouble {
        try (Entries entries = Entries.ofFolder(folder)) {
            Described described = described(folder, entries);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ZipOutputStream jar = new ZipOutputStream(bytes)) {
                pack(JarFile.MANIFEST_NAME, manifest(entries, folder, follow), jar);
                for (String name : entries.names()) {
                    if (!name.equals(JarFile.MANIFEST_NAME)) {
                        try (InputStream in = entries.open(name)) {
                            pack(name, in.readAllBytes(), jar);
                        }
                    }
                }
            }
            Soundness.mustBeNone(folder, sound.packing(bytes.toByteArray()));
            return new Candidate(folder, described, bytes.toByteArray());
        } catch (IOException e) {
            throw Trouble.notRead(folder, e);
        }
    }

    /** The manifest as it lies there; where the folder is followed, with its place. */
    private static byte[] manifest(Entries entries, Path folder, boolean follow) throws IOException {
        try (InputStream in = entries.open(JarFile.MANIFEST_NAME)) {
            if (!follow) {
                return TypedManifest.ended(in.readAllBytes());
            }
            Manifest manifest = TypedManifest.read(in.readAllBytes());
            manifest.getMainAttributes()
                    .putValue(
                            TemplateFiles.FOLLOWS,
                            folder.toAbsolutePath().normalize().toString());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            manifest.write(bytes);
            return bytes.toByteArray();
        }
    }

    /** Without the time of the file, so that what is packed again is the same byte by byte. */
    private static void pack(String name, byte[] bytes, ZipOutputStream jar) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        jar.putNextEntry(entry);
        jar.write(bytes);
        jar.closeEntry();
    }

    String id() {
        return described.id();
    }
}
