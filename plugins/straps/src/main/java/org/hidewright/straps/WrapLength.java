package org.hidewright.straps;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Teardrop;
import org.hidewright.straps.geometry.Wraps;
import org.osgi.service.component.annotations.Component;

/** Length of a strip round something. */
@Calculates("wrap")
@Component(service = Calculator.class)
public final class WrapLength implements Calculator<WrapLength.Wrap, WrapLength.Strip> {
    static final Formula RING = Formula.of("wrap-ring", "L = π · (D + 2 · e + 2 · k · t) + o", Origins.GEOMETRY);
    static final Formula HALF = Formula.of("wrap-half", "L = π · (d / 2 + k · t) + 2 · b", Origins.GEOMETRY);
    static final Formula RECTANGLE = Formula.of(
            "wrap-rounded-rectangle", "L = 2 · (w + h) - (8 - 2 · π) · r + 2 · π · k · t + o", Origins.GEOMETRY);
    private static final Formula LAYERS = Formula.of("roll-layers", "L = π · (B² - A²) / t", Origins.GEOMETRY);
    private static final Formula SPIRAL_RISE = Formula.of("roll-spiral-rise", "c = t / (2 · π)", Origins.GEOMETRY);
    private static final Formula SPIRAL_FROM_CENTRE = Formula.of(
            "roll-spiral-from-centre", "U = [u · √(u² + c²) + c² · asinh(u / c)] / (2 · c)", Origins.GEOMETRY);
    private static final Formula SPIRAL = Formula.of("roll-spiral", "L = V - U", Origins.GEOMETRY);
    private static final Formula PIPING =
            Formula.of("wrap-piping", "L = π · (d + 2 · k · t) + 2 · s", Origins.GEOMETRY);
    private static final Formula GUSSET =
            Formula.of("wrap-gusset", "L = 2 · (h - r) + (w - 2 · r) + π · r", Origins.GEOMETRY);
    private static final Formula MORE =
            Formula.of("wrap-outer-layer-more", "L = θ · ((1 - k) · i + g + k · t)", Origins.GEOMETRY);

    private static final NoticeKind CORNER_TOO_LARGE = NoticeKind.stop("wrap-corner-too-large");

    /** What is asked; the thickness of the strip, of two layers that of the outer one. */
    public record Wrap(
            @Asked(example = "{\"half-wrap\":{\"diameter\":\"6 mm\"}}")
            WrapShape shape,

            @Asked(unit = "mm", min = "0.05 mm", max = "50 mm", usual = "0.5-5 mm", example = "3 mm")
            Length thickness,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", preset = "0.5")
            double neutralLine) {}

    /** What is answered. */
    public record Strip(
            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry", lead = true)
            Length length,

            @Answered(unit = "mm", step = "0.1 mm", by = "plane-geometry")
            Optional<Length> outerDiameter) {}

    @Override
    public Outcome<Strip> calculate(Wrap wrap, Working working) {
        if (!(wrap.shape() instanceof WrapShape.Roll) && !(wrap.shape() instanceof WrapShape.UGusset)) {
            Origins.creditNeutralLine(working, "length", wrap.neutralLine());
        }
        double k = wrap.neutralLine();
        Length t = wrap.thickness();
        WrapShape shape = wrap.shape();
        if (shape instanceof WrapShape.Ring ring) {
            double length = Wraps.ringMm(ring.diameter().mm(), ring.easeAround().mm(), t.mm(), k)
                    + ring.lap().mm();
            return answer(
                    working,
                    RING,
                    length,
                    "D",
                    ring.diameter(),
                    "e",
                    ring.easeAround(),
                    "k",
                    k,
                    "t",
                    t,
                    "o",
                    ring.lap());
        } else if (shape instanceof WrapShape.HalfWrap half) {
            double length = Wraps.halfMm(half.diameter().mm(), t.mm(), k)
                    + 2 * half.returnLeg().mm();
            return answer(working, HALF, length, "d", half.diameter(), "k", k, "t", t, "b", half.returnLeg());
        } else if (shape instanceof WrapShape.Teardrop teardrop) {
            return teardrop(teardrop, t, k, working);
        } else if (shape instanceof WrapShape.RoundedRectangle block) {
            return block(block, t, k, working);
        } else if (shape instanceof WrapShape.TwoPostsOpen posts) {
            return BarsRound.of(posts.firstDiameter(), posts.secondDiameter(), posts.centres(), false, t, k)
                    .outcome(working, Length.ZERO)
                    .map(length -> new Strip(length, Optional.empty()));
        } else if (shape instanceof WrapShape.TwoPostsCrossed posts) {
            return BarsRound.of(posts.firstDiameter(), posts.secondDiameter(), posts.centres(), true, t, k)
                    .outcome(working, Length.ZERO)
                    .map(length -> new Strip(length, Optional.empty()));
        } else if (shape instanceof WrapShape.Roll roll) {
            return roll(roll, t, working);
        } else if (shape instanceof WrapShape.Piping piping) {
            double length = Wraps.ringMm(piping.cordDiameter().mm(), 0, t.mm(), k)
                    + 2 * piping.seamAllowance().mm();
            return answer(
                    working, PIPING, length, "d", piping.cordDiameter(), "k", k, "t", t, "s", piping.seamAllowance());
        } else if (shape instanceof WrapShape.UGusset gusset) {
            return gusset(gusset, working);
        }
        WrapShape.TwoLayers layers = (WrapShape.TwoLayers) shape;
        double more = Wraps.outerLayerMoreMm(
                layers.turn().radians(),
                layers.innerThickness().mm(),
                t.mm(),
                layers.gap().mm(),
                k);
        return answer(
                working,
                MORE,
                more,
                "θ",
                layers.turn(),
                "k",
                k,
                "i",
                layers.innerThickness(),
                "g",
                layers.gap(),
                "t",
                t);
    }

    private static Outcome<Strip> answer(Working working, Formula formula, double mm, Object... symbolsAndValues) {
        working.step(formula, Length.ofMm(mm), symbolsAndValues);
        return Outcome.of(new Strip(Length.ofMm(mm), Optional.empty()));
    }

    private static Outcome<Strip> teardrop(WrapShape.Teardrop shape, Length t, double k, Working working) {
        double bar = shape.diameter().mm();
        double contact = shape.contact().mm();
        if (!Teardrop.fits(bar, contact, t.mm(), k)) {
            return Outcome.refuse(SectionReader.CONTACT_TOO_NEAR.at(
                    "shape", SectionReader.THIS_TURN_BACK, shape.contact(), Length.ofMm(bar / 2 + k * t.mm())));
        }
        Teardrop leg = Teardrop.leg(bar, contact, t.mm(), k);
        TeardropWorking.write(working, leg, shape.contact(), t);
        return Outcome.of(new Strip(Length.ofMm(2 * leg.lengthMm()), Optional.empty()));
    }

    private static Outcome<Strip> block(WrapShape.RoundedRectangle shape, Length t, double k, Working working) {
        double width = shape.block().width().mm();
        double height = shape.block().height().mm();
        double radius = shape.cornerRadius().mm();
        if (2 * radius > Math.min(width, height) + 1e-9) {
            return Outcome.refuse(
                    CORNER_TOO_LARGE.at("shape", shape.cornerRadius(), Length.ofMm(Math.min(width, height))));
        }
        double length = Wraps.roundedRectangleMm(width, height, radius)
                + Wraps.roundClosedCoreMm(t.mm(), k)
                + shape.lap().mm();
        return answer(
                working,
                RECTANGLE,
                length,
                "w",
                shape.block().width(),
                "h",
                shape.block().height(),
                "r",
                shape.cornerRadius(),
                "k",
                k,
                "t",
                t,
                "o",
                shape.lap());
    }

    private static Outcome<Strip> roll(WrapShape.Roll roll, Length t, Working working) {
        double inner = roll.coreDiameter().mm() / 2;
        double outer = inner + roll.turns() * t.mm();
        Length length;
        if (roll.rule() == RollRule.LAYERS) {
            length = Length.ofMm(Wraps.rollLayersMm(inner, outer, t.mm()));
            working.step(LAYERS, length, "B", Length.ofMm(outer), "A", Length.ofMm(inner), "t", t);
        } else {
            double shift = roll.rule() == RollRule.SPIRAL_OF_MID_LINE ? t.mm() / 2 : 0;
            length = spiral(inner + shift, outer + shift, t, working);
        }
        return Outcome.of(new Strip(length, Optional.of(Length.ofMm(2 * outer))));
    }

    /** A spiral between two radii is what it is to the outer one less what it is to the inner one, from its centre. */
    private static Length spiral(double from, double to, Length t, Working working) {
        Length rise = t.times(1 / (2 * Math.PI));
        working.step(SPIRAL_RISE, rise, "t", t);
        Length inner = Length.ofMm(Wraps.spiralMm(0, from, t.mm()));
        Length outer = Length.ofMm(Wraps.spiralMm(0, to, t.mm()));
        working.step(SPIRAL_FROM_CENTRE, inner, "u", Length.ofMm(from), "c", rise);
        working.step(SPIRAL_FROM_CENTRE, outer, "u", Length.ofMm(to), "c", rise);
        Length length = Length.ofMm(Wraps.spiralMm(from, to, t.mm()));
        working.step(SPIRAL, length, "V", outer, "U", inner);
        return length;
    }

    private static Outcome<Strip> gusset(WrapShape.UGusset gusset, Working working) {
        double width = gusset.panel().width().mm();
        double height = gusset.panel().height().mm();
        double radius = gusset.cornerRadius().mm();
        double most = Math.min(width / 2, height);
        if (radius > most + 1e-9) {
            return Outcome.refuse(CORNER_TOO_LARGE.at("shape", gusset.cornerRadius(), Length.ofMm(2 * most)));
        }
        return answer(
                working,
                GUSSET,
                Wraps.gussetMm(width, height, radius),
                "h",
                gusset.panel().height(),
                "r",
                gusset.cornerRadius(),
                "w",
                gusset.panel().width());
    }

    @Override
    public List<Formula> formulas() {
        return Stream.of(
                        List.of(RING, HALF),
                        TeardropWorking.FORMULAS,
                        List.of(RECTANGLE),
                        BarsRound.FORMULAS,
                        List.of(LAYERS, SPIRAL_RISE, SPIRAL_FROM_CENTRE, SPIRAL, PIPING, GUSSET, MORE))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(Stream.of(SectionReader.CONTACT_TOO_NEAR, CORNER_TOO_LARGE), BarsRound.KINDS.stream())
                .toList();
    }

    @Override
    public List<String> phrases() {
        return List.of(SectionReader.THIS_TURN_BACK.key());
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.GEOMETRY, Origins.NEUTRAL_HABIT);
    }
}
