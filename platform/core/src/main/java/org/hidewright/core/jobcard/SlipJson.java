package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.Step;

/**
 * A worked slip as a tree for JSON. Keys and numbers are the same in every language and unit system: numbers have full
 * precision in the unit named beside them, texts are in the language of the wording.
 */
public final class SlipJson {
    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final Wording wording;
    private final SlipWording words;

    public SlipJson(WorkedProject worked, WorkedSlip slip, Wording wording) {
        this.worked = worked;
        this.slip = slip;
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
    }

    public Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", slip.slip().id());
        tree.put("calculator", slip.slip().calculator());
        tree.put("title", words.title());
        tree.put("state", slip.state().name().toLowerCase(Locale.ROOT));
        tree.put("questions", questions());
        slip.answers().ifPresent(answers -> tree.put("answers", answers(answers)));
        worked.ranges(slip.slip().id())
                .ifPresent(ranges -> tree.put("ranges", new RangeJson(slip, ranges, wording).tree()));
        if (!slip.steps().isEmpty()) {
            tree.put("working", slip.steps().stream().map(this::step).toList());
        }
        tree.put(
                "notices",
                worked.remarks(slip).stream()
                        .map(remark -> remark(remark, wording))
                        .toList());
        return tree;
    }

    private Map<String, Object> questions() {
        Map<String, Object> questions = new LinkedHashMap<>();
        for (AskedLine line : slip.asked()) {
            if (line.depth() == 0) {
                Map<String, Object> entry = new LinkedHashMap<>();
                line.value().ifPresent(value -> entry.putAll(valued(line.question(), value)));
                entry.put("from", from(line));
                line.cell().ifPresent(cell -> entry.put("workshop", cell));
                if (!line.text().isEmpty()) {
                    entry.put(line.link().isPresent() ? "link" : "typed", line.text());
                }
                line.typedRange().filter(range -> !range.isExact()).ifPresent(range -> {
                    Unit unit = line.question().unit().orElse(Units.ONE);
                    entry.put("low", unit.fromBase(range.low()));
                    entry.put("high", unit.fromBase(range.high()));
                });
                questions.put(line.question().key(), entry);
            }
        }
        return questions;
    }

    private String from(AskedLine line) {
        if (line.cell().isPresent()) {
            return "workshop";
        }
        if (slip.slip().isExample(line.question().key())) {
            return "example";
        }
        return line.link().isPresent() ? "link" : line.preset() ? "preset" : "typed";
    }

    private Map<String, Object> answers(Values answers) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Answer answer :
                slip.installed().orElseThrow().calculator().declaration().answers()) {
            answers.get(answer.key()).ifPresent(value -> {
                Map<String, Object> entry = new LinkedHashMap<>(valued(answer, value));
                slip.source(answer).ifPresent(source -> entry.put("source", source(source)));
                tree.put(answer.key(), entry);
            });
        }
        return tree;
    }

    private Map<String, Object> source(Source source) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", source.key());
        tree.put("kind", source.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        tree.put("text", words.sourceText(source));
        return tree;
    }

    /** The value, and beside it its unit where it has one. */
    private Map<String, Object> valued(Field field, Object value) {
        Map<String, Object> entry = new LinkedHashMap<>();
        if (value instanceof Drawing drawing) {
            Box bounds = drawing.bounds();
            entry.put("drawing", Map.of("shapes", drawing.shapes().size()));
            entry.put("width", bounds.width());
            entry.put("height", bounds.height());
            entry.put("unit", Units.MM.symbol());
            return entry;
        }
        if (value instanceof Item item) {
            entry.put("value", bare(field, ItemFacts.rows(item)));
            return entry;
        }
        entry.put("value", bare(field, value));
        unit(field, value)
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .ifPresent(symbol -> entry.put("unit", symbol));
        return entry;
    }

    private static Optional<Unit> unit(Field field, Object value) {
        if (value instanceof Money money) {
            return Optional.of(money.currency());
        }
        if (value instanceof List<?> items) {
            return items.isEmpty() || items.get(0) instanceof Values ? Optional.empty() : unit(field, items.get(0));
        }
        return value instanceof Quantity || value instanceof Size || value instanceof Double
                ? field.unit()
                : Optional.empty();
    }

    private Object bare(Field field, Object value) {
        if (value instanceof Quantity<?> quantity) {
            return field.unit().orElse(Units.base(quantity.dimension())).fromBase(quantity.base());
        } else if (value instanceof Double number) {
            return field.unit().orElse(Units.ONE).fromBase(number);
        } else if (value instanceof Size size) {
            Unit unit = field.unit().orElse(Units.MM);
            return List.of(
                    unit.fromBase(size.width().mm()),
                    unit.fromBase(size.height().mm()));
        } else if (value instanceof Money money) {
            return money.amount();
        } else if (value instanceof LocalDate) {
            return value.toString();
        } else if (value instanceof Phrase) {
            return words.text(field, value);
        } else if (value instanceof Chosen chosen) {
            return chosen(field, chosen);
        } else if (value instanceof Values values) {
            return group(field, values);
        } else if (value instanceof List<?> items) {
            return items.stream().map(item -> bare(field, item)).toList();
        }
        return value;
    }

    private Object chosen(Field field, Chosen chosen) {
        List<Question> inside = ((Question) field)
                .variants().stream()
                        .filter(variant -> variant.key().equals(chosen.variant()))
                        .map(Variant::questions)
                        .findFirst()
                        .orElseThrow();
        Map<String, Object> tree = rowStart(chosen.values());
        tree.put(chosen.variant(), fields(inside, chosen.values()));
        return tree;
    }

    private Object group(Field field, Values values) {
        List<? extends Field> inside =
                field instanceof Question question ? question.questions() : ((Answer) field).columns();
        Map<String, Object> tree = rowStart(values);
        tree.putAll(fields(inside, values));
        return tree;
    }

    private static Map<String, Object> rowStart(Values values) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (!values.rowId().isEmpty()) {
            tree.put("id", values.rowId());
        }
        return tree;
    }

    private Map<String, Object> fields(List<? extends Field> fields, Values values) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Field field : fields) {
            values.get(field.key()).ifPresent(value -> tree.put(field.key(), valued(field, value)));
        }
        return tree;
    }

    private Map<String, Object> step(Step step) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("what", words.formulaName(step.formula().key()));
        tree.put("formula", step.formula().symbols());
        tree.put("numbers", FormulaText.numbers(step, wording));
        tree.put("result", FormulaText.result(step, wording));
        tree.put("source", source(step.formula().source()));
        return tree;
    }

    /** A remark as a tree for JSON. */
    public static Map<String, Object> remark(Remark remark, Wording wording) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("severity", remark.severity().name().toLowerCase(Locale.ROOT));
        tree.put("key", remark.key());
        if (!remark.slip().isEmpty()) {
            tree.put("slip", remark.slip());
        }
        if (!remark.question().isEmpty()) {
            tree.put("question", remark.question());
        }
        if (remark.place() != null) {
            tree.put("line", remark.place().line());
            tree.put("column", remark.place().column());
        }
        tree.put("what", wording.what(remark));
        tree.put("why", wording.why(remark));
        tree.put("next", wording.next(remark));
        return tree;
    }
}
