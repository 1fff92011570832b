package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.Place;
import org.hidewright.core.proof.TranslationLines.Line;
import org.hidewright.core.wording.Remark;

/**
 * Looks over what a template says in another language, in a file beside it: whether it says all that the template says and nothing
 * else, is filled with the same, and is written as it is read.
 */
public final class TranslationProof {
    private static final Pattern FILE = Pattern.compile("(.+)_([a-z]{2,3})(_[A-Z]{2})?\\.properties");
    private static final Pattern FILLED = Pattern.compile("\\{\\d+}");

    /** What is left of a letter that is not UTF-8, and a letter of UTF-8 that was read as two of another encoding. */
    private static final Pattern SPOILT =
            Pattern.compile("\\uFFFD|[ÃÂ][\\u0080-\\u00BF\\u0152-\\u0178\\u2013-\\u2122]");

    private static final String ITEM = "item.";
    private static final String ON_PARTS = "item.on.";
    private static final String NTH = "nth";
    private static final int SHOWN = 40;

    private final Map<String, String> says;
    private final TemplatePlaces places;
    private final List<Remark> remarks = new ArrayList<>();

    private TranslationProof(Map<String, String> says, TemplatePlaces places) {
        this.says = says;
        this.places = places;
    }

    /** The template that a file is of, by its path, {@code pen-case_de.properties} of {@code pen-case.json}; empty where its name says none. */
    public static Optional<String> template(String path) {
        Matcher named = FILE.matcher(path);
        return named.matches() ? Optional.of(named.group(1) + ".json") : Optional.empty();
    }

    /** Whether a file is of the language in one country alone; what it does not say stands in that of the language. */
    private static boolean ofCountry(String path) {
        Matcher named = FILE.matcher(path);
        return named.matches() && named.group(3) != null;
    }

    /**
     * Looks a file over.
     *
     * @param path how it is called
     * @param file the text of it
     * @param template the text of the template
     * @param says what the template says, as its own look has found it
     */
    public static Proof of(String path, String file, String template, Map<String, String> says) {
        TranslationProof proof = new TranslationProof(says, new TemplatePlaces(template));
        List<Line> lines = TranslationLines.of(file);
        proof.spoilt(lines);
        Map<String, Line> byKey = new HashMap<>();
        for (Line line : lines) {
            if (!line.read()) {
                proof.say(line, ProofNotices.PROOF_TRANSLATION_ESCAPE.with(cut(line.text())));
            } else if (proof.named(line, byKey)) {
                proof.text(line);
            }
        }
        if (!ofCountry(path)) {
            proof.missing(
                    language(path),
                    byKey.keySet(),
                    lines.isEmpty() ? 1 : lines.get(lines.size() - 1).line());
        }
        return new Proof(proof.remarks, lines.size());
    }

    /** Told once: a file that is written in another encoding is so in every line. */
    private void spoilt(List<Line> lines) {
        lines.stream()
                .filter(line -> SPOILT.matcher(line.text()).find())
                .findFirst()
                .ifPresent(line -> say(line, ProofNotices.PROOF_TRANSLATION_SPOILT.with(cut(line.text()))));
    }

    /** Whether the template says something by this key. */
    private boolean named(Line line, Map<String, Line> byKey) {
        Line before = byKey.put(line.key(), line);
        if (before != null) {
            say(line, ProofNotices.PROOF_TRANSLATION_TWICE.with(line.key(), before.line()));
        }
        if (says.containsKey(line.key()) || isOfItem(line.key())) {
            return true;
        }
        Optional<String> nearest = nearest(line.key());
        if (nearest.isEmpty() && line.key().startsWith(ON_PARTS)) {
            return true; // what is asked of other calculators may lie on parts under names of theirs
        }
        say(
                line,
                nearest.map(other -> ProofNotices.PROOF_TRANSLATION_NEAREST.with(line.key(), other))
                        .orElseGet(() -> ProofNotices.PROOF_TRANSLATION_UNKNOWN.with(line.key())));
        return false;
    }

    /** Of an item only another of the same kind can be meant. */
    private Optional<String> nearest(String key) {
        String kind = key.startsWith(ITEM) ? key.substring(0, key.indexOf('.', ITEM.length()) + 1) : "";
        List<String> names = says.keySet().stream()
                .filter(other -> other.startsWith(kind))
                .map(other -> other.substring(kind.length()))
                .toList();
        return Nearest.to(key.substring(kind.length()), names).map(kind::concat);
    }

    /** A part with this number, or one that none of the sets of answers has drawn. */
    private boolean isOfItem(String key) {
        int name = key.indexOf('.', ITEM.length());
        return key.startsWith(ITEM)
                && name > 0
                && (says.containsKey(numberless(key)) || places.draws(key.substring(name + 1)));
    }

    private static String numberless(String key) {
        return key.replaceFirst("(?<![a-z0-9])[0-9]+(?![a-z0-9])", NTH);
    }

    private void text(Line line) {
        if (line.text().isBlank()) {
            say(line, ProofNotices.PROOF_BLANK.with(line.key()));
            return;
        }
        Set<String> filled = filled(line.text());
        Set<String> wanted = wanted(line.key());
        boolean number = line.key().startsWith(ITEM) && line.key().contains(NTH) && filled.equals(Set.of("{0}"));
        if (!filled.equals(wanted) && !number) {
            say(line, ProofNotices.PROOF_TRANSLATION_PLACES.with(line.key(), listed(filled), listed(wanted)));
        }
    }

    /** The words of an item are filled with nothing but a number. */
    private Set<String> wanted(String key) {
        return key.startsWith(ITEM) ? Set.of() : filled(says.get(key));
    }

    private static Set<String> filled(String text) {
        Set<String> filled = new TreeSet<>();
        FILLED.matcher(text).results().forEach(place -> filled.add(place.group()));
        return filled;
    }

    private static String listed(Set<String> places) {
        return places.isEmpty() ? "–" : String.join(", ", places);
    }

    private static Locale language(String path) {
        Matcher named = FILE.matcher(path);
        return named.matches() ? new Locale(named.group(2)) : Locale.ROOT;
    }

    /** What lies on parts has common words of the host, as far as it speaks the language. */
    private void missing(Locale language, Set<String> there, int last) {
        Set<String> missing = new TreeSet<>(says.keySet());
        missing.removeAll(there);
        missing.removeIf(key -> CoreTexts.TEXTS.find(key, language).isPresent());
        there.forEach(key -> missing.remove(numberless(key)));
        if (!missing.isEmpty()) {
            remarks.add(Remark.of(
                            ProofNotices.PROOF_TRANSLATION_MISSING.with(missing.size(), String.join(", ", missing)),
                            CoreTexts.TEXTS)
                    .atPlace(new Place(last, 1)));
        }
    }

    private static String cut(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
    }

    private void say(Line line, Notice notice) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(new Place(line.line(), 1)));
    }
}
