package org.hidewright.edges;

import static org.hidewright.edges.Finished.paper;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The ladder of grades: what is usual, what is owned, and what is missing. */
class LadderTest {
    private static final int MIXES = 2000;

    private static List<String> ladder(int coarsest, int finest, Abrasive... owned) {
        return labels(between(coarsest, finest, owned));
    }

    private static Ladder between(int coarsest, int finest, Abrasive... owned) {
        return Ladder.between(Grit.p(coarsest), Grit.p(finest), Abrasive.grits(List.of(owned)));
    }

    private static List<String> labels(Ladder ladder) {
        return ladder.grits().stream().map(Grit::label).toList();
    }

    /** The habit “180 to 240, 320 to 400, 600 to 800” for dense edges, common practice. */
    @Test
    void theUsualLaddersAreThoseOfTheTrade() {
        assertEquals(List.of("P180", "P240", "P400", "P800"), ladder(180, 800));
        assertEquals(List.of("P240", "P400", "P800"), ladder(240, 800));
        assertEquals(List.of("P240", "P400"), ladder(240, 400));
        assertEquals(List.of("P180", "P320"), ladder(180, 320));
    }

    @Test
    void takesWhatIsOwned() {
        assertEquals(
                List.of("P180", "P320", "P600", "P800"),
                ladder(180, 800, paper(800), paper(180), paper(600), paper(320)));
        assertEquals(List.of("P240"), ladder(240, 240, paper(240), paper(400)));
        assertEquals(List.of("P600"), ladder(180, 320, paper(600)));
    }

    @Test
    void endsWithAGradeThatIsFineEnough() {
        assertEquals(
                List.of("P180", "P320", "P600"), ladder(180, 400, paper(180), paper(320), paper(600), paper(1000)));
        assertEquals(List.of("P180", "P320", "P600"), ladder(180, 800, paper(180), paper(320), paper(600)));
    }

    @Test
    void leavesOutWhatIsNotNeeded() {
        assertEquals(
                List.of("P240", "P400", "P800"),
                ladder(240, 800, paper(240), paper(320), paper(400), paper(500), paper(600), paper(800)));
    }

    @Test
    void aStepOfMoreThanHalfTheGrainIsAGap() {
        Ladder ladder = between(180, 800, paper(180), paper(240), paper(800));
        assertEquals(List.of("P180", "P240", "P800"), labels(ladder));
        assertEquals(List.of("P240", "P800", "P400"), ladder.gap().orElseThrow().args());
        assertFalse(between(180, 800).gap().isPresent());
        assertTrue(Ladder.isGap(2.001));
        assertFalse(Ladder.isGap(2));
    }

    @Test
    void saysWhetherItReachesBothEnds() {
        assertTrue(between(180, 800, paper(180), paper(320), paper(600)).reaches(Grit.p(800)));
        assertFalse(between(180, 800, paper(180), paper(320), paper(500)).reaches(Grit.p(800)));
        assertTrue(between(180, 800, paper(320), paper(600)).startsAt(Grit.p(180)));
        assertFalse(between(180, 800, paper(500), paper(800)).startsAt(Grit.p(180)));
    }

    @Test
    void gradesOfTwoSystemsStandByTheirGrain() {
        assertEquals(
                List.of("P180", "P320", "CAMI 400"),
                ladder(180, 800, paper(180), new Abrasive("us", 400, GritScale.CAMI), paper(320)));
    }

    @Test
    void nothingIsFinerThanTheFinest() {
        assertEquals(Optional.empty(), Ladder.furthestAfter(8.4));
        assertEquals("P2500", Ladder.furthestAfter(8.5).orElseThrow().label());
    }

    /** By brute force over every set of grades between the ends. */
    @Test
    void noOtherLadderOfTheOwnedGradesIsBetter() {
        Random random = new Random(6344);
        List<Integer> numbers = new ArrayList<>(GritScale.P.grades().keySet());
        for (int mix = 0; mix < MIXES; mix++) {
            List<Grit> owned = new ArrayList<>();
            numbers.forEach(number -> {
                if (random.nextInt(3) == 0) {
                    owned.add(Grit.p(number));
                }
            });
            if (owned.size() > 1) {
                Ladder ladder = Ladder.between(Grit.p(120), Grit.p(1000), owned);
                assertEquals(
                        best(ladder, owned),
                        score(ladder.grits()),
                        labels(ladder).toString());
            }
        }
    }

    private static String best(Ladder ladder, List<Grit> owned) {
        Grit first = ladder.grits().get(0);
        Grit last = ladder.grits().get(ladder.grits().size() - 1);
        if (first.equals(last)) {
            return score(List.of(first));
        }
        List<Grit> between = owned.stream()
                .filter(grit -> grit.micrometres() < first.micrometres() && grit.micrometres() > last.micrometres())
                .sorted(Comparator.comparingDouble(Grit::micrometres).reversed())
                .toList();
        String best = "z";
        for (int set = 0; set < 1 << between.size(); set++) {
            List<Grit> grits = new ArrayList<>(List.of(first));
            for (int i = 0; i < between.size(); i++) {
                if ((set & 1 << i) != 0) {
                    grits.add(between.get(i));
                }
            }
            grits.add(last);
            best = best.compareTo(score(grits)) <= 0 ? best : score(grits);
        }
        return best;
    }

    /** Gaps, how far they are too wide, grades, widest step, so that a smaller text is better. */
    private static String score(List<Grit> grits) {
        int gaps = 0;
        double tooFar = 0;
        double widest = 1;
        for (int i = 1; i < grits.size(); i++) {
            double ratio = grits.get(i - 1).micrometres() / grits.get(i).micrometres();
            gaps += ratio > 2 + 1e-9 ? 1 : 0;
            tooFar += ratio > 2 + 1e-9 ? Math.log(ratio / 2) : 0;
            widest = Math.max(widest, ratio);
        }
        return String.format("%02d %09.5f %02d %09.5f", gaps, tooFar, grits.size(), widest);
    }
}
