package org.hidewright.window.start;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;

/**
 * A project that came with the program, to look at and to take apart.
 *
 * @param file it lies in
 * @param project it is
 */
public record Sample(Path file, Project project) {
    private static final String ENDING = ".json";

    /**
     * The samples in the folders of a folder, whole projects before those of single templates; none where it is not there.
     *
     * @param language in which they are called and titled, as far as somebody has said so
     */
    static List<Sample> in(Path folder, Locale language) {
        SampleWords words = SampleWords.in(folder, language);
        List<Sample> samples = new ArrayList<>();
        for (String kind : List.of("projects", "templates")) {
            Path inside = folder.resolve(kind);
            if (Files.isDirectory(inside)) {
                files(inside).stream()
                        .flatMap(file -> read(file, words).stream())
                        .forEach(samples::add);
            }
        }
        return List.copyOf(samples);
    }

    private static List<Path> files(Path folder) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + ENDING)) {
            all.forEach(files::add);
        } catch (IOException | DirectoryIteratorException unreadable) {
            return List.of(); // a start without samples is a start
        }
        return files.stream().sorted().toList();
    }

    private static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ENDING.length());
    }

    private static Optional<Sample> read(Path file, SampleWords words) {
        try {
            return ProjectReader.read(Files.readString(file))
                    .project()
                    .map(project -> new Sample(file, words.said(nameOf(file), project)));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
