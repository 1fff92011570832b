package org.hidewright.testkit;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.testkit.DeclaredTexts.Text;

/** What is wrong with the texts of a bundle, in sentences. */
final class TextChecks {
    /** A heading of more words does not fit over a column of figures on paper. */
    private static final int HEADING_WORDS = 3;

    private final Bundle bundle;
    private final Set<String> others;
    private final Properties texts;
    private final List<Text> declared;

    /** @param others keys of texts that are shown by other means than a calculator */
    TextChecks(Bundle bundle, Set<String> others) {
        this.bundle = bundle;
        this.others = others;
        this.texts = bundle.texts();
        this.declared = DeclaredTexts.of(bundle.calculators());
    }

    /** Of everything shown; the texts of questions that come from elsewhere may be there. */
    Collection<String> missing() {
        Set<String> missing = declared.stream()
                .filter(Text::required)
                .filter(text -> isBlank(text.key()))
                .filter(text -> bundle.calculators().stream()
                        .noneMatch(calculator -> calculator
                                .texts()
                                .find(text.key(), Locale.ENGLISH)
                                .isPresent()))
                .map(text ->
                        text.wantedBy() + ": the text " + text.key() + " is missing. Write it in messages.properties.")
                .collect(Collectors.toCollection(TreeSet::new));
        others.stream()
                .filter(this::isBlank)
                .forEach(key -> missing.add("The text " + key + " stands in otherTexts() and is missing. Write it in"
                        + " messages.properties."));
        return missing;
    }

    private boolean isBlank(String key) {
        return texts.getProperty(key, "").isBlank();
    }

    Collection<String> idle() {
        Set<String> idle = new TreeSet<>(texts.stringPropertyNames());
        declared.forEach(text -> idle.remove(text.key()));
        idle.removeAll(others);
        return said(idle, " is shown nowhere. Take it out of messages.properties, or see whether its key is right.");
    }

    Collection<String> twice() {
        Map<String, Integer> times = new TreeMap<>();
        for (String line : bundle.lines()) {
            if (!line.startsWith("#") && line.contains("=")) {
                times.merge(line.substring(0, line.indexOf('=')).strip(), 1, Integer::sum);
            }
        }
        times.values().removeIf(count -> count == 1);
        return said(
                times.keySet(), " stands more than once in messages.properties, and only the last is shown. Keep one.");
    }

    Collection<String> sharedByOthers() {
        Map<String, Text> first = new HashMap<>();
        List<String> clashes = new ArrayList<>();
        for (Text text : declared) {
            Text other = first.putIfAbsent(text.key(), text);
            if (other != null && !other.kind().equals(text.kind())) {
                clashes.add(
                        text.key() + ": " + other.wantedBy() + " and " + text.wantedBy()
                                + " share a label and ask for different things. Name one of their records or components otherwise.");
            }
        }
        return clashes;
    }

    Collection<String> straightApostrophes() {
        return said(
                bundle.lines().stream().filter(line -> line.contains("'")).toList(),
                ": a straight apostrophe hides the places of a text. Write ’.");
    }

    Collection<String> unfilled() {
        Map<String, Integer> fewest = RaisedNotices.fewestArguments(bundle.sources());
        Set<String> unfed = new TreeSet<>();
        texts.forEach((key, text) -> {
            int wanted = places((String) text);
            String[] parts = ((String) key).split("\\.");
            boolean notice = parts[0].equals("notice");
            if (!notice && wanted > 0 && !parts[0].equals("phrase") && !others.contains(key)) {
                unfed.add(key + " has a place that nothing fills. Leave the braces out.");
            } else if (notice && wanted > fewest.getOrDefault(parts[1], 0)) {
                unfed.add(key + " calls for " + wanted + " and is raised with " + fewest.getOrDefault(parts[1], 0)
                        + ". Give what it calls for wherever it is raised, or leave the place out.");
            }
        });
        return unfed;
    }

    /** One more than the greatest place number in a pattern. */
    private static int places(String pattern) {
        return new MessageFormat(pattern, Locale.ROOT).getFormatsByArgumentIndex().length;
    }

    Collection<String> neverRaised() {
        Set<String> idle = bundle.calculators().stream()
                .flatMap(calculator -> calculator.declaration().notices().stream())
                .map(kind -> kind.key())
                .collect(Collectors.toCollection(TreeSet::new));
        idle.removeAll(RaisedNotices.fewestArguments(bundle.sources()).keySet());
        return said(idle, ": the notice is declared and raised nowhere. Raise it, or take it out of notices().");
    }

    Collection<String> longHeadings() {
        Set<String> headings = new TreeSet<>();
        for (RecordCalculator calculator : bundle.calculators()) {
            calculator
                    .declaration()
                    .answers()
                    .forEach(answer -> DeclaredTexts.columns(answer).stream()
                            .map(Answer::labelKey)
                            .forEach(headings::add));
        }
        headings.removeIf(key -> texts.getProperty(key, "").split(" ").length <= HEADING_WORDS);
        return said(
                headings,
                " heads a column, and more than " + HEADING_WORDS + " words do not fit. Say the rest in its help.");
    }

    private static Collection<String> said(Collection<String> keys, String what) {
        return keys.stream().map(key -> key + what).toList();
    }
}
