package org.hidewright.stitching;

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
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Thread for a saddle stitch with two needles, in pieces that arms can draw through. */
@Calculates("thread-length")
@Component(service = Calculator.class)
public final class ThreadLength implements Calculator<ThreadLength.Sewn, ThreadLength.Cut> {
    static final Formula RATIO = Formula.of("thread-ratio", "R = 2 · (1 + T / p)", Origins.CONSUMPTION);
    static final Formula NEEDED =
            Formula.of("thread-needed", "C = R · L + 2 · e + b · 2 · (p + T)", Origins.CONSUMPTION);

    private static final NoticeKind PIECE_TOO_LONG = NoticeKind.stop("one-stitch-too-long");
    private static final NoticeKind HABIT_SHORT = NoticeKind.check("habit-short");
    private static final NoticeKind JOINS = NoticeKind.note("thread-joins");
    private static final NoticeKind MELTED = NoticeKind.caution("ends-melted");
    private static final NoticeKind GLUED = NoticeKind.note("ends-glued");

    private static final double HABIT_LEAST = 3.5;
    private static final double HABIT_MOST = 4;

    /** What the thread is spun of, which says how its ends are held. */
    public enum ThreadKind {
        /** Polyester or nylon: its ends melt. */
        SYNTHETIC,
        /** Linen or cotton: its ends are glued. */
        PLANT
    }

    /** What is asked. */
    public record Sewn(
            @Asked(preset = "{\"measured\":{\"length\":\"500 mm\",\"pitch\":\"3.85 mm\",\"stack\":\"5 mm\"}}")
            Seamed seam,

            @Asked(
                    unit = "mm",
                    min = "20 mm",
                    max = "1 m",
                    usual = "100-400 mm",
                    preset = "200 mm",
                    picture = "thread-tail#tail")
            Length tail,

            @Asked(min = "0", max = "20", usual = "0-6", preset = "3", picture = "thread-tail#back")
            int backstitches,

            @Asked(unit = "mm", min = "300 mm", max = "20 m", usual = "1-3 m", preset = "2 m")
            Length longestSewn,

            @Asked(preset = "synthetic") ThreadKind thread) {}

    /** What is answered. */
    public record Cut(
            @Answered(unit = "m", step = "0.1 m", round = Rounding.UP, by = "thread-needed", lead = true)
            Length thread,

            @Answered(by = "sewing-habit", lead = true) int pieces,

            @Answered(step = "0.01", by = "thread-ratio") double ratio,

            @Answered(unit = "m", step = "0.1 m", by = "thread-times-habit")
            Length habitLeast,

            @Answered(unit = "m", step = "0.1 m", by = "thread-times-habit")
            Length habitMost,

            @Answered(by = "stitch-geometry") int stitches,
            @Answered Phrase row,
            @Answered List<ThreadPiece> cuts) {}

    @Override
    public Outcome<Cut> calculate(Sewn asked, Working working) {
        Seamed.Sizes seam;
        try {
            seam = asked.seam().sizes();
        } catch (Refusal e) {
            return e.outcome();
        }
        double perStitch = 2 * (seam.pitch() + seam.stack());
        double ratio = 2 * (1 + seam.stack() / seam.pitch());
        double beside = 2 * asked.tail().mm() + asked.backstitches() * perStitch;
        int most = (int) Math.floor(asked.longestSewn().mm() / seam.pitch() + 1e-9);
        if (most < 1) {
            return Outcome.refuse(PIECE_TOO_LONG.at("longest-sewn", Length.ofMm(seam.pitch()), asked.longestSewn()));
        }
        int pieces = (seam.stitches() + most - 1) / most;
        List<ThreadPiece> cuts = new ArrayList<>();
        double all = 0;
        for (int i = 0; i < pieces; i++) {
            int stitches = seam.stitches() / pieces + (i < seam.stitches() % pieces ? 1 : 0);
            double cut = ratio * seam.length() * stitches / seam.stitches() + beside;
            all += cut;
            cuts.add(new ThreadPiece(Integer.toString(i + 1), stitches, Length.ofMm(cut)));
        }
        Length pitch = Length.ofMm(seam.pitch());
        Length stack = Length.ofMm(seam.stack());
        working.step(RATIO, ratio, "T", stack, "p", pitch);
        working.step(
                NEEDED,
                cuts.get(0).cut(),
                "R",
                ratio,
                "L",
                Length.ofMm(seam.length() * cuts.get(0).stitches() / seam.stitches()),
                "e",
                asked.tail(),
                "b",
                asked.backstitches(),
                "p",
                pitch,
                "T",
                stack);
        return Outcome.of(
                new Cut(
                        Length.ofMm(all),
                        pieces,
                        ratio,
                        Length.ofMm(HABIT_LEAST * seam.length()),
                        Length.ofMm(HABIT_MOST * seam.length()),
                        seam.stitches(),
                        Phrase.of(seam.joins() ? "joining-row" : "decorative-row"),
                        List.copyOf(cuts)),
                notices(asked, seam, ratio, all, pieces));
    }

    private static List<Notice> notices(Sewn asked, Seamed.Sizes seam, double ratio, double all, int pieces) {
        List<Notice> notices = new ArrayList<>();
        if (ratio > HABIT_MOST + 1e-9) { // tails come on top by habit too
            notices.add(HABIT_SHORT.at(
                    "seam", Length.ofMm(HABIT_MOST * seam.length()), Length.ofMm(all - HABIT_MOST * seam.length())));
        }
        if (pieces > 1) {
            notices.add(JOINS.at("longest-sewn", pieces - 1, asked.longestSewn()));
        }
        notices.add(asked.thread() == ThreadKind.SYNTHETIC ? MELTED.at("thread") : GLUED.at("thread"));
        return notices;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(RATIO, NEEDED);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                Seamed.NO_SEAM, Seamed.NO_HOLES, Seamed.NO_STACK, PIECE_TOO_LONG, HABIT_SHORT, JOINS, MELTED, GLUED);
    }

    @Override
    public List<String> phrases() {
        return List.of("joining-row", "decorative-row");
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.GEOMETRY, Origins.SEWING_HABIT, Origins.TIMES_HABIT);
    }
}
