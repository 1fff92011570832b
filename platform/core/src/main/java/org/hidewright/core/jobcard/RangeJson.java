package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.range.Choices;
import org.hidewright.core.range.FirstOrder;
import org.hidewright.core.range.Part;
import org.hidewright.core.range.Raised;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.range.RefusedPart;
import org.hidewright.core.range.Spread;
import org.hidewright.core.range.Switch;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AnswerPlaces;
import org.hidewright.core.work.RangedInput;
import org.hidewright.core.work.SlipRanges;
import org.hidewright.core.work.WorkedSlip;

/** The ranges of one slip as a tree for JSON, each number in the unit named beside it. */
final class RangeJson {
    private final WorkedSlip slip;
    private final SlipRanges ranges;
    private final Wording wording;

    RangeJson(WorkedSlip slip, SlipRanges ranges, Wording wording) {
        this.slip = slip;
        this.ranges = ranges;
        this.wording = wording;
    }

    Map<String, Object> tree() {
        RangeStudy<Remark> study = ranges.study();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("inputs", ranges.inputs().stream().map(RangeJson::input).toList());
        Map<String, Object> answers = new LinkedHashMap<>();
        if (slip.answers().isPresent()) {
            Function<String, Unit> units = AnswerPlaces.units(slip);
            study.spreads().forEach((place, spread) -> {
                if (spread.moves()) {
                    answers.put(place, spread(units.apply(place), spread));
                }
            });
        }
        tree.put("answers", answers);
        Map<String, Object> choices = new LinkedHashMap<>();
        study.choices().forEach((place, found) -> {
            if (!found.others().isEmpty()) {
                choices.put(place, choices(place, found));
            }
        });
        tree.put("choices", choices);
        tree.put("answered", study.answered().stream().map(this::part).toList());
        tree.put("refused", study.refused().stream().map(this::refused).toList());
        tree.put("raised", study.raised().stream().map(this::raised).toList());
        tree.put("ended", study.ended().stream().map(this::raised).toList());
        tree.put("rows-change", study.placesChange());
        tree.put("tried", study.tried());
        tree.put("refusals", study.refusals());
        return tree;
    }

    private static Map<String, Object> input(RangedInput input) {
        Map<String, Object> tree = named(input);
        Unit unit = input.typed().unit();
        tree.put("typed", input.typed().text());
        tree.put("low", unit.fromBase(input.typed().range().low()));
        tree.put("high", unit.fromBase(input.typed().range().high()));
        tree.put("unit", unit.symbol());
        return tree;
    }

    private static Map<String, Object> named(RangedInput input) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (input.slip().isEmpty()) {
            tree.put("workshop", input.path());
        } else {
            tree.put("slip", input.slip());
            tree.put("question", input.path());
        }
        return tree;
    }

    private Map<String, Object> spread(Unit unit, Spread spread) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("nominal", unit.fromBase(spread.nominal()));
        tree.put("low", unit.fromBase(spread.low()));
        tree.put("high", unit.fromBase(spread.high()));
        tree.put("interval", List.of(unit.fromBase(spread.intervalLow()), unit.fromBase(spread.intervalHigh())));
        FirstOrder firstOrder = spread.firstOrder();
        tree.put("standard-uncertainty", unit.fromBase(firstOrder.standardUncertainty()));
        tree.put("first-order-holds", spread.firstOrderHolds());
        tree.put("unit", unit.symbol());
        List<Map<String, Object>> shares = new ArrayList<>();
        for (int i = 0; i < ranges.inputs().size(); i++) {
            Map<String, Object> share = named(ranges.inputs().get(i));
            share.put("share", firstOrder.shares()[i]);
            shares.add(share);
        }
        tree.put("shares", shares);
        return tree;
    }

    private Map<String, Object> choices(String place, Choices found) {
        Answer answer = AnswerPlaces.answer(
                        slip.installed()
                                .orElseThrow()
                                .calculator()
                                .declaration()
                                .answers(),
                        place)
                .orElseThrow();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("nominal", bare(answer, found.nominal()));
        tree.put(
                "others",
                found.others().stream()
                        .map(other -> String.valueOf(bare(answer, other)))
                        .sorted()
                        .toList());
        tree.put(
                "switches",
                found.switches().stream().map(one -> switched(answer, one)).toList());
        return tree;
    }

    /** Of a phrase its words, for its key means nothing outside its bundle. */
    private Object bare(Answer answer, Object value) {
        return value instanceof Phrase ? new SlipWording(slip, wording).text(answer, value) : value;
    }

    private Map<String, Object> switched(Answer answer, Switch found) {
        RangedInput input = ranges.inputs().get(found.input());
        Map<String, Object> tree = named(input);
        tree.put("at", input.typed().unit().fromBase(found.at()));
        tree.put("unit", input.typed().unit().symbol());
        tree.put("from", bare(answer, found.from()));
        tree.put("to", bare(answer, found.to()));
        return tree;
    }

    private Map<String, Object> refused(RefusedPart<Remark> refused) {
        Map<String, Object> tree = part(refused.part());
        tree.put("what", wording.what(refused.why()));
        return tree;
    }

    private Map<String, Object> raised(Raised<Remark> raised) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("severity", raised.what().severity().name().toLowerCase(Locale.ROOT));
        tree.put("key", raised.what().key());
        if (!raised.what().question().isEmpty()) {
            tree.put("question", raised.what().question());
        }
        tree.put("parts", raised.parts().stream().map(this::part).toList());
        tree.put("what", wording.what(raised.what()));
        tree.put("why", wording.why(raised.what()));
        tree.put("next", wording.next(raised.what()));
        return tree;
    }

    private Map<String, Object> part(Part part) {
        RangedInput input = ranges.inputs().get(part.input());
        Map<String, Object> tree = named(input);
        tree.put("from", input.typed().unit().fromBase(part.from()));
        tree.put("to", input.typed().unit().fromBase(part.to()));
        tree.put("unit", input.typed().unit().symbol());
        return tree;
    }
}
