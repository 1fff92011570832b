package org.hidewright.window.model;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.Set;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.wording.UnitSystem;

/**
 * What the window keeps from one time to the next: the projects opened last, the workshop and the folders of other projects,
 * the units switched to, how large a millimetre is on this screen, which slips are folded. It lies in the maker’s folder of settings; a file that cannot be read is as if there were none, and one
 * that cannot be written costs nothing but memory.
 */
public final class Memory {
    private static final int MOST_RECENT = 12;
    private static final String RECENT = "recent.";
    private static final int MOST_FOLDERS = 20;
    private static final String FOLDER = "folder.";
    private static final String WORKSHOP = "workshop";
    private static final String UNITS = "units";
    private static final String FOLDED = "folded.";
    private static final String PIXELS_PER_MM = "pixels-per-mm";

    private final Path file;
    private final Properties kept = new Properties();

    private Memory(Path file) {
        this.file = file;
    }

    /** @param settings the maker’s folder of settings; need not be there */
    public static Memory in(Path settings) {
        Memory memory = new Memory(settings.resolve("window.properties"));
        try (Reader reader = Files.newBufferedReader(memory.file)) {
            memory.kept.load(reader);
        } catch (IOException | IllegalArgumentException nothingKept) {
            memory.kept.clear();
        }
        return memory;
    }

    /** The projects opened last, the latest first. */
    public List<Path> recent() {
        return paths(RECENT, MOST_RECENT);
    }

    private List<Path> paths(String key, int most) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            path(key + i).ifPresent(paths::add);
        }
        return List.copyOf(paths);
    }

    private Optional<Path> path(String key) {
        try {
            return Optional.ofNullable(kept.getProperty(key)).map(Path::of);
        } catch (InvalidPathException notOfThisSystem) {
            return Optional.empty();
        }
    }

    /** Notes that a project was opened. */
    public void opened(Path project) {
        putFirst(RECENT, MOST_RECENT, project, recent());
    }

    private void putFirst(String key, int most, Path first, List<Path> before) {
        Set<Path> all = new LinkedHashSet<>(List.of(first.toAbsolutePath().normalize()));
        all.addAll(before);
        int i = 0;
        for (Path path : all) {
            if (i < most) {
                kept.setProperty(key + i++, path.toString());
            }
        }
        keep();
    }

    /** Folders whose projects are to be known, the latest first. */
    public List<Path> folders() {
        return paths(FOLDER, MOST_FOLDERS);
    }

    /** Notes a folder whose projects are to be known. */
    public void lookInto(Path folder) {
        putFirst(FOLDER, MOST_FOLDERS, folder, folders());
    }

    /** The workshop the maker has opened last. */
    public Optional<Path> workshop() {
        return path(WORKSHOP);
    }

    /** Notes which workshop the maker has opened. */
    public void workshop(Path file) {
        kept.setProperty(WORKSHOP, file.toAbsolutePath().normalize().toString());
        keep();
    }

    /** The units that the maker has switched to last. */
    public Optional<UnitSystem> units() {
        return Optional.ofNullable(kept.getProperty(UNITS)).flatMap(UnitSystem::of);
    }

    /** Notes which units the maker has switched to. */
    public void units(UnitSystem units) {
        kept.setProperty(UNITS, units.key());
        keep();
    }

    /** Pixels for a millimetre, where the maker has measured this screen; a larger or smaller one wants another. */
    public OptionalDouble pixelsPerMm() {
        try {
            String text = kept.getProperty(PIXELS_PER_MM);
            return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException nonsense) {
            return OptionalDouble.empty();
        }
    }

    /** Notes what the maker has measured. */
    public void measured(double pixelsPerMm) {
        kept.setProperty(PIXELS_PER_MM, Double.toString(pixelsPerMm));
        keep();
    }

    /** Ids of the slips of a project that are folded. */
    public Set<String> folded(Path project) {
        String ids = kept.getProperty(FOLDED + project.toAbsolutePath().normalize(), "");
        return ids.isEmpty() ? Set.of() : Set.of(ids.split(","));
    }

    /** Notes which slips of a project are folded. */
    public void fold(Path project, Set<String> ids) {
        String key = FOLDED + project.toAbsolutePath().normalize();
        if (ids.isEmpty()) {
            kept.remove(key);
        } else {
            kept.setProperty(key, String.join(",", ids));
        }
        keep();
    }

    private void keep() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            kept.store(bytes, null);
            WholeFile.write(file, bytes.toString(StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return; // nothing of a project is lost
        }
    }
}
