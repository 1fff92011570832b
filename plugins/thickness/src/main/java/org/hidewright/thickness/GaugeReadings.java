package org.hidewright.thickness;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** Readings of a thickness gauge over a hide or piece: mean, spread, range, and how the places differ. */
@Calculates("gauge-readings")
@Component(service = Calculator.class)
public final class GaugeReadings implements Calculator<GaugeReadings.Gauged, GaugeReadings.Summary> {
    private static final Formula MEAN = Formula.of("readings-mean", "m = S / n", Origins.NIST_STRD);
    private static final Formula DEVIATION = Formula.of("readings-deviation", "s = √(Q / (n - 1))", Origins.NIST_STRD);
    private static final Formula UNCERTAINTY = Formula.of("readings-uncertainty", "u = s / √n", Origins.JCGM_100);
    private static final Formula VARIATION = Formula.of("readings-variation", "v = s / m", Origins.ARITHMETIC);
    private static final Formula RANGE = Formula.of("readings-range", "R = b - a", Origins.ARITHMETIC);

    private static final NoticeKind NO_READINGS = NoticeKind.stop("readings-none");
    private static final NoticeKind NOT_ABOVE_NOTHING = NoticeKind.stop("reading-not-above-nothing");
    private static final NoticeKind ONE_READING = NoticeKind.note("readings-only-one");
    private static final NoticeKind UNEVEN = NoticeKind.check("readings-uneven");
    private static final NoticeKind PLACES_DIFFER = NoticeKind.note("readings-places-differ");
    private static final NoticeKind PLACES_UNKNOWN = NoticeKind.note("readings-places-unknown");
    private static final NoticeKind GAUGES_DIFFER = NoticeKind.note("readings-gauges-differ");

    private static final String RANGE_OUNCES = "readings-range-ounces";
    private static final double BORDER_OUNCES = 1e-9;
    /** A label is one ounce wide; readings farther apart are not one label (common practice). */
    private static final Length LABEL_WIDTH = Length.of(1, Units.OUNCE);

    /** What is asked; plain and placed readings are taken together. */
    public record Gauged(
            @Asked(
                    unit = "mm",
                    min = "0.01 mm",
                    max = "50 mm",
                    usual = "0.4-6 mm",
                    example = "1.9 mm; 2.0 mm; 2.1 mm; 2.0 mm")
            Optional<List<Length>> readings,

            @Asked(
                    example = "[{\"id\":\"r1\",\"place\":\"bend\",\"reading\":\"2.1 mm\"},"
                            + "{\"id\":\"r2\",\"place\":\"belly\",\"reading\":\"1.8 mm\"}]")
            Optional<List<PlacedReading>> placed) {}

    /** One reading and where on the hide it was taken. */
    public record PlacedReading(
            @RowId String id,
            @Asked(example = "bend") HidePlace place,

            @Asked(unit = "mm", min = "0.01 mm", max = "50 mm", usual = "0.4-6 mm", example = "2.0 mm")
            Length reading) {}

    /** Where on the hide. */
    public enum HidePlace {
        BEND,
        SHOULDER,
        NECK,
        BELLY;

        private String rowId() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is answered; spread needs two readings. */
    public record Summary(
            @Answered(unit = "mm", by = "readings-mean", step = "0.01 mm", lead = true)
            Length mean,

            @Answered(by = "astm-d1814", step = "0.1") double meanOunces,
            @Answered(by = "sold-ranges") Phrase rangeInOunces,
            @Answered(by = "arithmetic") int count,

            @Answered(unit = "mm", by = "arithmetic", step = "0.01 mm")
            Length least,

            @Answered(unit = "mm", by = "arithmetic", step = "0.01 mm")
            Length greatest,

            @Answered(unit = "mm", by = "readings-range", step = "0.01 mm")
            Length range,

            @Answered(unit = "mm", by = "readings-deviation", step = "0.001 mm")
            Optional<Length> standardDeviation,

            @Answered(unit = "%", by = "readings-variation", step = "0.1 %")
            Optional<Double> coefficientOfVariation,

            @Answered(unit = "mm", by = "readings-uncertainty", step = "0.001 mm")
            Optional<Length> standardUncertainty,

            @Answered List<PlaceSummary> places) {}

    /** The readings of one place. */
    public record PlaceSummary(
            @RowId String id,
            @Answered HidePlace place,
            @Answered(by = "arithmetic") int count,

            @Answered(unit = "mm", by = "readings-mean", step = "0.01 mm")
            Length mean,

            @Answered(unit = "mm", by = "arithmetic", step = "0.01 mm")
            Length least,

            @Answered(unit = "mm", by = "arithmetic", step = "0.01 mm")
            Length greatest) {}

    @Override
    public Outcome<Summary> calculate(Gauged gauged, Working working) {
        List<Length> plain = gauged.readings().orElse(List.of());
        List<PlacedReading> placed = gauged.placed().orElse(List.of());
        List<Length> all = Stream.concat(plain.stream(), placed.stream().map(PlacedReading::reading))
                .toList();
        if (all.isEmpty()) {
            return Outcome.refuse(NO_READINGS.at("readings"));
        }
        if (all.stream().anyMatch(reading -> reading.mm() <= 0)) {
            return Outcome.refuse(NOT_ABOVE_NOTHING.at("readings"));
        }
        Spread spread = Spread.of(all);
        List<PlaceSummary> places = places(placed);
        return Outcome.of(summary(spread, places, working), notices(spread, places, plain));
    }

    private static Summary summary(Spread spread, List<PlaceSummary> places, Working working) {
        Length mean = Length.ofMm(spread.mean());
        working.step(MEAN, mean, "S", mean.times(spread.count()), "n", spread.count());
        Length least = Length.ofMm(spread.least());
        Length greatest = Length.ofMm(spread.greatest());
        working.step(RANGE, greatest.minus(least), "b", greatest, "a", least);
        Optional<Length> deviation = Optional.empty();
        Optional<Double> variation = Optional.empty();
        Optional<Length> uncertainty = Optional.empty();
        if (spread.count() > 1) {
            Length s = Length.ofMm(spread.standardDeviation());
            deviation = Optional.of(s);
            variation = Optional.of(s.per(mean));
            uncertainty = Optional.of(Length.ofMm(spread.standardUncertainty()));
            working.step(DEVIATION, s, "Q", Area.ofMm2(spread.squares()), "n", spread.count());
            working.step(VARIATION, variation.get(), "s", s, "m", mean);
            working.step(UNCERTAINTY, uncertainty.get(), "s", s, "n", spread.count());
        }
        return new Summary(
                mean,
                mean.in(Units.OUNCE),
                rangeInOunces(least, greatest),
                spread.count(),
                least,
                greatest,
                greatest.minus(least),
                deviation,
                variation,
                uncertainty,
                places);
    }

    /** Whole ounces that hold every reading; a reading on a whole ounce does not widen them. */
    private static Phrase rangeInOunces(Length least, Length greatest) {
        int low = (int) Math.floor(least.in(Units.OUNCE) + BORDER_OUNCES);
        int high = (int) Math.ceil(greatest.in(Units.OUNCE) - BORDER_OUNCES);
        return Phrase.of(RANGE_OUNCES, low, Math.max(high, low + 1));
    }

    private static List<PlaceSummary> places(List<PlacedReading> placed) {
        Map<HidePlace, List<Length>> byPlace = new EnumMap<>(HidePlace.class);
        for (PlacedReading reading : placed) {
            byPlace.computeIfAbsent(reading.place(), place -> new ArrayList<>()).add(reading.reading());
        }
        List<PlaceSummary> places = new ArrayList<>();
        byPlace.forEach((place, readings) -> {
            Spread spread = Spread.of(readings);
            places.add(new PlaceSummary(
                    place.rowId(),
                    place,
                    spread.count(),
                    Length.ofMm(spread.mean()),
                    Length.ofMm(spread.least()),
                    Length.ofMm(spread.greatest())));
        });
        return List.copyOf(places);
    }

    private static List<Notice> notices(Spread spread, List<PlaceSummary> places, List<Length> plain) {
        List<Notice> notices = new ArrayList<>();
        if (spread.count() == 1) {
            notices.add(ONE_READING.at("readings"));
        }
        Length range = Length.ofMm(spread.greatest() - spread.least());
        if (range.mm() > LABEL_WIDTH.mm() * (1 + BORDER_OUNCES)) {
            notices.add(UNEVEN.with(range, LABEL_WIDTH));
        }
        if (places.size() > 1) {
            PlaceSummary thinnest =
                    places.stream().min((a, b) -> a.mean().compareTo(b.mean())).orElseThrow();
            PlaceSummary thickest =
                    places.stream().max((a, b) -> a.mean().compareTo(b.mean())).orElseThrow();
            if (thinnest.mean().compareTo(thickest.mean()) < 0) {
                notices.add(PLACES_DIFFER.at(
                        "placed", thickest.place(), thickest.mean(), thinnest.place(), thinnest.mean()));
            }
        }
        if (!plain.isEmpty()) {
            notices.add(PLACES_UNKNOWN.at("readings", plain.size()));
        }
        notices.add(GAUGES_DIFFER.with());
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(MEAN, DEVIATION, UNCERTAINTY, VARIATION, RANGE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                NO_READINGS, NOT_ABOVE_NOTHING, ONE_READING, UNEVEN, PLACES_DIFFER, PLACES_UNKNOWN, GAUGES_DIFFER);
    }

    @Override
    public List<String> phrases() {
        return List.of(RANGE_OUNCES);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ASTM_D1814, Origins.SOLD_RANGES, Origins.ISO_2589, Origins.ISO_2418);
    }
}
