package org.hidewright.straps;

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
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.osgi.service.component.annotations.Component;

/** How many strips a panel or a side gives, and whether they are long enough. */
@Calculates("strips")
@Component(service = Calculator.class)
public final class StripCount implements Calculator<StripCount.Panel, StripCount.Strips> {
    private static final Formula COUNT =
            Formula.of("strip-count", "n = floor((W - e + g) / (w + g))", Origins.GEOMETRY);
    private static final Formula LEFTOVER =
            Formula.of("strip-leftover", "q = W - e - n · w - (n - 1) · g", Origins.GEOMETRY);
    private static final Formula TOTAL = Formula.of("strip-total", "T = n · L", Origins.GEOMETRY);
    private static final Formula JOINED =
            Formula.of("strips-joined", "m = (C - j) / (L - j), rounded up", Origins.GEOMETRY);

    private static final NoticeKind NONE = NoticeKind.stop("strips-none");
    private static final NoticeKind LAP_TOO_LONG = NoticeKind.stop("strips-lap-too-long");
    private static final NoticeKind TOO_SHORT = NoticeKind.check("strips-too-short");
    private static final NoticeKind NOT_ENOUGH = NoticeKind.check("strips-not-enough");
    private static final NoticeKind DIRECTION = NoticeKind.note("strips-direction");

    /** What the strips are cut with. */
    sealed interface StripCutter {
        /** A strap cutter: one cut is the edge of two strips. */
        record StrapCutter() implements StripCutter {}

        /** A knife along a straight edge, with a gap left to trim between strips. */
        record Knife(
                @Asked(unit = "mm", min = "0 mm", max = "50 mm", usual = "0-3 mm", preset = "1 mm")
                Length gap) implements StripCutter {}
    }

    /** What is asked; the strips run along the first side of the panel. */
    public record Panel(
            @Asked(unit = "mm", min = "1 mm", max = "100 m", example = "1300 x 400 mm")
            Size panel,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", usual = "0-20 mm", preset = "5 mm")
            Length straightEdgeTrim,

            @Asked(unit = "mm", min = "0.5 mm", max = "1 m", usual = "5-60 mm", example = "38 mm")
            Length stripWidth,

            @Asked(preset = "{\"strap-cutter\":{}}") StripCutter cutter,

            @Asked(unit = "mm", min = "1 mm", max = "100 m", example = "1200 mm")
            Optional<Length> cutLength,

            @Asked(min = "1", max = "10000", preset = "1") int straps,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", usual = "20-60 mm", preset = "40 mm")
            Length joinLap) {}

    /** What is answered. */
    public record Strips(
            @Answered(by = "strip-count", lead = true) int count,

            @Answered(unit = "mm", step = "0.1 mm", by = "strip-leftover")
            Length leftoverWidth,

            @Answered(unit = "mm", step = "1 mm", round = Rounding.DOWN, by = "strip-total")
            Length totalLength,

            @Answered(by = "strip-count") Optional<Integer> strapsInAll,
            @Answered(by = "strips-joined") Optional<Integer> stripsForOneStrap,
            @Answered(by = "strips-joined") Optional<Integer> joinsInOneStrap) {}

    @Override
    public Outcome<Strips> calculate(Panel panel, Working working) {
        Length length = panel.panel().width();
        Length across = panel.panel().height().minus(panel.straightEdgeTrim());
        Length gap = panel.cutter() instanceof StripCutter.Knife knife ? knife.gap() : Length.ZERO;
        double width = panel.stripWidth().mm();
        int count = wholeTimes((across.mm() + gap.mm()) / (width + gap.mm()));
        if (count < 1) {
            return Outcome.refuse(NONE.at("panel", panel.stripWidth(), across));
        }
        Length leftover = Length.ofMm(Math.max(0, across.mm() - count * width - (count - 1) * gap.mm()));
        Length total = length.times(count);
        working.step(
                COUNT,
                count,
                "W",
                panel.panel().height(),
                "e",
                panel.straightEdgeTrim(),
                "g",
                gap,
                "w",
                panel.stripWidth());
        working.step(
                LEFTOVER,
                leftover,
                "W",
                panel.panel().height(),
                "e",
                panel.straightEdgeTrim(),
                "n",
                count,
                "w",
                panel.stripWidth(),
                "g",
                gap);
        working.step(TOTAL, total, "n", count, "L", length);
        Origins.creditHabit(
                working,
                "leftover-width",
                Origins.STRIP_HABITS,
                panel.straightEdgeTrim().mm() > 0);
        List<Notice> notices = new ArrayList<>(List.of(DIRECTION.with()));
        if (panel.cutLength().isEmpty()) {
            return Outcome.of(
                    new Strips(count, leftover, total, Optional.empty(), Optional.empty(), Optional.empty()), notices);
        }
        Length wanted = panel.cutLength().get();
        int forOne = 1;
        if (wanted.mm() > length.mm() + 1e-9) {
            if (panel.joinLap().mm() >= length.mm()) {
                return Outcome.refuse(LAP_TOO_LONG.at("join-lap", panel.joinLap(), length));
            }
            forOne = -wholeTimes(-(wanted.mm() - panel.joinLap().mm())
                    / (length.mm() - panel.joinLap().mm()));
            working.source("strips-for-one-strap", Origins.STRIP_HABITS);
            working.step(JOINED, forOne, "C", wanted, "j", panel.joinLap(), "L", length);
            notices.add(TOO_SHORT.at("cut-length", length, wanted, forOne));
        }
        int straps = forOne > 1 ? count / forOne : count * wholeTimes(length.mm() / wanted.mm());
        if (straps < panel.straps()) {
            notices.add(NOT_ENOUGH.at("straps", straps, panel.straps()));
        }
        return Outcome.of(
                new Strips(count, leftover, total, Optional.of(straps), Optional.of(forOne), Optional.of(forOne - 1)),
                notices);
    }

    /** Rounded down, but not for want of a last bit: 400 / 12.5 is 32 strips. */
    private static int wholeTimes(double times) {
        return (int) Math.floor(times + 1e-9);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(COUNT, LEFTOVER, TOTAL, JOINED);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NONE, LAP_TOO_LONG, TOO_SHORT, NOT_ENOUGH, DIRECTION);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.CUT_ALONG_BACKBONE, Origins.STRIP_HABITS);
    }
}
