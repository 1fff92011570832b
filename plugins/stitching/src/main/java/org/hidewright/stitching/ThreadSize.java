package org.hidewright.stitching;

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
import org.osgi.service.component.annotations.Component;

/** How thick a thread is by its label, whether it suits a pitch, and the needles that take it. */
@Calculates("thread-size")
@Component(service = Calculator.class)
public final class ThreadSize implements Calculator<ThreadSize.Label, ThreadSize.Sized> {
    static final Formula FROM_DENIER = Formula.of("tex-of-denier", "T = D · n / 9", Origins.YARN_COUNTS);
    static final Formula FROM_TICKET = Formula.of("tex-of-ticket", "T = 3000 / Z", Origins.YARN_COUNTS);
    static final Formula FROM_LEA = Formula.of("tex-of-lea", "T = 1653.51549 · n / N", Origins.YARN_COUNTS);
    static final Formula DIAMETER = Formula.of("thread-diameter", "d = 0.035682 · √(T / (ρ · φ))", Origins.FIBRES);
    static final Formula TEX = Formula.of("tex-of-diameter", "T = ρ · φ · (d / 0.035682)²", Origins.FIBRES);
    static final Formula SHARE = Formula.of("thread-share", "s = d / p", Origins.PITCH_HABIT);

    private static final NoticeKind TOO_THICK = NoticeKind.check("thread-thick-for-pitch");
    private static final NoticeKind TOO_THIN = NoticeKind.check("thread-thin-for-pitch");
    private static final NoticeKind NO_HAND_NEEDLE = NoticeKind.check("no-hand-needle");
    private static final NoticeKind NO_MACHINE_NEEDLE = NoticeKind.note("no-machine-needle");

    /** Pounds and yards are exact: 453.59237 g, 0.9144 m. */
    private static final double TEX_LEA = 453592.37 / (300 * 0.9144);

    private static final double ROUND = Math.sqrt(4 / (1000 * Math.PI));

    /** From about an eighth to a quarter of the pitch looks and holds well (common practice). */
    private static final double LEAST_SHARE = 0.13;

    private static final double MOST_SHARE = 0.25;

    /** What is asked. */
    public record Label(
            @Asked(preset = "{\"tex\":{\"tex\":135}}") ThreadCount thread,
            @Asked(preset = "polyester") Fibre fibre,

            @Asked(min = "0.3", max = "1", usual = "0.5-0.8", preset = "0.6")
            double packing,

            @Asked(unit = "mm", min = "0.8 mm", max = "15 mm", usual = "2-6 mm", preset = "3.85 mm")
            Length pitch,

            @Asked(example = "[{\"id\":\"harness-2\",\"eye\":\"1 mm\"}]")
            Optional<List<HandNeedle>> handNeedles) {}

    /** What is answered. */
    public record Sized(
            @Answered(unit = "mm", step = "0.01 mm", by = "thread-diameter", lead = true)
            Length diameter,

            @Answered(step = "1", by = "yarn-counts", lead = true)
            double tex,

            @Answered(step = "1", by = "yarn-counts") double metricTicket,

            @Answered(unit = "%", step = "1 %", by = "thread-share")
            double shareOfPitch,

            @Answered(unit = "mm", step = "0.01 mm", by = "thread-pitch-habit")
            Length thinnestForPitch,

            @Answered(unit = "mm", step = "0.01 mm", by = "thread-pitch-habit")
            Length thickestForPitch,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "needle-eyes")
            Length handNeedleEye,

            @Answered List<HandNeedle.Taking> handNeedles,

            @Answered List<MachineNeedle> machineNeedles) {}

    @Override
    public Outcome<Sized> calculate(Label asked, Working working) {
        double filled = asked.fibre().gramsPerCm3() * asked.packing();
        double tex = tex(asked, filled, working);
        Length diameter = Length.ofMm(ROUND * Math.sqrt(tex / filled));
        if (!(asked.thread() instanceof ThreadCount.Measured)) {
            working.step(DIAMETER, diameter, "T", tex, "ρ", asked.fibre().gramsPerCm3(), "φ", asked.packing());
        }
        double share = diameter.mm() / asked.pitch().mm();
        working.step(SHARE, share, "d", diameter, "p", asked.pitch());
        List<MachineNeedle> needles = MachineNeedle.taking(diameter.mm());
        List<Notice> notices = new ArrayList<>();
        suits(share, diameter, asked.pitch()).ifPresent(notices::add);
        List<HandNeedle> byHand = asked.handNeedles().orElse(List.of());
        List<HandNeedle.Taking> takingByHand = HandNeedle.taking(byHand, diameter.mm());
        if (takingByHand.isEmpty() && !byHand.isEmpty()) {
            notices.add(NO_HAND_NEEDLE.at("hand-needles", diameter, Length.ofMm(HandNeedle.EYE * diameter.mm())));
        }
        if (needles.isEmpty()) {
            notices.add(NO_MACHINE_NEEDLE.at("thread", diameter));
        }
        return Outcome.of(
                new Sized(
                        diameter,
                        tex,
                        3000 / tex,
                        share,
                        Length.ofMm(LEAST_SHARE * asked.pitch().mm()),
                        Length.ofMm(MOST_SHARE * asked.pitch().mm()),
                        Length.ofMm(HandNeedle.EYE * diameter.mm()),
                        takingByHand,
                        needles),
                notices);
    }

    private static double tex(Label asked, double filled, Working working) {
        double tex;
        if (asked.thread() instanceof ThreadCount.Denier denier) {
            tex = denier.denier() * denier.plies() / 9;
            working.step(FROM_DENIER, tex, "D", denier.denier(), "n", denier.plies());
        } else if (asked.thread() instanceof ThreadCount.MetricTicket ticket) {
            tex = 3000 / ticket.ticket();
            working.step(FROM_TICKET, tex, "Z", ticket.ticket());
        } else if (asked.thread() instanceof ThreadCount.Linen linen) {
            tex = TEX_LEA * linen.plies() / linen.lea();
            working.step(FROM_LEA, tex, "n", linen.plies(), "N", linen.lea());
        } else if (asked.thread() instanceof ThreadCount.Measured measured) {
            tex = filled * Math.pow(measured.diameter().mm() / ROUND, 2);
            working.step(TEX, tex, "ρ", asked.fibre().gramsPerCm3(), "φ", asked.packing(), "d", measured.diameter());
        } else {
            tex = ((ThreadCount.Tex) asked.thread()).tex();
        }
        return tex;
    }

    private static Optional<Notice> suits(double share, Length diameter, Length pitch) {
        if (share > MOST_SHARE) {
            return Optional.of(TOO_THICK.at("pitch", diameter, pitch, Length.ofMm(diameter.mm() / MOST_SHARE)));
        }
        return share < LEAST_SHARE
                ? Optional.of(TOO_THIN.at("pitch", diameter, pitch, Length.ofMm(diameter.mm() / LEAST_SHARE)))
                : Optional.empty();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(FROM_DENIER, FROM_TICKET, FROM_LEA, DIAMETER, TEX, SHARE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TOO_THICK, TOO_THIN, NO_HAND_NEEDLE, NO_MACHINE_NEEDLE);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.YARN_COUNTS, Origins.PACKING, Origins.NEEDLES, Origins.EYES, Origins.PITCH_HABIT);
    }
}
