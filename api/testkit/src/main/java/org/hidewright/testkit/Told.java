package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Drawing;

/**
 * What came of one question, in a form that can be held against another asking of it, also by another copy of the bundle’s
 * classes.
 *
 * @param asked what was asked
 * @param outcome empty where it broke, or did not end
 * @param working what was taken down
 * @param broke what was thrown
 * @param ended whether it came back at all
 */
record Told(
        Values asked,
        Optional<Outcome<Values>> outcome,
        WorkingTaken working,
        Optional<Throwable> broke,
        boolean ended) {

    List<Notice> notices() {
        return outcome.map(Outcome::notices).orElse(List.of());
    }

    Optional<Values> answers() {
        return outcome.flatMap(Outcome::answers);
    }

    boolean refused() {
        return outcome.map(Outcome::refused).orElse(false);
    }

    /** The keys of the notices that stop. */
    Set<String> refusals() {
        return notices().stream()
                .filter(notice -> notice.kind().severity() == NoticeKind.Severity.STOP)
                .map(notice -> notice.kind().key())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Every single value among the answers, under its place: {@code rows[2].at}. */
    Map<String, Object> leaves() {
        Map<String, Object> leaves = new LinkedHashMap<>();
        answers().ifPresent(values -> leaves(values, "", leaves));
        return leaves;
    }

    private static void leaves(Values values, String path, Map<String, Object> leaves) {
        values.entries().forEach((key, value) -> leaf(value, path + key, leaves));
    }

    private static void leaf(Object value, String place, Map<String, Object> leaves) {
        if (value instanceof Values inside) {
            if (!inside.rowId().isEmpty()) {
                leaves.put(place + " id", inside.rowId());
            }
            leaves(inside, place + ".", leaves);
        } else if (value instanceof List<?> several) {
            leaves.put(place + " rows", several.size());
            for (int i = 0; i < several.size(); i++) {
                leaf(several.get(i), place + "[" + (i + 1) + "]", leaves);
            }
        } else {
            leaves.put(place, value);
        }
    }

    /** Everything told, under its place, in plain values that are equal where a maker would see no difference. */
    Map<String, Object> everything() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("whether it is refused", refused());
        leaves().forEach((place, value) -> all.put(place, plain(value)));
        List<Notice> notices = notices();
        for (int i = 0; i < notices.size(); i++) {
            Notice notice = notices.get(i);
            all.put("notice " + (i + 1), notice.kind() + " at " + notice.place() + " " + plain(notice.args()));
        }
        List<String> lines = working.lines(Told::words);
        for (int i = 0; i < lines.size(); i++) {
            all.put("step " + (i + 1) + " of the working", lines.get(i));
        }
        broke.ifPresent(thrown -> all.put("what is thrown", thrown.toString()));
        return all;
    }

    /** The first thing that another asking tells otherwise; empty where all is the same. */
    Optional<String> differs(Told other) {
        Map<String, Object> mine = everything();
        Map<String, Object> others = other.everything();
        Set<String> places = new LinkedHashSet<>(mine.keySet());
        places.addAll(others.keySet());
        return places.stream()
                .filter(place -> !Objects.equals(mine.get(place), others.get(place)))
                .map(place -> place + " is " + shown(mine.get(place)) + ", then " + shown(others.get(place)))
                .findFirst();
    }

    private static String shown(Object value) {
        String text = value == null ? "not there" : String.valueOf(value);
        return text.length() > 120 ? text.substring(0, 120) + "…" : text;
    }

    private static String words(Object value) {
        return String.valueOf(plain(value));
    }

    /** An enum constant is another object in another copy of its class. */
    private static Object plain(Object value) {
        if (value instanceof Enum<?> constant) {
            return constant.name();
        } else if (value instanceof Phrase phrase) {
            return phrase.key() + plain(phrase.args());
        } else if (value instanceof List<?> several) {
            List<Object> plain = new ArrayList<>();
            several.forEach(one -> plain.add(plain(one)));
            return plain;
        }
        return value instanceof Drawing drawing ? drawing.toString() : value;
    }
}
