package org.hidewright.edges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/**
 * Thousands of seeded pieces, each held against the rules of the trade one by one: what must come before what, which edge is
 * in which stage, what waits for what. The rules are written here anew and know nothing of how a schedule is made.
 */
class OrderRulesTest {
    private static final int PIECES = Boolean.getBoolean("hidewright.long") ? 100_000 : 4_000;

    private final Random random = new Random(2419);

    @Test
    void everyPieceKeepsTheRules() {
        for (int i = 0; i < PIECES; i++) {
            List<EdgePlan> edges = edges();
            Optional<Faces> faces = random.nextBoolean()
                    ? Optional.of(new Faces(
                            Area.of(1 + random.nextInt(50), Units.DM2),
                            1 + random.nextInt(2),
                            random.nextInt(4),
                            random.nextInt(3)))
                    : Optional.empty();
            DyeKind dye = pick(DyeKind.values());
            Room room = pick(Room.values());
            Schedule schedule = new Schedule(edges, faces, dye, room, List.of(), 0.5 + random.nextDouble());
            String piece = "piece " + i;
            edges.forEach(edge -> ofAnEdge(schedule, edge, piece + " " + edge.edge()));
            ofThePiece(schedule, piece);
            waits(schedule, dye, room, piece);
            sums(schedule, edges, faces, piece);
        }
    }

    private List<EdgePlan> edges() {
        List<Grit> owned = new ArrayList<>();
        if (random.nextBoolean()) {
            GritScale.P.grades().keySet().stream()
                    .filter(number -> random.nextBoolean())
                    .forEach(number -> owned.add(Grit.p(number)));
        }
        List<EdgePlan> edges = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            EdgeFinish finish = switch (random.nextInt(4)) {
                case 0 -> new EdgeFinish.Burnished(random.nextInt(4), 1 + random.nextInt(3), random.nextBoolean());
                case 1 -> new EdgeFinish.Painted(1 + random.nextInt(5));
                case 2 -> new EdgeFinish.Turned(Length.ofMm(6 + random.nextInt(10)));
                default -> new EdgeFinish.Plain(random.nextInt(3));
            };
            edges.add(new EdgePlan(
                    new Edge(
                            "edge-" + i,
                            Length.ofMm(20 + random.nextInt(2000)),
                            Length.ofMm(0.5 + random.nextInt(100) / 10.0),
                            1 + random.nextInt(3),
                            pick(EdgePlace.values()),
                            finish,
                            pick(CutBy.values()),
                            random.nextInt(4) > 0),
                    owned));
        }
        return edges;
    }

    private <T> T pick(T[] of) {
        return of[random.nextInt(of.length)];
    }

    private static void ofAnEdge(Schedule schedule, EdgePlan plan, String told) {
        Edge edge = plan.edge();
        List<Step> own = schedule.all().stream()
                .filter(step -> step.edges().contains(plan))
                .toList();
        if (edge.lies() == EdgePlace.UNDER) {
            assertEquals(List.of(), own, told);
            return;
        }
        boolean late = edge.lies() == EdgePlace.SEWN_TOGETHER || edge.lies() == EdgePlace.IN_REACH;
        boolean turned = edge.finish() instanceof EdgeFinish.Turned;
        assertTrue(
                own.stream()
                        .filter(step -> !step.is(Work.CLEAN_CHAR))
                        .allMatch(step -> step.task().stage()
                                == (late && !turned ? Stage.AFTER_STITCHING : Stage.BEFORE_GLUE_UP)),
                told);
        assertEquals(edge.cutBy() == CutBy.LASER, has(own, Work.CLEAN_CHAR), told);
        if (edge.cutBy() == CutBy.LASER) {
            assertTrue(own.get(0).is(Work.CLEAN_CHAR), told);
        }
        assertFalse(edge.thickness().mm() < 1.2 && has(own, Work.BEVEL), told);
        assertFalse(turned && (has(own, Work.SAND) || has(own, Work.BEVEL) || has(own, Work.BURNISH)), told);
        if (turned) {
            inTurn(own, Work.SKIVE_TURN, Work.CEMENT_TURN, told);
            inTurn(own, Work.CEMENT_TURN, Work.FOLD_TURN, told);
        } else {
            assertTrue(has(own, Work.SAND), told);
            assertEquals(edge.lies() == EdgePlace.SEWN_TOGETHER, has(own, Work.SAND_FLUSH), told);
        }
        inTurn(own, Work.SAND_FLUSH, Work.BEVEL, told);
        inTurn(own, Work.BEVEL, Work.SAND, told);
        // Sanding reveals raw colour, so dye follows; rubbing, paint and wax close the surface, so they follow dye.
        for (Work laysBare : List.of(Work.SAND_FLUSH, Work.BEVEL, Work.SAND)) {
            for (Work closes : List.of(Work.DYE, Work.BURNISH, Work.PAINT, Work.WAX)) {
                inTurn(own, laysBare, closes, told);
            }
        }
        inTurn(own, Work.DYE, Work.BURNISH, told);
        inTurn(own, Work.BURNISH, Work.WAX, told);
        coarseToFine(own, plan, told);
        paintAndSand(own, told);
    }

    /** Every step of the first kind comes before every one of the other. */
    private static void inTurn(List<Step> steps, Work first, Work then, String told) {
        assertTrue(last(steps, step -> step.is(first)) < first(steps, step -> step.is(then)), told + first + then);
    }

    private static int first(List<Step> steps, Predicate<Step> which) {
        for (int i = 0; i < steps.size(); i++) {
            if (which.test(steps.get(i))) {
                return i;
            }
        }
        return Integer.MAX_VALUE;
    }

    private static int last(List<Step> steps, Predicate<Step> which) {
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (which.test(steps.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean has(List<Step> steps, Work work) {
        return steps.stream().anyMatch(step -> step.is(work));
    }

    private static void coarseToFine(List<Step> own, EdgePlan plan, String told) {
        List<Grit> grits = own.stream()
                .filter(step -> step.is(Work.SAND))
                .map(step -> step.task().grit().orElseThrow())
                .toList();
        boolean gap = false;
        for (int i = 1; i < grits.size(); i++) {
            double ratio = grits.get(i - 1).micrometres() / grits.get(i).micrometres();
            assertTrue(ratio > 1, told);
            gap |= ratio > 2 + 1e-9;
        }
        assertEquals(gap, plan.isSanded() && plan.ladder().gap().isPresent(), told);
    }

    /** Paint and sanding take turns, and paint is last. */
    private static void paintAndSand(List<Step> own, String told) {
        List<Work> painting = own.stream()
                .map(step -> step.task().work())
                .filter(work -> work == Work.PAINT || work == Work.SAND_PAINT)
                .toList();
        for (int i = 0; i < painting.size(); i++) {
            assertEquals(i % 2 == 0 ? Work.PAINT : Work.SAND_PAINT, painting.get(i), told);
        }
        assertTrue(painting.isEmpty() || painting.size() % 2 == 1, told);
    }

    private static void ofThePiece(Schedule schedule, String told) {
        List<Step> all = schedule.all();
        int lastChar = last(all, step -> step.is(Work.CLEAN_CHAR));
        assertEquals(lastChar >= 0 ? 0 : -1, lastChar, told + ": char is the first thing cleaned off, all at once");
        int stitched = first(all, step -> step.is(Work.GLUE_AND_STITCH));
        assertTrue(
                last(all, step -> step.onFaces() && (step.is(Work.DYE) || step.is(Work.BUFF))) < stitched,
                told + ": faces are dyed and buffed before stitching");
        int margins = first(all, step -> step.is(Work.CHECK_MARGINS));
        assertEquals(stitched == Integer.MAX_VALUE ? stitched : stitched - 1, margins, told);
        assertTrue(
                last(all, step -> step.is(Work.WAX) && step.task().stage() == Stage.BEFORE_GLUE_UP) < margins,
                told + ": margins are looked at when the wax is on");
        assertTrue(
                last(all, step -> step.is(Work.DYE)) < first(all, step -> step.is(Work.SEAL)),
                told + ": no sealer before dye");
        assertTrue(
                last(all, step -> step.onFaces() && step.is(Work.DYE)) < first(all, step -> step.is(Work.WAX)),
                told + ": no wax before the faces are dyed");
        assertEquals(all.size(), all.stream().map(Step::id).distinct().count(), told);
        for (int i = 1; i < all.size(); i++) {
            assertTrue(all.get(i - 1).task().stage().compareTo(all.get(i).task().stage()) <= 0, told);
        }
    }

    private static void waits(Schedule schedule, DyeKind dye, Room room, String told) {
        List<Step> all = schedule.all();
        double slow = room == Room.COLD_OR_DAMP ? 2 : 1;
        for (Stage stage : Stage.values()) {
            int lastDye = last(all, step -> step.is(Work.DYE) && step.task().stage() == stage);
            if (lastDye >= 0) {
                double hours = dye == DyeKind.WATER ? 4 : 12;
                assertEquals(hours * slow, all.get(lastDye).drying().least().in(Units.HOUR), 1e-9, told);
            }
            int lastPaint = last(all, step -> step.is(Work.PAINT) && step.task().stage() == stage);
            if (lastPaint >= 0) {
                assertEquals(12 * slow, all.get(lastPaint).drying().least().in(Units.HOUR), 1e-9, told);
            }
        }
        for (Step step : all) {
            boolean laidOn =
                    step.is(Work.DYE) || step.is(Work.PAINT) || step.is(Work.SEAL) || step.is(Work.CEMENT_TURN);
            assertEquals(laidOn, !step.drying().isNone(), told);
            assertTrue(step.drying().least().seconds() <= step.drying().most().seconds(), told);
        }
    }

    private static void sums(Schedule schedule, List<EdgePlan> edges, Optional<Faces> faces, String told) {
        double byStep = schedule.all().stream()
                .mapToDouble(step -> step.handsOn().seconds())
                .sum();
        double pace = schedule.handsOn(plain()).seconds() / plain().habitual().seconds();
        double byEdge = edges.stream()
                        .mapToDouble(edge -> schedule.handsOn(edge).seconds())
                        .sum()
                + faces.map(Faces::habitual).orElse(Duration.ZERO).seconds() * pace;
        assertEquals(byEdge, byStep, 1e-6 * Math.max(1, byStep), told);
        assertEquals(byStep, schedule.handsOn().seconds(), 1e-6 * Math.max(1, byStep), told);
    }

    private static EdgePlan plain() {
        return new EdgePlan(Finished.edge("plain", 100, 2, EdgePlace.STRAP, Finished.PLAIN), List.of());
    }
}
