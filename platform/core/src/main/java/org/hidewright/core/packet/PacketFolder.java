package org.hidewright.core.packet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.core.jobcard.JobCardJson;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.packet.PacketTrouble.Kind;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.WholeFile;

/** The folder a packet is written to; it never writes over the packet of another project unasked. */
public final class PacketFolder {
    private static final String PAGES = "job-card.pdf";
    static final String DATA = "job-card.json";
    static final String ROWS = "job-card.csv";
    /** The keys of a job card's data that name its project and the files of its pages. */
    private static final String PROJECT = "project";

    private static final Pattern PAGE_NAME = Pattern.compile("[a-z0-9-]+\\.(pdf|svg|dxf)");

    private final Path folder;
    private final boolean replace;
    private final Set<String> earlier = new LinkedHashSet<>();

    private PacketFolder(Path folder, boolean replace) {
        this.folder = folder;
        this.replace = replace;
    }

    /**
     * The folder of this name.
     *
     * @param replace whether what is there may be written over whosever it is
     * @throws PacketTrouble if the name can be no folder here, naming the file in the way where there is one
     */
    public static PacketFolder named(String name, boolean replace) throws PacketTrouble {
        Path folder;
        try {
            folder = Path.of(name);
        } catch (InvalidPathException e) {
            throw new PacketTrouble(Kind.WRITE, name, String.valueOf(e.getMessage()));
        }
        for (Path step = folder.toAbsolutePath(); step != null; step = step.getParent()) {
            if (Files.exists(step) && !Files.isDirectory(step)) {
                throw new PacketTrouble(Kind.FILE_IN_THE_WAY, step.toString());
            }
        }
        return new PacketFolder(folder, replace);
    }

    /** Where a packet goes when no folder is named: one for each project file, so that packets never meet. */
    public static String usual(String projectFile) {
        return "out/" + called(Path.of(projectFile));
    }

    /** As the project’s file, without its ending. */
    private static String called(Path projectFile) {
        String file = String.valueOf(projectFile.getFileName());
        return file.endsWith(".json") && file.length() > ".json".length()
                ? file.substring(0, file.length() - ".json".length())
                : file;
    }

    /**
     * A folder as somebody chose it, where it is empty or has the packet of this project already; else one inside it that is
     * called like the project’s file, so that a packet does not lie among other things.
     *
     * @throws PacketTrouble as {@link #named}
     */
    public static PacketFolder chosen(Path folder, Path projectFile, Project project) throws PacketTrouble {
        PacketFolder itself = named(folder.toString(), false);
        return itself.isEmpty() || itself.isOf(project)
                ? itself
                : named(folder.resolve(called(projectFile)).toString(), false);
    }

    /**
     * A folder inside that would be the packet’s own, where it would now come among other things, which make its files hard to tell
     * and to take away again; empty where the folder is its own, or has the packet of this project already.
     *
     * @throws PacketTrouble if it cannot be looked into
     */
    public Optional<Path> ownInside(Path projectFile, Project project) throws PacketTrouble {
        if (!Files.isDirectory(folder) || isOf(project)) {
            return Optional.empty();
        }
        Set<String> ofPacket = new HashSet<>(Set.of(PAGES, DATA, ROWS));
        card().ifPresent(found -> ofPacket.addAll(pagesOf(found)));
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !ofPacket.contains(name))
                    .findAny()
                    .map(among -> folder.resolve(called(projectFile)));
        } catch (IOException e) {
            throw PacketTrouble.unwritten(folder, e);
        }
    }

    private boolean isEmpty() throws PacketTrouble {
        if (!Files.isDirectory(folder)) {
            return true;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            throw PacketTrouble.unwritten(folder, e);
        }
    }

    private boolean isOf(Project project) {
        return card().flatMap(found -> found.text(PROJECT))
                .filter(project.name()::equals)
                .isPresent();
    }

    private Optional<JsonObject> card() {
        Path data = folder.resolve(DATA);
        return Files.isRegularFile(data) ? cardOf(data) : Optional.empty();
    }

    /** Where it is. */
    public Path path() {
        return folder;
    }

    /**
     * Sees to it that nothing of another project is lost. A packet belongs to a project by the project's name.
     *
     * @throws PacketTrouble if there is a packet of a project with another name, or a file that is of none: pages or rows
     *     without the data that would say whose they are are somebody's own
     */
    public void mustBeFreeFor(Project project) throws PacketTrouble {
        Path data = folder.resolve(DATA);
        Optional<JsonObject> card = card();
        if (!replace) {
            if (Files.isRegularFile(data)) {
                Optional<String> there = card.flatMap(found -> found.text(PROJECT));
                if (there.isEmpty()) {
                    throw notOurs(data);
                } else if (!there.get().equals(project.name())) {
                    throw new PacketTrouble(Kind.OTHER_PACKET, folder.toString(), there.get());
                }
            } else {
                mustBeFree(List.of(PAGES, ROWS));
            }
        }
        card.ifPresent(found -> earlier.addAll(pagesOf(found)));
    }

    /** The pages an earlier packet says it has, or kept itself; nothing that could lie in another folder. */
    private static List<String> pagesOf(JsonObject card) {
        return Stream.of(JobCardJson.DOCUMENTS, JobCardJson.KEPT)
                .flatMap(key -> card.get(key).filter(JsonArray.class::isInstance).stream())
                .flatMap(names -> ((JsonArray) names).items().stream())
                .flatMap(name -> name instanceof JsonScalar text ? Stream.of(text.text()) : Stream.empty())
                .filter(name -> PAGE_NAME.matcher(name).matches())
                .toList();
    }

    private static Optional<JsonObject> cardOf(Path data) {
        try {
            return JsonText.read(Files.readString(data, StandardCharsets.UTF_8)).root() instanceof JsonObject card
                    ? Optional.of(card)
                    : Optional.empty();
        } catch (IOException | JsonTrouble e) {
            return Optional.empty();
        }
    }

    private void mustBeFree(Collection<String> names) throws PacketTrouble {
        for (String name : names) {
            if (Files.isRegularFile(folder.resolve(name))) {
                throw notOurs(folder.resolve(name));
            }
        }
    }

    private PacketTrouble notOurs(Path file) {
        return new PacketTrouble(Kind.OTHER_FILE, file.toString());
    }

    /**
     * Makes room for these pages. Pages of the earlier packet that are no longer among them are removed, so that nobody
     * hands out an old quote.
     *
     * @param removed hears of each
     * @throws PacketTrouble if one of them is a file that no packet says is its own
     */
    void take(Set<String> pages, Consumer<Path> removed) throws PacketTrouble {
        mustHaveRoom(pages);
        for (String old : earlier) {
            if (!pages.contains(old)) {
                remove(folder.resolve(old), removed);
            }
        }
    }

    private void mustHaveRoom(Set<String> pages) throws PacketTrouble {
        if (!replace) {
            mustBeFree(pages.stream()
                    .filter(page -> !page.equals(PAGES) && !earlier.contains(page))
                    .toList());
        }
    }

    /**
     * The same, where not every slip is worked: the pages of the earlier packet that are not made this time stay.
     *
     * @param kept hears of each
     * @return the names of those that stay
     * @throws PacketTrouble if one of these pages is a file that no packet says is its own
     */
    List<String> takeBeside(Set<String> pages, Consumer<Path> kept) throws PacketTrouble {
        mustHaveRoom(pages);
        List<String> stay = earlier.stream()
                .filter(old -> !pages.contains(old) && Files.isRegularFile(folder.resolve(old)))
                .toList();
        stay.forEach(old -> kept.accept(folder.resolve(old)));
        return stay;
    }

    private static void remove(Path old, Consumer<Path> removed) throws PacketTrouble {
        try {
            if (Files.deleteIfExists(old)) {
                removed.accept(old);
            }
        } catch (IOException e) {
            throw PacketTrouble.unwritten(old, e);
        }
    }

    /** @throws PacketTrouble if it cannot be made */
    void make() throws PacketTrouble {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw PacketTrouble.unwritten(folder, e);
        }
    }

    Path save(String name, byte[] bytes) throws PacketTrouble {
        Path file = folder.resolve(name);
        if (Files.isDirectory(file)) {
            throw new PacketTrouble(Kind.FOLDER_IN_THE_WAY, file.toString());
        }
        try {
            WholeFile.write(file, bytes);
            return file;
        } catch (IOException e) {
            throw PacketTrouble.unwritten(file, e);
        }
    }
}
