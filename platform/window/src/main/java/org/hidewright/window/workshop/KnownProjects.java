package org.hidewright.window.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.TextFile;

/**
 * The projects that the window knows of: those opened lately, and what lies in folders that are looked into. A file is read
 * again only when it has changed; one that is no project is passed over. Never writes. For one thread.
 */
public final class KnownProjects {
    /** In a folder of more, the rest is not looked at. */
    private static final int MOST_FILES = 1000;

    private final Map<Path, Read> read = new HashMap<>();

    /** A file as it was read; without a project where it holds none. */
    private record Read(FileTime time, long size, Optional<Project> project) {}

    /**
     * What there is, by its file.
     *
     * @param files that are known
     * @param folders that are looked into, without those inside them
     */
    public Map<Path, Project> in(Collection<Path> files, Collection<Path> folders) {
        Set<Path> all = new LinkedHashSet<>();
        files.forEach(file -> all.add(file.toAbsolutePath().normalize()));
        folders.forEach(folder -> all.addAll(inside(folder.toAbsolutePath().normalize())));
        Map<Path, Project> projects = new LinkedHashMap<>();
        all.forEach(file -> project(file).ifPresent(project -> projects.put(file, project)));
        return projects;
    }

    private static List<Path> inside(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .limit(MOST_FILES)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of(); // not there any more, or not ours to look into
        }
    }

    private Optional<Project> project(Path file) {
        try {
            FileTime time = Files.getLastModifiedTime(file);
            long size = Files.size(file);
            Read before = read.get(file);
            if (before == null || !before.time().equals(time) || before.size() != size) {
                before = new Read(
                        time,
                        size,
                        ProjectReader.read(TextFile.read(file).text()).project());
                read.put(file, before);
            }
            return before.project();
        } catch (IOException | FileTrouble e) {
            return Optional.empty();
        }
    }
}
