package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** The two halves of a snap: cap and socket in the flap, stud and post in what it closes on; each has its own stack and post. */
@Calculates("snap")
@Component(service = Calculator.class)
public final class Snap implements Calculator<Snap.Halves, Snap.Set> {
    /** A snap’s post stands 1.5 to 2.5 mm out of its stack (common practice). */
    private static final double LEAST_MM = 1.5;

    private static final double MOST_MM = 2.5;

    /** What is asked. */
    public record Halves(
            @Asked(example = "{\"measured\":{\"thickness\":\"2 mm\"}}")
            Stack flapStack,

            @Asked(
                    example =
                            "{\"post-diameter\":\"4 mm\",\"post-length\":\"4 mm\",\"head-diameter\":\"12.7 mm\",\"setter\":\"snap setter\"}")
            Shank cap,

            @Asked(example = "{\"measured\":{\"thickness\":\"3 mm\"}}")
            Stack bodyStack,

            @Asked(
                    example =
                            "{\"post-diameter\":\"4 mm\",\"post-length\":\"5 mm\",\"head-diameter\":\"10 mm\",\"setter\":\"snap setter\"}")
            Shank stud,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", example = "4 mm; 5 mm; 6 mm")
            Optional<List<Length>> lengths,

            @Asked(preset = "medium") Temper temper,
            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked Use use) {}

    /** What is answered. */
    public record Set(
            @Answered(unit = "mm", step = "0.1 mm", by = "post-habit", lead = true)
            Optional<Length> capPost,

            @Answered(unit = "mm", step = "0.1 mm", by = "post-habit", lead = true)
            Optional<Length> studPost,

            @Answered List<Half> halves,
            @Answered List<HoleRow> holes,
            @Answered List<TestHole> tests,
            @Answered Drawing testRow) {}

    /** One half and the posts that suit it. */
    public record Half(
            @RowId String id,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "post-least")
            Length postFrom,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "post-most")
            Optional<Length> postTo,

            @Answered(unit = "mm", step = "0.1 mm", by = "post-habit")
            Optional<Length> post) {}

    @Override
    public Outcome<Set> calculate(Halves asked, Working working) {
        Posting cap = half("cap", asked.cap(), asked.flapStack(), asked);
        Posting stud = half("stud", asked.stud(), asked.bodyStack(), asked);
        Optional<Notice> swapped = PostLength.swapped(asked.flapStack(), "flap-stack")
                .or(() -> PostLength.swapped(asked.bodyStack(), "body-stack"));
        if (swapped.isPresent()) {
            return Outcome.refuse(swapped.get());
        }
        List<Notice> notices = new ArrayList<>();
        Holes holes = new Holes(asked.made(), asked.use(), working, notices);
        List<Half> halves = new ArrayList<>();
        for (Posting half : List.of(cap, stud)) {
            Optional<Notice> kerf =
                    holes.add(half.place(), half.hole(), half.shank().head());
            if (kerf.isPresent()) {
                return Outcome.refuse(kerf.get());
            }
            half.check(notices);
            half.fit().takeDown(working);
            halves.add(new Half(
                    half.place(),
                    half.fit().shortest(),
                    half.fit().longest(),
                    half.fit().choose(half.lengths())));
        }
        Cautions.tell(asked.use(), asked.made(), notices);
        List<TestHole> tests = TestHole.around(cap.hole(), holes.punches());
        return Outcome.of(
                new Set(halves.get(0).post(), halves.get(1).post(), halves, holes.rows(), tests, TestHole.drawn(tests)),
                notices);
    }

    private static Posting half(String place, Shank shank, Stack stack, Halves asked) {
        return new Posting(
                place,
                shank,
                shank.lengths(asked.lengths()),
                ShankHole.of(shank.postDiameter(), asked.temper()),
                PostLength.of(stack, LEAST_MM, MOST_MM, Origins.POST_HABIT),
                asked.made(),
                asked.use(),
                true);
    }

    @Override
    public List<Formula> formulas() {
        return Posting.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return Posting.NOTICES;
    }

    @Override
    public List<Source> sources() {
        return Posting.SOURCES;
    }
}
