package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.document.Bars;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.range.Choices;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.range.Spread;
import org.hidewright.core.range.Switch;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AnswerPlaces;
import org.hidewright.core.work.SlipRanges;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** What ranges make of one slip’s answers, in words: a row for each answer that moves, and what else there is to say. */
public final class RangeWords {
    private static final int PERCENT = 100;

    /** A share below this is not worth a name. */
    private static final double WORTH_NAMING = 0.05;

    /** Of the choices met beside the nominal one so many are named. */
    private static final int MOST_NAMED = 8;

    private final WorkedSlip slip;
    private final SlipRanges ranges;
    private final RangeStudy<Remark> study;
    private final Wording wording;
    private final SlipWording words;
    private final RangedInputs inputs;
    private final Function<String, Unit> units;

    private RangeWords(WorkedProject worked, WorkedSlip slip, SlipRanges ranges, Wording wording) {
        this.slip = slip;
        this.ranges = ranges;
        this.study = ranges.study();
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
        this.inputs = new RangedInputs(worked, slip, ranges.inputs(), wording);
        this.units = slip.answers().isPresent() ? AnswerPlaces.units(slip) : place -> Units.ONE;
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
        study.spreads().forEach((place, spread) -> {
            if (isRow(place, spread)) {
                String least = shown(place, spread.low()).inline();
                String most = shown(place, spread.high()).inline();
                rows.add(List.of(
                        label(place),
                        least,
                        most,
                        spread.firstOrderHolds()
                                ? fromTo(place, spread.intervalLow(), spread.intervalHigh())
                                : wording.host("range.bends"),
                        movedBy(spread)));
            }
        });
        return rows;
    }

    /** Whether it is a single number that reads otherwise at either end. */
    private boolean isRow(String place, Spread spread) {
        return !AnswerPlaces.inRow(place)
                && !shown(place, spread.low())
                        .inline()
                        .equals(shown(place, spread.high()).inline());
    }

    /**
     * A single number that moves.
     *
     * @param low the least met, in base units
     * @param high the most met
     * @param least the least as it is told
     * @param most the most as it is told, with its unit
     * @param movedBy the inputs that move it, the strongest first, each with its share
     * @param shares the same as bars, of an answer that leads and that more than one input moves
     */
    public record Met(double low, double high, String least, String most, String movedBy, Optional<Bars> shares) {}

    /** What a single number comes to over the ranges; empty where it does not move, or reads the same at either end. */
    public Optional<Met> met(Answer answer) {
        Spread spread = study.spreads().get(answer.key());
        if (spread == null || leastToMost(answer.key()).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Met(
                spread.low(),
                spread.high(),
                shown(answer.key(), spread.low()).number(),
                shown(answer.key(), spread.high()).inline(),
                movedBy(spread),
                shares(answer)));
    }

    /** What a single answer comes to over the ranges: from the least met to the most, or what else it may be. */
    public Optional<String> glance(Answer answer) {
        if (answer.kind() == Kind.SIZE) {
            Spread width = study.spreads().get(AnswerPlaces.within(answer.key(), AnswerPlaces.WIDTH));
            Spread height = study.spreads().get(AnswerPlaces.within(answer.key(), AnswerPlaces.HEIGHT));
            return width == null || height == null
                    ? Optional.empty()
                    : fromTo(size(answer, width.low(), height.low()), size(answer, width.high(), height.high()));
        }
        Choices choices = study.choices().get(answer.key());
        return choices == null
                ? leastToMost(answer.key())
                : Optional.of(choices.others())
                        .filter(others -> !others.isEmpty())
                        .map(others -> wording.host("range.or", others(answer, others)));
    }

    private String size(Answer answer, double width, double height) {
        return words.text(answer, Size.of(Length.ofMm(width), Length.ofMm(height)));
    }

    /** Empty where it does not move, or reads the same at either end. */
    private Optional<String> leastToMost(String place) {
        Spread spread = study.spreads().get(place);
        return spread == null || !spread.moves()
                ? Optional.empty()
                : fromTo(
                                shown(place, spread.low()).inline(),
                                shown(place, spread.high()).inline())
                        .map(text -> fromTo(place, spread.low(), spread.high()));
    }

    private Optional<String> fromTo(String least, String most) {
        return least.equals(most) ? Optional.empty() : Optional.of(wording.host("range.from-to", least, most));
    }

    private String fromTo(String place, double low, double high) {
        return wording.host(
                "range.from-to", shown(place, low).number(), shown(place, high).inline());
    }

    private String others(Answer answer, Set<Object> others) {
        List<String> texts =
                others.stream().map(other -> words.text(answer, other)).sorted().toList();
        return texts.size() <= MOST_NAMED
                ? String.join(", ", texts)
                : wording.host(
                        "range.others-more",
                        String.join(", ", texts.subList(0, MOST_NAMED)),
                        texts.size() - MOST_NAMED);
    }

    /** The numbers inside tables that move, table by table; tables too long for the card are left out. */
    public List<RangeTable> tables() {
        return RangeTable.of(declared(), inTables(), this::label, words::rowName);
    }

    private Map<String, String> inTables() {
        Map<String, String> texts = new LinkedHashMap<>();
        study.spreads().keySet().stream()
                .filter(AnswerPlaces::inRow)
                .forEach(place -> leastToMost(place).ifPresent(text -> texts.put(place, text)));
        return texts;
    }

    /** What stands over a table of {@link #tables()}. */
    public String caption(RangeTable table) {
        return wording.host("range.table", words.label(table.answer()));
    }

    private Answer answer(String place) {
        return AnswerPlaces.answer(declared(), place).orElseThrow();
    }

    private List<Answer> declared() {
        return slip.installed().orElseThrow().calculator().declaration().answers();
    }

    private String label(String place) {
        Answer answer = answer(place);
        String label = words.label(answer);
        return answer.itemKind() == Kind.SIZE
                ? wording.host("range." + place.substring(place.lastIndexOf('.') + 1), label)
                : label;
    }

    /** As the answer declares, but for money, which has no unit before it is answered. */
    private Shown shown(String place, double base) {
        Unit unit = units.apply(place);
        return unit.dimension() == Dimension.MONEY
                ? wording.values().of(base, unit)
                : wording.values().answer(answer(place), base);
    }

    /** The inputs with the largest shares, the largest first, and what is left for the others together. */
    private String movedBy(Spread spread) {
        List<String> named = new ArrayList<>(named(spread).stream()
                .map(share -> wording.host("range.share", share.label(), percent(share.share())))
                .toList());
        double rest = rest(spread);
        if (!percent(rest).equals(percent(0))) {
            named.add(wording.host("range.share-others", percent(rest)));
        }
        return String.join("; ", named);
    }

    /** What an input moves of an answer, as a part of one. */
    private record Share(String label, double share) {}

    private List<Share> named(Spread spread) {
        double[] shares = spread.firstOrder().shares();
        return IntStream.range(0, shares.length)
                .filter(input -> shares[input] >= WORTH_NAMING)
                .boxed()
                .sorted(Comparator.comparingDouble(input -> -shares[input]))
                .map(input -> new Share(inputs.label(input), shares[input]))
                .toList();
    }

    private static double rest(Spread spread) {
        return DoubleStream.of(spread.firstOrder().shares())
                .filter(share -> share < WORTH_NAMING)
                .sum();
    }

    /** What moves each answer that leads, as bars, where more than one input does. */
    public List<Bars> shares() {
        return declared().stream()
                .filter(answer -> leastToMost(answer.key()).isPresent())
                .flatMap(answer -> shares(answer).stream())
                .toList();
    }

    private Optional<Bars> shares(Answer answer) {
        Spread spread = study.spreads().get(answer.key());
        if (!answer.lead() || spread == null) {
            return Optional.empty();
        }
        List<Bars.Bar> bars = new ArrayList<>(named(spread).stream()
                .map(share -> bar(share.label(), share.share()))
                .toList());
        if (!percent(rest(spread)).equals(percent(0))) {
            bars.add(bar(wording.host("range.others-together"), rest(spread)));
        }
        return Optional.of(bars)
                .filter(found -> found.size() > 1)
                .map(found -> Bars.of(wording.host("range.moves", words.label(answer)), found));
    }

    private Bars.Bar bar(String label, double share) {
        return Bars.Bar.of(label, share, wording.host("range.per-cent", percent(share)));
    }

    private static String percent(double share) {
        return String.valueOf(Math.round(share * PERCENT));
    }

    /** What switches, what of that which is told of the middle is not so all over, and what is not shown here. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        study.choices().forEach((place, found) -> choice(place, found, sentences));
        study.ended()
                .forEach(ended -> sentences.add(
                        wording.host("range.ended", inputs.where(ended.parts()), wording.what(ended.what()))));
        boolean bent = study.spreads().entrySet().stream()
                .anyMatch(one -> !one.getValue().firstOrderHolds() && isRow(one.getKey(), one.getValue()));
        if (bent) { // so it says “see below”
            sentences.add(wording.host("range.bends.help"));
        }
        notShown(sentences);
        if (study.placesChange()) {
            sentences.add(wording.host("range.rows-change"));
        }
        return sentences;
    }

    private void choice(String place, Choices found, List<String> sentences) {
        Answer answer = answer(place);
        for (Switch one : found.switches()) {
            if (inputs.atAnEnd(one.input(), one.at())) {
                continue; // only the very end of the range is another, and rounding decides that
            }
            sentences.add(wording.host(
                    "range.switch",
                    placeLabel(place, answer),
                    words.text(answer, one.from()),
                    words.text(answer, one.to()),
                    inputs.label(one.input()),
                    inputs.value(one.input(), one.at())));
        }
        if (found.switches().isEmpty() && !found.others().isEmpty()) {
            sentences.add(wording.host("range.others", placeLabel(place, answer), others(answer, found.others())));
        }
    }

    private String placeLabel(String place, Answer answer) {
        return AnswerPlaces.inRow(place)
                ? words.rowName(
                                place.substring(0, place.indexOf('[')),
                                place.substring(place.indexOf('[') + 1, place.indexOf(']')))
                        + ", " + words.label(answer)
                : words.label(answer);
    }

    private void notShown(List<String> sentences) {
        long left = inTables().size()
                - tables().stream().mapToLong(RangeTable::numbers).sum();
        if (left > 0) {
            sentences.add(wording.host("range.in-tables", left));
        }
    }

    /** How all this was found, and how far to trust it. */
    public String how() {
        if (slip.answers().isEmpty()) {
            return wording.host("range.how-refused", String.valueOf(study.tried()));
        }
        boolean corners = ranges.inputs().size() > 1 && ranges.inputs().size() <= RangeStudy.MOST_WITH_CORNERS;
        return wording.host(
                corners ? "range.how-corners" : "range.how",
                String.valueOf(study.tried()),
                String.valueOf(RangeStudy.SAMPLE));
    }
}
