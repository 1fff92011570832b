package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import org.apache.felix.utils.repository.StaxParser;
import org.apache.felix.utils.repository.StaxParser.XmlRepository;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/**
 * The file of an index, as any program can read it that knows the OSGi repository format (OSGi Compendium 8, chapter 132). It
 * tells no time and no place, so that the same jars make the same index anywhere.
 *
 * @param file where it lies
 */
record IndexFile(Path file) {
    private static final String NAME = "index.xml";
    private static final String TITLE = "Add-ons for Hidewright";
    /** As the library and the JDK each tell it. */
    private static final Pattern LINE = Pattern.compile("(?:\\[row,col\\]:\\[|at line )(\\d+)");

    private static final long MOST_BYTES = 16L << 20;

    /** The index that is meant by a folder, or by the file itself. */
    static IndexFile in(Path place) {
        return new IndexFile(Files.isDirectory(place) ? place.resolve(NAME) : place);
    }

    /** Where the jars lie that it lists. */
    Path folder() {
        return file.toAbsolutePath().getParent();
    }

    /**
     * What it lists.
     *
     * @param sound looks it over where it is a jar, so that a signature has to hold, and to be asked for by this workshop
     * @throws FileTrouble if it is not there, or is none
     */
    List<Listed> read(Soundness sound) throws FileTrouble {
        return repository(isJar() ? packed(sound) : bytes()).resources.stream()
                .map(Listed::of)
                .flatMap(Optional::stream)
                .toList();
    }

    private boolean isJar() {
        return file.toString().endsWith(".jar");
    }

    /** Whether a jar is such an index, and no bundle that should stand in one. */
    static boolean isPacked(Path jar) {
        try (Entries entries = Entries.ofJar(jar)) {
            return entries.names().contains(NAME) && !Described.isBundle(entries);
        } catch (IOException noJar) {
            return false;
        }
    }

    /** An index inside a jar, which can be signed. */
    private byte[] packed(Soundness sound) throws FileTrouble {
        if (Files.exists(file)) {
            Soundness.mustBeNone(file, sound.packing(file));
        }
        try (Entries entries = Entries.ofJar(file)) {
            if (!entries.names().contains(NAME)) {
                throw notThere();
            }
            try (InputStream in = entries.open(NAME)) {
                return in.readNBytes((int) MOST_BYTES);
            }
        } catch (NoSuchFileException e) {
            throw notThere();
        } catch (IOException e) {
            throw Trouble.notRead(file, e);
        }
    }

    private FileTrouble notThere() {
        boolean named = file.toString().endsWith(".xml") || isJar();
        if (!named || !Files.isDirectory(folder())) {
            return Trouble.of(AddOnNotices.ADD_ON_NOT_THERE.with(file.toString()));
        }
        return Trouble.of(AddOnNotices.ADD_ON_INDEX_NOT_THERE.with(
                file.toString(), String.valueOf(file.getParent() == null ? "." : file.getParent())));
    }

    private byte[] bytes() throws FileTrouble {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw Trouble.of(AddOnNotices.ADD_ON_INDEX_LONG.with(file.toString(), MOST_BYTES >> 20));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw notThere();
        } catch (IOException e) {
            throw Trouble.notRead(file, e);
        }
    }

    private XmlRepository repository(byte[] bytes) throws FileTrouble {
        try {
            return StaxParser.parse(new ByteArrayInputStream(bytes));
        } catch (XMLStreamException | RuntimeException e) { // the one where it is no XML, the other where it is another
            Matcher line = LINE.matcher(String.valueOf(e.getMessage()));
            throw Trouble.of(
                    AddOnNotices.ADD_ON_INDEX_UNREADABLE.with(file.toString(), line.find() ? line.group(1) : "1"));
        }
    }

    /** Writes it, unless it says the same already. Each time that it says something else its count goes up by one. */
    void write(List<Listed> listed) throws FileTrouble {
        long count = 1;
        if (Files.exists(file)) {
            byte[] before = bytes();
            try {
                count = repository(before).increment;
            } catch (FileTrouble unreadable) {
                count = 0; // what is there is no index any more, and is made anew
            }
            if (text(listed, count).equals(new String(before, StandardCharsets.UTF_8))) {
                return;
            }
            count++;
        }
        try {
            WholeFile.write(file, text(listed, count).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }

    private static String text(List<Listed> listed, long count) {
        XmlRepository repository = new XmlRepository();
        repository.name = TITLE;
        repository.increment = count;
        listed.forEach(bundle -> repository.resources.add(bundle.resource()));
        StringWriter text = new StringWriter();
        try {
            StaxParser.write(repository, text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return inLines(text.toString());
    }

    /** A line for each thing that is told. Where a value has an angle it is written as a word, so that none is cut through. */
    private static String inLines(String xml) {
        return "<?xml version='1.0' encoding='UTF-8'?>\n"
                + xml.substring(xml.indexOf("<repository"))
                        .replaceAll("<(/?resource|/repository)", "\n<$1")
                        .replaceAll("<(/?(?:capability|requirement))", "\n  <$1")
                        .replaceAll("<(attribute|directive)", "\n    <$1")
                        .replaceAll("></(?:attribute|directive)>", "/>")
                + "\n";
    }
}
