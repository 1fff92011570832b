package org.hidewright.core.jobcard;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/**
 * The job card as rows for a spreadsheet: the same values as its JSON, one a row. Numbers have nine significant digits at
 * most, and a decimal point in every language.
 */
public final class JobCardRows {
    /** Hides the last bits of a sum or a conversion, which a spreadsheet would show. */
    private static final MathContext DIGITS = new MathContext(9);

    private static final List<String> HEAD =
            List.of("slip", "calculator", "part", "row", "key", "label", "value", "unit", "source");

    private final WorkedProject worked;
    private final Wording wording;
    private final List<List<String>> rows = new ArrayList<>();

    private JobCardRows(WorkedProject worked, Wording wording) {
        this.worked = worked;
        this.wording = wording;
    }

    /** All rows, the headings first. */
    public static List<List<String>> of(WorkedProject worked, Wording wording) {
        JobCardRows card = new JobCardRows(worked, wording);
        card.rows.add(HEAD);
        worked.general().forEach(remark -> card.remark("", "", remark));
        worked.slips().values().forEach(card::slip);
        return List.copyOf(card.rows);
    }

    private void slip(WorkedSlip slip) {
        String id = slip.slip().id();
        String calculator = slip.slip().calculator();
        Map<String, Object> tree = new SlipJson(worked, slip, wording).tree();
        SlipWording words = new SlipWording(slip, wording);
        row(id, calculator, "state", "", "state", "", String.valueOf(tree.get("state")), "", "");
        values(id, calculator, "question", words, tree.get("questions"), "");
        values(id, calculator, "answer", words, tree.get("answers"), "");
        ranges(id, calculator, tree.get("ranges"));
        slip.remarks().forEach(remark -> remark(id, calculator, remark));
        RangeChecks.of(worked, slip, wording)
                .forEach(check -> remark(
                        id, calculator, check.severity(), check.about(), check.what(), check.why(), check.next()));
    }

    private void remark(String slip, String calculator, Remark remark) {
        remark(
                slip,
                calculator,
                remark.severity(),
                remark,
                wording.what(remark),
                wording.why(remark),
                wording.next(remark));
    }

    private void remark(
            String slip, String calculator, Severity severity, Remark about, String what, String why, String next) {
        row(
                slip,
                calculator,
                severity.name().toLowerCase(Locale.ROOT),
                "",
                about.question(),
                about.key(),
                what + " " + why + " " + next,
                "",
                "");
    }

    /** The least and the most met of each answer that moves, and where each choice switches, under its place. */
    private void ranges(String id, String calculator, Object ranges) {
        if (ranges instanceof Map<?, ?> tree && tree.get("choices") instanceof Map<?, ?> choices) {
            choices.forEach((place, entry) -> {
                for (Object one : (List<?>) ((Map<?, ?>) entry).get("switches")) {
                    Map<?, ?> found = (Map<?, ?>) one;
                    row(
                            id,
                            calculator,
                            "switch",
                            "",
                            String.valueOf(place),
                            number(found.get("from")) + " > " + number(found.get("to")),
                            number(found.get("at")),
                            text(found.get("unit")),
                            "");
                }
            });
        }
        if (ranges instanceof Map<?, ?> tree && tree.get("answers") instanceof Map<?, ?> answers) {
            answers.forEach((place, entry) -> {
                Map<?, ?> spread = (Map<?, ?>) entry;
                for (String end : List.of("low", "high")) {
                    row(
                            id,
                            calculator,
                            end,
                            "",
                            String.valueOf(place),
                            "",
                            number(spread.get(end)),
                            text(spread.get("unit")),
                            "");
                }
            });
        }
    }

    private void values(String id, String calculator, String part, SlipWording words, Object values, String row) {
        if (values instanceof Map<?, ?> map) {
            map.forEach((key, value) -> value(id, calculator, part, words, String.valueOf(key), value, row));
        }
    }

    /** One entry of the JSON tree: a value with its unit, or rows and groups, whose entries follow one by one. */
    private void value(
            String id, String calculator, String part, SlipWording words, String key, Object entry, String row) {
        if (!(entry instanceof Map<?, ?> map) || !map.containsKey("value")) {
            return;
        }
        Object value = map.get("value");
        if (value instanceof List<?> items && items.stream().anyMatch(Map.class::isInstance)) {
            items.forEach(item -> inside(id, calculator, part, words, key, item));
        } else if (value instanceof Map<?, ?>) {
            inside(id, calculator, part, words, key, value);
        } else {
            String text = value instanceof List<?> items
                    ? String.join("; ", items.stream().map(JobCardRows::number).toList())
                    : number(value);
            row(id, calculator, part, row, key, label(words, part, key), text, text(map.get("unit")), source(map));
        }
    }

    private void inside(String id, String calculator, String part, SlipWording words, String key, Object item) {
        if (!(item instanceof Map<?, ?> map)) {
            return;
        }
        String row = text(map.get("id"));
        map.forEach((inner, value) -> {
            String path = key + "." + inner;
            if (value instanceof Map<?, ?> nested && nested.containsKey("value")) {
                value(id, calculator, part, words, path, value, row);
            } else if (value instanceof Map<?, ?> nested) {
                nested.forEach((deeper, deep) -> value(id, calculator, part, words, path + "." + deeper, deep, row));
            }
        });
    }

    private static String label(SlipWording words, String part, String key) {
        return words.labelOf(part.equals("answer"), key).orElse("");
    }

    private static String source(Map<?, ?> entry) {
        return Optional.ofNullable(entry.get("source"))
                .map(source -> text(((Map<?, ?>) source).get("text")))
                .orElse("");
    }

    private static String number(Object value) {
        return String.valueOf(
                value instanceof Double number
                        ? (Object) new BigDecimal(number).round(DIGITS).doubleValue()
                        : value);
    }

    private static String text(Object value) {
        return value == null ? "" : String.valueOf(value);
    }

    private void row(String... cells) {
        rows.add(List.of(cells));
    }
}
