package org.hidewright.distribution;

import java.io.File;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words of labels and keys in messages files, held against the list of words. */
final class VisibleWords {
    /** Sentences are read as a whole, not word by word; only labels and keys are listed. */
    private static final List<String> SENTENCES = List.of(
            "source.",
            "phrase.",
            "trouble.",
            "notice.",
            "reading.",
            "where.",
            "overview.",
            "option.",
            "make.",
            "window.",
            "work.",
            "explain.",
            "find.",
            "outlines.",
            "keep.",
            "put-away.",
            "search.",
            "paper.",
            "addons.",
            "new.",
            "workshop.");

    private static final List<String> LINES = List.of(".help", ".why", ".next", ".what", ".purpose");
    private static final Pattern KEY_WORD = Pattern.compile("[a-z]+");
    private static final Pattern LABEL_WORD = Pattern.compile("[a-zA-Zé]+");
    private static final Pattern TEMPLATE_LABEL = Pattern.compile("\"(?:id|key|title|label|name)\": \"([^\"]*)\"");
    /** Names of values stand in the working; each is the first key of its line. */
    private static final Pattern TEMPLATE_VALUES = Pattern.compile("(?m)^    \"([a-z0-9-]+)\": [\"{]");

    private static final Pattern TEMPLATE_OPTIONS = Pattern.compile("\"options\": \\{([^}]*)}");
    private static final Pattern EXPRESSION = Pattern.compile("\\{[^}]*}");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d+}");

    private VisibleWords() {}

    /** Every messages file of what is shipped, the launcher’s sentences apart. */
    static List<Path> messagesFiles(Path root) throws IOException {
        try (Stream<Path> files =
                Stream.of("api", "platform", "plugins").flatMap(folder -> walk(root.resolve(folder)))) {
            return files.filter(file -> file.toString().contains("src" + File.separator + "main"))
                    .filter(file -> !file.toString().contains("launcher"))
                    .sorted()
                    .toList();
        }
    }

    private static Stream<Path> walk(Path folder) {
        try {
            return Files.walk(folder)
                    .filter(file -> file.getFileName().toString().equals("messages.properties"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Each word of a label or key, with one place where it stands. */
    static Map<String, String> in(Path file) throws IOException {
        Properties messages = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            messages.load(reader);
        }
        Map<String, String> words = new TreeMap<>();
        for (String key : messages.stringPropertyNames()) {
            if (SENTENCES.stream().anyMatch(key::startsWith)) {
                continue;
            }
            collect(KEY_WORD.matcher(key), key, words);
            if (LINES.stream().noneMatch(key::endsWith)) {
                String label = PLACEHOLDER.matcher(messages.getProperty(key)).replaceAll("");
                collect(LABEL_WORD.matcher(label), key, words);
            }
        }
        return words;
    }

    /** The same of a template that is written as a text. */
    static Map<String, String> inTemplate(Path file) throws IOException {
        Map<String, String> words = new TreeMap<>();
        Matcher labels = TEMPLATE_LABEL.matcher(Files.readString(file));
        while (labels.find()) {
            String label = EXPRESSION.matcher(labels.group(1)).replaceAll("");
            collect(LABEL_WORD.matcher(label), file.getFileName().toString(), words);
        }
        Matcher values = TEMPLATE_VALUES.matcher(Files.readString(file));
        while (values.find()) {
            collect(KEY_WORD.matcher(values.group(1)), file.getFileName().toString(), words);
        }
        Matcher options = TEMPLATE_OPTIONS.matcher(Files.readString(file));
        while (options.find()) {
            collect(LABEL_WORD.matcher(options.group(1)), file.getFileName().toString(), words);
        }
        return words;
    }

    /** Every template of a bundle that is shipped. */
    static List<Path> templates(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root.resolve("plugins"))) {
            return files.filter(file -> file.toString().endsWith(".json")
                            && file.toString().contains("src" + File.separator + "main")
                            && !file.getParent().endsWith("pictures")) // small drawings of what questions measure
                    .sorted()
                    .toList();
        }
    }

    private static void collect(Matcher found, String key, Map<String, String> words) {
        while (found.find()) {
            words.putIfAbsent(found.group().toLowerCase(Locale.ROOT), key);
        }
    }

    /** The words listed: first cells of tables, and the comma-parted list of everyday words. */
    static Set<String> listed(List<String> page) {
        Set<String> listed = new TreeSet<>();
        boolean everyday = false;
        for (String line : page) {
            everyday |= line.startsWith("## Everyday");
            if (line.startsWith("| ")) {
                listed.add(line.substring(2, line.indexOf(" |", 2)).strip());
            } else if (everyday && !line.startsWith("#") && !line.endsWith(":")) {
                listed.addAll(Stream.of(line.replace(".", "").split(","))
                        .map(String::strip)
                        .filter(word -> !word.isEmpty())
                        .collect(Collectors.toSet()));
            }
        }
        return listed;
    }
}
