package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** German is whole: every text that is shipped stands in it too, and says as much. */
class GermanTextsTest {
    private static final Path ROOT = Path.of("../..");
    private static final int MOST_ARGUMENTS = 12;

    private final List<String> wrong = new ArrayList<>();

    private static List<Path> english() throws Exception {
        try (Stream<Path> launcher = Files.walk(ROOT.resolve("platform/launcher/src/main"))) {
            List<Path> all = new ArrayList<>(VisibleWords.messagesFiles(ROOT));
            launcher.filter(file -> file.endsWith("messages.properties")).forEach(all::add);
            return all;
        }
    }

    private static Map<String, String> texts(Path file) throws Exception {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            texts.load(reader);
        }
        Map<String, String> sorted = new TreeMap<>();
        texts.forEach((key, text) -> sorted.put((String) key, (String) text));
        return sorted;
    }

    /** The numbers of the arguments that show in a text. */
    private static Set<Integer> arguments(String pattern, Locale language) {
        Object[] marks = new Object[MOST_ARGUMENTS];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = "‹" + i + "›";
        }
        String shown = new MessageFormat(pattern, language).format(marks);
        Set<Integer> found = new TreeSet<>();
        for (int i = 0; i < marks.length; i++) {
            if (shown.contains("‹" + i + "›")) {
                found.add(i);
            }
        }
        return found;
    }

    @Test
    void everyTextStandsInGermanWithTheSameArguments() throws Exception {
        int looked = 0;
        for (Path file : english()) {
            Path german = file.resolveSibling("messages_de.properties");
            if (!Files.exists(german)) {
                wrong.add(ROOT.relativize(german) + " is missing");
                continue;
            }
            Map<String, String> of = texts(file);
            Map<String, String> in = texts(german);
            Set<String> unlike = new TreeSet<>(of.keySet());
            unlike.addAll(in.keySet());
            unlike.removeIf(key -> of.containsKey(key) && in.containsKey(key));
            unlike.removeIf(key -> key.startsWith("item.")); // in English an item says them itself
            unlike.forEach(key -> wrong.add(ROOT.relativize(german) + ": " + key + " stands in one of both"));
            for (String key : of.keySet()) {
                String text = in.get(key);
                if (text == null) {
                    continue;
                }
                looked++;
                if (!arguments(of.get(key), Locale.ENGLISH).equals(arguments(text, Locale.GERMAN))) {
                    wrong.add(ROOT.relativize(german) + ": " + key + " has other arguments");
                }
                if (text.contains("'") != of.get(key).contains("'")) {
                    wrong.add(ROOT.relativize(german) + ": " + key + " quotes otherwise");
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(looked > 5000, looked + " texts");
    }
}
