package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.range.Choices;
import org.hidewright.core.range.Part;
import org.hidewright.core.range.Raised;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.range.RefusedPart;
import org.hidewright.core.range.Spread;
import org.hidewright.core.range.Switch;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AnswerPlaces;
import org.hidewright.core.work.RangedInput;
import org.hidewright.core.work.SlipRanges;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** What ranges make of one slip’s answers, in words: a row for each answer that moves, and what else there is to say. */
public final class RangeWords {
    private static final int PERCENT = 100;

    /** A share below this is not worth a name. */
    private static final double WORTH_NAMING = 0.05;

    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final SlipRanges ranges;
    private final RangeStudy<Remark> study;
    private final Wording wording;
    private final SlipWording words;

    private RangeWords(WorkedProject worked, WorkedSlip slip, SlipRanges ranges, Wording wording) {
        this.worked = worked;
        this.slip = slip;
        this.ranges = ranges;
        this.study = ranges.study();
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
    }

    /** Empty where the slip hangs on no range. */
    public static Optional<RangeWords> of(WorkedProject worked, WorkedSlip slip, Wording wording) {
        return worked.ranges(slip.slip().id()).map(ranges -> new RangeWords(worked, slip, ranges, wording));
    }

    /** Headings of {@link #rows()}. */
    public List<String> head() {
        return List.of(
                "",
                wording.host("range.least"),
                wording.host("range.most"),
                wording.host("range.interval"),
                wording.host("range.moved-by"));
    }

    /** The single answers that move: label, least and most met, first-order interval, what moves them. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        Function<String, Unit> units = AnswerPlaces.units(slip);
        study.spreads().forEach((place, spread) -> {
            if (AnswerPlaces.inRow(place)) {
                return;
            }
            Answer answer = answer(place);
            Unit unit = units.apply(place);
            String least = shown(answer, unit, spread.low()).inline();
            String most = shown(answer, unit, spread.high()).inline();
            if (!least.equals(most)) {
                rows.add(List.of(
                        label(place, answer),
                        least,
                        most,
                        spread.firstOrderHolds()
                                ? wording.host(
                                        "range.from-to",
                                        shown(answer, unit, spread.intervalLow())
                                                .number(),
                                        shown(answer, unit, spread.intervalHigh())
                                                .inline())
                                : wording.host("range.bends"),
                        movedBy(spread)));
            }
        });
        return rows;
    }

    private Answer answer(String place) {
        return AnswerPlaces.answer(declared(), place).orElseThrow();
    }

    private List<Answer> declared() {
        return slip.installed().orElseThrow().calculator().declaration().answers();
    }

    private String label(String place, Answer answer) {
        String label = words.label(answer);
        return place.endsWith(".width") || place.endsWith(".height")
                ? wording.host("range." + place.substring(place.lastIndexOf('.') + 1), label)
                : label;
    }

    /** As the answer declares, but for money, which has no unit before it is answered. */
    private Shown shown(Answer answer, Unit unit, double base) {
        return unit.dimension() == Dimension.MONEY
                ? wording.values().of(base, unit)
                : wording.values().answer(answer, base);
    }

    /** The inputs with the largest shares, the largest first. */
    private String movedBy(Spread spread) {
        double[] shares = spread.firstOrder().shares();
        return IntStream.range(0, shares.length)
                .boxed()
                .filter(input -> shares[input] >= WORTH_NAMING)
                .sorted(Comparator.comparingDouble(input -> -shares[input]))
                .map(input ->
                        wording.host("range.share", input(input), String.valueOf(Math.round(shares[input] * PERCENT))))
                .collect(Collectors.joining("; "));
    }

    private String input(int index) {
        RangedInput input = ranges.inputs().get(index);
        if (input.slip().isEmpty()) {
            return wording.host("where.cell", input.path());
        }
        WorkedSlip at = worked.slips().get(input.slip());
        String question = new QuestionPlace(at, wording).words(input.path());
        return at == slip ? question : wording.host("job-card.linked", new SlipWording(at, wording).title(), question);
    }

    private String inputValue(int index, double base) {
        Unit unit = ranges.inputs().get(index).typed().unit();
        return wording.values().of(base, unit).inline();
    }

    /** What switches, where nothing can be answered, what is told in part of a range, and what moves inside tables. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        study.choices().forEach((place, found) -> choice(place, found, sentences));
        study.refused().forEach(part -> sentences.add(refused(part)));
        study.raised().forEach(raised -> sentences.add(raised(raised)));
        long bent = study.spreads().values().stream()
                .filter(spread -> spread.moves() && !spread.firstOrderHolds())
                .count();
        if (bent > 0) {
            sentences.add(wording.host("range.bends.help"));
        }
        inTables(sentences);
        if (study.placesChange()) {
            sentences.add(wording.host("range.rows-change"));
        }
        return sentences;
    }

    private void choice(String place, Choices found, List<String> sentences) {
        Answer answer = answer(place);
        for (Switch one : found.switches()) {
            sentences.add(wording.host(
                    "range.switch",
                    placeLabel(place, answer),
                    words.text(answer, one.from()),
                    words.text(answer, one.to()),
                    input(one.input()),
                    inputValue(one.input(), one.at())));
        }
        if (found.switches().isEmpty() && !found.others().isEmpty()) {
            sentences.add(wording.host(
                    "range.others",
                    placeLabel(place, answer),
                    found.others().stream()
                            .map(other -> words.text(answer, other))
                            .sorted()
                            .collect(Collectors.joining(", "))));
        }
    }

    private String placeLabel(String place, Answer answer) {
        return AnswerPlaces.inRow(place)
                ? place.substring(place.indexOf('[') + 1, place.indexOf(']')) + ", " + words.label(answer)
                : words.label(answer);
    }

    private String refused(RefusedPart<Remark> refused) {
        Part part = refused.part();
        return wording.host(
                "range.refused",
                input(part.input()),
                inputValue(part.input(), part.from()),
                inputValue(part.input(), part.to()),
                wording.what(refused.why()));
    }

    private String raised(Raised<Remark> raised) {
        String severity =
                wording.host("severity." + raised.what().severity().name().toLowerCase(Locale.ROOT));
        return raised.parts().isEmpty()
                ? wording.host("range.check-together", severity, wording.what(raised.what()))
                : wording.host(
                        "range.check",
                        severity,
                        raised.parts().stream().map(this::part).collect(Collectors.joining("; ")),
                        wording.what(raised.what()));
    }

    private String part(Part part) {
        Range range = ranges.inputs().get(part.input()).typed().range();
        String input = input(part.input());
        String from = inputValue(part.input(), part.from());
        String to = inputValue(part.input(), part.to());
        if (part.to() == range.high() && part.from() > range.low()) {
            return wording.host("range.where-more", input, from);
        }
        return part.from() == range.low() && part.to() < range.high()
                ? wording.host("range.where-less", input, to)
                : wording.host("range.where", input, from, to);
    }

    /** How many numbers in tables move; each is in the JSON. */
    private void inTables(List<String> sentences) {
        long moving = study.spreads().entrySet().stream()
                .filter(entry ->
                        AnswerPlaces.inRow(entry.getKey()) && entry.getValue().moves())
                .count();
        if (moving > 0) {
            sentences.add(wording.host("range.in-tables", moving));
        }
    }

    /** How all this was found, and how far to trust it. */
    public String how() {
        boolean corners = ranges.inputs().size() > 1 && ranges.inputs().size() <= RangeStudy.MOST_WITH_CORNERS;
        return wording.host(
                corners ? "range.how-corners" : "range.how",
                String.valueOf(study.tried()),
                String.valueOf(RangeStudy.SAMPLE));
    }
}
