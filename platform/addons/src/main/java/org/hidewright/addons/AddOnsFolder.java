package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/** The folder that installed jars lie in, changed as a whole: what cannot be done whole is undone. */
final class AddOnsFolder {
    private static final String JAR = ".jar";

    private final Path folder;

    AddOnsFolder(Path folder) {
        this.folder = folder;
    }

    boolean holds(Path jar) {
        return folder.equals(jar.getParent());
    }

    /** The jars in it, by name. */
    List<Path> jars() {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(JAR) && Files.isRegularFile(path))
                    .sorted()
                    .toList();
        } catch (IOException none) {
            return List.of();
        }
    }

    /** A place for a jar that takes it from no other but those that give way. */
    Path place(Candidate candidate, List<Path> giveWay) {
        Path place = folder.resolve(candidate.id() + JAR);
        for (int i = 2; Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !giveWay.contains(place); i++) {
            place = folder.resolve(candidate.id() + "-" + i + JAR);
        }
        return place;
    }

    /**
     * Puts jars in.
     *
     * @param jars their bytes by their place
     * @param giveWay jars that give way to them
     * @throws FileTrouble if one cannot be written or taken away; then all is as it was, as far as the disk lets it be
     */
    void put(Map<Path, byte[]> jars, List<Path> giveWay) throws FileTrouble {
        Map<Path, byte[]> before = new LinkedHashMap<>();
        Path at = folder;
        try {
            Files.createDirectories(folder);
            for (Path jar : giveWay) {
                at = jar;
                before.put(jar, Files.readAllBytes(jar));
            }
            for (Map.Entry<Path, byte[]> jar : jars.entrySet()) {
                at = jar.getKey();
                before.putIfAbsent(at, null);
                WholeFile.write(at, jar.getValue());
            }
            for (Path jar : giveWay) {
                at = jar;
                if (!jars.containsKey(jar)) {
                    Files.delete(jar);
                }
            }
        } catch (IOException e) {
            undo(before);
            throw Trouble.notChanged(at, e);
        }
    }

    private static void undo(Map<Path, byte[]> before) {
        before.forEach((jar, bytes) -> {
            try {
                if (bytes == null) {
                    Files.deleteIfExists(jar);
                } else {
                    WholeFile.write(jar, bytes);
                }
            } catch (IOException e) {
                // told already: what stopped the one stops the other
            }
        });
    }

    void remove(Path jar) throws FileTrouble {
        try {
            Files.delete(jar);
        } catch (IOException e) {
            throw Trouble.notChanged(jar, e);
        }
    }
}
