package org.hidewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.store.WriteFault;

/** The folder a packet is written to; it never writes over the packet of another project unasked. */
final class PacketFolder {
    static final String PAGES = "job-card.pdf";
    static final String DATA = "job-card.json";
    static final String ROWS = "job-card.csv";
    /** The key of a job card's data that names its project. */
    private static final String PROJECT = "project";

    private final Path folder;
    private final Session session;

    private PacketFolder(Path folder, Session session) {
        this.folder = folder;
        this.session = session;
    }

    /** @throws BadArgument if the name can be no folder here, naming the file in the way where there is one */
    static PacketFolder named(String name, Session session) throws BadArgument {
        Path folder;
        try {
            folder = Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadArgument(session.texts().text("trouble.write", name, String.valueOf(e.getMessage())));
        }
        for (Path step = folder.toAbsolutePath(); step != null; step = step.getParent()) {
            if (Files.exists(step) && !Files.isDirectory(step)) {
                throw new BadArgument(session.texts().text("trouble.file-in-the-way", step.toString()));
            }
        }
        return new PacketFolder(folder, session);
    }

    /** Where a packet goes when no folder is named: one for each project file, so that packets never meet. */
    static String usual(String projectFile) {
        String file = String.valueOf(Path.of(projectFile).getFileName());
        return "out/"
                + (file.endsWith(".json") && file.length() > ".json".length()
                        ? file.substring(0, file.length() - ".json".length())
                        : file);
    }

    /**
     * Sees to it that nothing of another project is lost. A packet belongs to a project by the project's name.
     *
     * @throws BadArgument if there is a packet of a project with another name, or a file that is of none: pages or rows
     *     without the data that would say whose they are are somebody's own
     */
    void mustBeFreeFor(Project project) throws BadArgument {
        Path data = folder.resolve(DATA);
        if (!Files.isRegularFile(data)) {
            for (String name : List.of(PAGES, ROWS)) {
                if (Files.isRegularFile(folder.resolve(name))) {
                    throw new BadArgument(session.texts()
                            .text("trouble.other-file", folder.resolve(name).toString()));
                }
            }
            return;
        }
        Optional<String> there = projectOf(data);
        if (there.isEmpty()) {
            throw new BadArgument(session.texts().text("trouble.other-file", data.toString()));
        } else if (!there.get().equals(project.name())) {
            throw new BadArgument(session.texts().text("trouble.other-packet", folder.toString(), there.get()));
        }
    }

    private static Optional<String> projectOf(Path data) {
        try {
            return JsonText.read(Files.readString(data, StandardCharsets.UTF_8)).root() instanceof JsonObject card
                    ? card.text(PROJECT)
                    : Optional.empty();
        } catch (IOException | JsonTrouble e) {
            return Optional.empty();
        }
    }

    /** @throws BadArgument if it cannot be made */
    void make() throws BadArgument {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw unwritten(folder, e);
        }
    }

    void save(String name, byte[] bytes) throws BadArgument {
        Path file = folder.resolve(name);
        if (Files.isDirectory(file)) {
            throw new BadArgument(session.texts().text("trouble.folder-in-the-way", file.toString()));
        }
        try {
            WholeFile.write(file, bytes);
            session.out().println(file);
        } catch (IOException e) {
            throw unwritten(file, e);
        }
    }

    private BadArgument unwritten(Path path, IOException e) {
        return new BadArgument(why(path, e, session.texts()));
    }

    /** Why a path could not be written, as far as Java or the system says. */
    static String why(Path path, IOException e, CommandTexts texts) {
        return switch (WriteFault.of(e)) {
            case BUSY -> texts.text("trouble.being-written", path.toString());
            case NOT_ALLOWED -> texts.text("trouble.may-not-write", path.toString());
            case NO_FOLDER -> texts.text("trouble.cannot-make", path.toString(), missing(path, e));
            case FULL -> texts.text("trouble.disk-full", path.toString());
            case OTHER -> texts.text("trouble.write", path.toString(), WriteFault.reason(e));
        };
    }

    private static String missing(Path path, IOException e) {
        return e instanceof FileSystemException system && system.getFile() != null ? system.getFile() : path.toString();
    }
}
