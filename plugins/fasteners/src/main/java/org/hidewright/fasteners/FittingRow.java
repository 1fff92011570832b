package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Several fittings in a row, evenly spaced over a length. */
@Calculates("fitting-row")
@Component(service = Calculator.class)
public final class FittingRow implements Calculator<FittingRow.Row, FittingRow.Spaced> {
    private static final Formula PITCH = Formula.of("row-pitch", "p = (L - 2 · e) / (n - 1)", Origins.GEOMETRY);
    private static final Formula LEAST = Formula.of("row-least", "q = 3 · d", Origins.RIVET_PITCH);
    private static final double LEAST_DIAMETERS = 3;

    private static final NoticeKind NO_ROOM = NoticeKind.stop("row-no-room");
    private static final NoticeKind TOO_CLOSE = NoticeKind.check("row-too-close");
    private static final NoticeKind HEADS_MEET = NoticeKind.stop("row-heads-meet");

    /** What is asked. */
    public record Row(
            @Asked(
                    unit = "mm",
                    min = "5 mm",
                    max = "5 m",
                    usual = "40-600 mm",
                    example = "140 mm",
                    picture = "fitting-row#length")
            Length length,

            @Asked(min = "2", max = "200", usual = "2-12", example = "5")
            int count,

            @Asked(
                    unit = "mm",
                    min = "0 mm",
                    max = "1 m",
                    usual = "6-20 mm",
                    preset = "10 mm",
                    picture = "fitting-row#end")
            Length endMargin,

            @Asked(unit = "mm", min = "0.5 mm", max = "60 mm", usual = "2-6 mm", example = "3 mm")
            Length postDiameter,

            @Asked(
                    unit = "mm",
                    min = "0.5 mm",
                    max = "100 mm",
                    usual = "5-16 mm",
                    example = "9 mm",
                    picture = "fitting-row#head")
            Length headDiameter) {}

    /** What is answered. */
    public record Spaced(
            @Answered(unit = "mm", step = "0.1 mm", by = "row-pitch", lead = true)
            Length pitch,

            @Answered(unit = "mm", step = "0.1 mm", by = "row-least")
            Length pitchAtLeast,

            @Answered List<Place> places) {}

    /** One of them, from the first end. */
    public record Place(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", by = "row-pitch")
            Length at) {}

    @Override
    public Outcome<Spaced> calculate(Row asked, Working working) {
        Length between = asked.length().minus(asked.endMargin().times(2));
        if (between.mm() <= 0) {
            return Outcome.refuse(NO_ROOM.at("end-margin", asked.endMargin(), asked.length()));
        }
        Length pitch = between.times(1.0 / (asked.count() - 1));
        working.step(PITCH, pitch, "L", asked.length(), "e", asked.endMargin(), "n", asked.count());
        if (pitch.mm() < asked.headDiameter().mm() - 1e-9) {
            return Outcome.refuse(HEADS_MEET.at("count", pitch, asked.headDiameter()));
        }
        Length least = asked.postDiameter().times(LEAST_DIAMETERS);
        working.step(LEAST, least, "d", asked.postDiameter());
        List<Notice> notices =
                pitch.mm() < least.mm() - 1e-9 ? List.of(TOO_CLOSE.at("count", pitch, least)) : List.of();
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < asked.count(); i++) {
            places.add(new Place("f" + (i + 1), asked.endMargin().plus(pitch.times(i))));
        }
        return Outcome.of(new Spaced(pitch, least, places), notices);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(PITCH, LEAST);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, TOO_CLOSE, HEADS_MEET);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.RIVET_PITCH);
    }
}
