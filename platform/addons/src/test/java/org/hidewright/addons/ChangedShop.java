package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hidewright.addons.FolderChange.Wanted;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.launcher.DecidedChange;

/** A folder of settings, a change of it, and what is there before and after. */
final class ChangedShop {
    private ChangedShop() {}

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** One jar gives way, one goes, one comes, one stays, and a choice changes. */
    static Path shop(Path settings) throws IOException {
        Path addOns = Files.createDirectories(settings.resolve("addons"));
        Files.writeString(addOns.resolve("gives-way.jar"), "old");
        Files.writeString(addOns.resolve("goes.jar"), "goes");
        Files.writeString(addOns.resolve("stays.jar"), "stays");
        Files.writeString(addOns.resolve("notes.txt"), "somebody’s own");
        Files.writeString(settings.resolve("addons.txt"), "off stays\n");
        Files.createDirectories(settings.resolve("addons-before"));
        Files.writeString(settings.resolve("addons-before/earlier.jar"), "earlier");
        return settings;
    }

    static final Wanted WANTED = new Wanted(
            Map.of("gives-way.jar", bytes("new"), "comes.jar", bytes("comes")),
            List.of("goes.jar"),
            Optional.of(bytes("off comes\n")));

    static final Map<String, String> OLD = Map.of(
            "addons/gives-way.jar", "old",
            "addons/goes.jar", "goes",
            "addons/stays.jar", "stays",
            "addons/notes.txt", "somebody’s own",
            "addons.txt", "off stays\n");
    static final Map<String, String> NEW = Map.of(
            "addons/gives-way.jar", "new",
            "addons/comes.jar", "comes",
            "addons/stays.jar", "stays",
            "addons/notes.txt", "somebody’s own",
            "addons.txt", "off comes\n");

    /** What a start reads. */
    static Map<String, String> read(Path settings) throws IOException {
        Map<String, String> read = new TreeMap<>();
        try (Stream<Path> all = Files.list(settings.resolve("addons"))) {
            for (Path file : all.toList()) {
                read.put("addons/" + file.getFileName(), Files.readString(file));
            }
        }
        read.put("addons.txt", Files.readString(settings.resolve("addons.txt")));
        return read;
    }

    static void change(Path settings, FolderChange.Watch watch) throws FileTrouble {
        new FolderChange(settings, new DecidedChange(watch::before), watch).make(WANTED);
    }
}
