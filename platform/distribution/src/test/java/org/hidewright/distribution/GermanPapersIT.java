package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.document.Document;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.junit.jupiter.api.Test;

/**
 * All papers of all samples in German: but for what the sample itself says, no word stands on them that only English texts
 * have, and no id as files have it.
 */
class GermanPapersIT {
    private static final Path ROOT = Path.of("../..");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    /** Two or more words of small letters joined as ids are. */
    private static final Pattern ID =
            Pattern.compile("(?<![\\p{L}\\d.-])\\p{Ll}+\\d*(?:[-.]\\p{Ll}+\\d*)+(?![\\p{L}-])");

    /** A formula of a template that is a text: in the names that its author gave its questions and values. */
    private static final Pattern WRITTEN_FORMULA = Pattern.compile("\\p{Ll}[\\p{Ll}\\d_]+ = .*");

    /** Functions in formulas, which are signs more than words. */
    private static final Set<String> IN_BOTH = Set.of("pi", "floor", "ceil", "round");

    private static Properties texts(Path file) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            texts.load(reader);
        }
        return texts;
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        for (Matcher word = WORD.matcher(text); word.find(); ) {
            words.add(word.group().toLowerCase(Locale.ROOT));
        }
        return words;
    }

    /** The words of English texts that stand in no German one. */
    private static Set<String> english() throws IOException {
        Set<String> english = new TreeSet<>();
        Set<String> german = new TreeSet<>();
        for (Path file : VisibleWords.messagesFiles(ROOT)) {
            texts(file).values().forEach(text -> english.addAll(words((String) text)));
            texts(file.resolveSibling("messages_de.properties"))
                    .values()
                    .forEach(text -> german.addAll(words((String) text)));
        }
        for (Path file : VisibleWords.templates(ROOT)) {
            english.addAll(words(Files.readString(file)));
            String beside = file.getFileName().toString().replace(".json", "_de.properties");
            texts(file.resolveSibling(beside)).values().forEach(text -> german.addAll(words((String) text)));
        }
        english.removeAll(german);
        english.removeAll(IN_BOTH);
        return english;
    }

    private static List<Path> samples() throws IOException {
        List<Path> samples = new ArrayList<>();
        for (String folder : List.of("projects", "templates")) {
            try (Stream<Path> found = Files.list(ROOT.resolve("samples").resolve(folder))) {
                samples.addAll(found.sorted().toList());
            }
        }
        return samples;
    }

    /** What the maker of a sample typed: names and titles first, then ids; of each the longest first. */
    private static List<String> typed(String sample) {
        Set<String> typed =
                new TreeSet<>(Comparator.comparing((String text) -> !Character.isUpperCase(text.codePointAt(0)))
                        .thenComparing(Comparator.comparing(String::length).reversed())
                        .thenComparing(Comparator.naturalOrder()));
        for (Matcher string = STRING.matcher(sample); string.find(); ) {
            String own = string.group(1);
            Stream.of(own, IdWords.of(own), IdWords.of(own.substring(own.lastIndexOf('.') + 1)))
                    .filter(text -> text.length() > 2)
                    .forEach(typed::add);
        }
        return List.copyOf(typed);
    }

    private static List<String> strange(String text, List<String> typed, Set<String> english) {
        if (WRITTEN_FORMULA.matcher(text).matches()) {
            return List.of();
        }
        String left = text.replace('\u00A0', ' ');
        for (String own : typed) {
            left = Pattern.compile("(?<!\\p{L})" + Pattern.quote(own) + "(?!\\p{L})")
                    .matcher(left)
                    .replaceAll(" ");
        }
        List<String> strange = new ArrayList<>();
        words(left).stream().filter(english::contains).forEach(strange::add);
        for (Matcher id = ID.matcher(left); id.find(); ) {
            strange.add(id.group());
        }
        return strange;
    }

    private static List<String> found(Bench bench, Path sample, Locale language, Set<String> english) throws Exception {
        String text = Files.readString(sample);
        Packet packet = new Packet(
                bench.work(ProjectReader.read(text).project().orElseThrow()).toMake(),
                new Wording(language, UnitSystem.METRIC));
        List<String> found = new ArrayList<>();
        List<String> typed = typed(text);
        for (Document document : packet.documents(
                        LocalDate.of(2026, 3, 1), BundledCalculators.contributors(), fault -> {
                            throw new AssertionError(fault);
                        })
                .values()) {
            for (String said : ReadTexts.of(document)) {
                List<String> strange = strange(said, typed, english);
                if (!strange.isEmpty()) {
                    found.add(sample.getFileName() + " " + strange + ": " + said);
                }
            }
        }
        return found;
    }

    @Test
    void noEnglishWordAndNoIdStandsOnAGermanPaper() throws Exception {
        Bench bench = new Bench(BundledCalculators.catalogue());
        Set<String> english = english();
        assertTrue(english.size() > 1000, english.size() + " words");
        Set<String> found = new TreeSet<>();
        for (Path sample : samples()) {
            found.addAll(found(bench, sample, Locale.GERMAN, english));
        }
        assertEquals("", String.join("\n", found));
    }

    @Test
    void theEnglishPapersWouldNotPass() throws Exception {
        Bench bench = new Bench(BundledCalculators.catalogue());
        Path sample = ROOT.resolve("samples/templates/key-fob.json");
        assertTrue(found(bench, sample, Locale.ENGLISH, english()).size() > 100);
        assertEquals(List.of("path-unreadable"), strange("Es ist path-unreadable.", List.of(), Set.of()));
        assertEquals(List.of("outer.left-seam"), strange("an outer.left-seam", List.of(), Set.of()));
    }
}
