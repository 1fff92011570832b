package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
import org.osgi.service.component.annotations.Component;

/** Which grades lie between a coarse and a fine one, by the size of their grains and not by their numbers. */
@Calculates("grit-ladder")
@Component(service = Calculator.class)
public final class GritLadder implements Calculator<GritLadder.Ends, GritLadder.Rungs> {
    private static final Formula FINER = Formula.of("grain-ratio", "r = d / e", Origins.ISO_6344);

    private static final NoticeKind ENDS_SWAPPED = NoticeKind.stop("grit-ends-swapped");
    private static final NoticeKind ENDS_MISSED = NoticeKind.check("grit-ends-missed");

    /** What is asked. */
    public record Ends(
            @Asked(min = "5", max = "10000", usual = "80-3000", preset = "180")
            int coarsest,

            @Asked(min = "5", max = "10000", usual = "80-3000", preset = "800")
            int finest,

            @Asked(preset = "p") GritScale system,

            @Asked(example = "[{\"id\":\"p240\",\"grit\":\"240\"},{\"id\":\"p400\",\"grit\":\"400\"}]")
            Optional<List<Abrasive>> abrasives) {}

    /** What is answered. */
    public record Rungs(
            @Answered(by = "half-the-grain", lead = true) int grades,
            @Answered(by = "half-the-grain") Optional<String> furthestNext,
            @Answered(by = "grain-ratio") List<Rung> ladder) {}

    /** One grade: its grain, the P grade nearest to it, and how much finer it is than the one before. */
    public record Rung(
            @RowId String id,
            @Answered(by = "iso-6344") double micrometres,
            @Answered String nearestP,
            @Answered(by = "grain-ratio") Optional<Double> finer) {}

    @Override
    public Outcome<Rungs> calculate(Ends ends, Working working) {
        List<Abrasive> owned = ends.abrasives().orElse(List.of());
        Optional<Notice> unknown = Stream.of(
                        unknown("coarsest", ends.coarsest(), ends.system()),
                        unknown("finest", ends.finest(), ends.system()),
                        Abrasive.unknown(owned))
                .flatMap(Optional::stream)
                .findFirst();
        if (unknown.isPresent()) {
            return Outcome.refuse(unknown.get());
        }
        Grit coarsest = ends.system().grit(ends.coarsest());
        Grit finest = ends.system().grit(ends.finest());
        if (coarsest.micrometres() < finest.micrometres()) {
            return Outcome.refuse(ENDS_SWAPPED.at("finest", coarsest.label(), finest.label()));
        }
        Ladder ladder = Ladder.between(coarsest, finest, Abrasive.grits(owned));
        List<Notice> notices = new ArrayList<>();
        ladder.gap().ifPresent(notices::add);
        if (!ladder.startsAt(coarsest) || !ladder.reaches(finest)) {
            notices.add(ENDS_MISSED.at("abrasives", coarsest.label(), finest.label()));
        }
        if (ends.system().isAmerican() && ends.finest() > GritScale.SCALES_AGREE_UP_TO) {
            notices.add(Abrasive.TWO_CHARTS.at("finest", finest.label()));
        } else {
            Abrasive.twoCharts(owned).ifPresent(notices::add);
        }
        notices.add(Cautions.LEATHER_DUST.with());
        return Outcome.of(
                new Rungs(
                        ladder.grits().size(),
                        Ladder.furthestAfter(coarsest.micrometres()).map(Grit::label),
                        rungs(ladder, working)),
                notices);
    }

    private static Optional<Notice> unknown(String place, int number, GritScale scale) {
        OptionalDouble size = scale.micrometres(number);
        return size.isPresent() ? Optional.empty() : Optional.of(Abrasive.unknown(place, number, scale));
    }

    private static List<Rung> rungs(Ladder ladder, Working working) {
        List<Rung> rungs = new ArrayList<>();
        Optional<Grit> before = Optional.empty();
        for (Grit grit : ladder.grits()) {
            Optional<Double> finer = before.map(coarser -> coarser.over(grit));
            if (before.isPresent()) {
                working.step(FINER, finer.orElseThrow(), "d", before.get().micrometres(), "e", grit.micrometres());
            }
            rungs.add(new Rung(
                    grit.label(),
                    grit.micrometres(),
                    Ladder.nearestP(grit.micrometres()).label(),
                    finer));
            before = Optional.of(grit);
        }
        return rungs;
    }

    @Override
    public List<Formula> formulas() {
        return List.of(FINER);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(
                Abrasive.UNKNOWN, Abrasive.TWO_CHARTS, ENDS_SWAPPED, Ladder.GAP, ENDS_MISSED, Cautions.LEATHER_DUST);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ISO_6344, Origins.HALF_THE_GRAIN);
    }
}
