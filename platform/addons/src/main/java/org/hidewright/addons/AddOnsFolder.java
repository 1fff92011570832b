package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The folder that installed jars lie in. */
final class AddOnsFolder {
    private static final String JAR = ".jar";

    private final Path folder;

    AddOnsFolder(Path settings) {
        this.folder = settings.resolve("addons");
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

    /** A place for a bundle that takes it from no other but those that give way. */
    Path place(String id, List<Path> giveWay) {
        Path place = folder.resolve(id + JAR);
        for (int i = 2; Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !giveWay.contains(place); i++) {
            place = folder.resolve(id + "-" + i + JAR);
        }
        return place;
    }
}
