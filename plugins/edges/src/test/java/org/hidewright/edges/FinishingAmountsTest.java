package org.hidewright.edges;

import static org.hidewright.edges.Finished.BURNISHED;
import static org.hidewright.edges.Finished.MOUTH;
import static org.hidewright.edges.Finished.PAINTED;
import static org.hidewright.edges.Finished.PLAIN;
import static org.hidewright.edges.Finished.TURNED;
import static org.hidewright.edges.Finished.answers;
import static org.hidewright.edges.Finished.edge;
import static org.hidewright.edges.Finished.faces;
import static org.hidewright.edges.Finished.minutes;
import static org.hidewright.edges.Finished.mm;
import static org.hidewright.edges.Finished.owning;
import static org.hidewright.edges.Finished.piece;
import static org.hidewright.edges.Finished.steps;
import static org.hidewright.edges.Finished.with;
import static org.hidewright.edges.Finished.working;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.junit.jupiter.api.Test;

/** Schedules worked by hand on paper: times, waits and liquids, and how they are reckoned. */
class FinishingAmountsTest {
    /** By hand: 8 tasks and the wax at a minute each; along 0.1 m of 1.5 mm as the table of rates says. */
    @Test
    void timeGoesByLengthAndThickness() {
        // bevel 1; sand 3 · (1 + 0.75); dye 2 · (1 + 0.375); burnish 2 · (2 + 1.5); wax 1 + 0.375: minutes for a metre
        double perMetre = 1 + 3 * 1.75 + 2 * 1.375 + 2 * 3.5 + 1.375;
        Finishing.Finished finished = answers(piece(MOUTH));
        assertEquals(9 + 0.1 * perMetre, minutes(finished.handsOn()), 1e-9);
        assertEquals(9 + 0.1 * perMetre, minutes(finished.edges().get(0).handsOn()), 1e-9);
        Edge two = new Edge("mouth", mm(100), mm(1.5), 2, EdgePlace.POCKET_MOUTH, BURNISHED, CutBy.KNIFE, true);
        assertEquals(9 + 0.2 * perMetre, minutes(answers(piece(two)).handsOn()), 1e-9);
        Finishing.Piece slow = new Finishing.Piece(
                Tannage.VEGETABLE,
                List.of(MOUTH),
                Optional.empty(),
                DyeKind.WATER,
                Room.USUAL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0.3,
                1.5);
        assertEquals(1.5 * (9 + 0.1 * perMetre), minutes(answers(slow).handsOn()), 1e-9);
        Map<String, Optional<Duration>> steps =
                finished.steps().stream().collect(Collectors.toMap(Finishing.StepRow::id, Finishing.StepRow::handsOn));
        assertEquals(1 + 0.1 * 1.75, minutes(steps.get("sand-p240").orElseThrow()), 1e-9);
        assertEquals(Optional.empty(), steps.get("check-margins"));
    }

    /** Two coats of dye and a buff at a minute each and 60, 60, 30 minutes for a square metre; a coat of sealer at 40. */
    @Test
    void timeOfFacesGoesByTheirArea() {
        double alone = minutes(answers(piece(MOUTH)).handsOn());
        assertEquals(
                alone + 4 + 0.12 * 190,
                minutes(answers(with(piece(MOUTH), faces(6, 2, 2, 1), DyeKind.WATER, Room.USUAL))
                        .handsOn()),
                1e-9);
    }

    @Test
    void waitsAreAddedUpInTheirOrder() {
        Finishing.Finished finished = answers(piece(MOUTH));
        assertEquals(4.5, finished.waitsAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(26, finished.waitsAtMost().in(Units.HOUR), 1e-9);
        Finishing.Finished damp = answers(with(piece(MOUTH), faces(6, 1, 0, 2), DyeKind.SPIRIT, Room.COLD_OR_DAMP));
        assertEquals(2 * (0.1 + 12 + 0.5 + 24), damp.waitsAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(2 * (0.5 + 24 + 2 + 72), damp.waitsAtMost().in(Units.HOUR), 1e-9);
        Finishing.Finished oil = answers(with(piece(MOUTH), null, DyeKind.OIL, Room.USUAL));
        assertEquals(24, oil.waitsAtLeast().in(Units.HOUR), 1e-9);
    }

    @Test
    void aLabelMakesWaitsLongerAndNeverShorter() {
        Finishing.Piece labelled = owning(
                piece(MOUTH),
                List.of(),
                List.of(),
                List.of(
                        bottle("quick", Liquid.DYE, 1),
                        bottle("slow", Liquid.DYE, 3 * 60),
                        bottle("paint", Liquid.EDGE_PAINT, 600)));
        Finishing.Finished finished = answers(labelled);
        assertEquals(3 + 4, finished.waitsAtLeast().in(Units.HOUR), 1e-9);
        assertEquals(3 + 24, finished.waitsAtMost().in(Units.HOUR), 1e-9);
    }

    private static Bottle bottle(String id, Liquid kind, double minutes) {
        return new Bottle(
                id, kind, Volume.ofMl(100), Optional.empty(), Optional.of(Duration.of(minutes, Units.MINUTE)));
    }

    /** Edges 100 mm by 1.5 mm: 1.5 cm² for each coat; faces 6 dm². */
    @Test
    void liquidsGoByAreaAndCoats() {
        Finishing.Finished finished = answers(with(
                piece(
                        MOUTH,
                        edge("flap", 100, 2, EdgePlace.IN_REACH, PAINTED),
                        edge("top", 200, 1, EdgePlace.KEEPER, TURNED)),
                faces(6, 2, 2, 1),
                DyeKind.WATER,
                Room.USUAL));
        Map<String, String> used = finished.liquids().stream()
                .collect(Collectors.toMap(
                        Finishing.LiquidRow::id,
                        row -> String.format(
                                Locale.ROOT,
                                "%.4f dm² %.4f ml",
                                row.covered().in(Units.DM2),
                                row.used().ml())));
        assertEquals(
                Map.of(
                        "dye", "24.0300 dm² 37.4868 ml",
                        "burnishing", "0.0300 dm² 0.0390 ml",
                        "wax", "0.0150 dm² 0.0098 ml",
                        "edge-paint", "0.0600 dm² 0.2340 ml",
                        "glue", "0.3200 dm² 0.6240 ml",
                        "sealer", "12.0000 dm² 12.4800 ml"),
                used);
        assertEquals(
                finished.liquids().stream().map(Finishing.LiquidRow::id).toList(),
                finished.liquids().stream().map(row -> row.liquid().key()).toList());
    }

    @Test
    void aLabelSaysHowFarABottleGoes() {
        Bottle bare = new Bottle("bare", Liquid.DYE, Volume.ofMl(100), Optional.empty(), Optional.empty());
        Bottle paint = new Bottle(
                "paint", Liquid.EDGE_PAINT, Volume.ofMl(1), Optional.of(Area.of(9, Units.M2)), Optional.empty());
        Bottle dye =
                new Bottle("dye", Liquid.DYE, Volume.ofMl(250), Optional.of(Area.of(1, Units.M2)), Optional.empty());
        Finishing.Finished finished = answers(owning(piece(MOUTH), List.of(), List.of(), List.of(bare, paint, dye)));
        assertEquals(0.0003 * 250 * 1.3, finished.liquids().get(0).used().ml(), 1e-12);
    }

    @Test
    void theWorkingCanBeFollowed() {
        assertEquals(
                List.of(
                        "b = min(t / 3, m) | t 1.5 mm, m 1.5 mm | 0.5 mm",
                        "T = p · (k · f + L · (a + b · t)) | p 1, k 9, f 1 min, L 100 mm, a 11, b 4.25, t 1.5 mm | 10.7375 min",
                        "T = p · (k · f + S · a) | p 1, k 4, f 1 min, S 6 dm², a 190 | 15.4 min",
                        "V = S · q · (1 + l) | S 12.03 dm², q 120, l 0.3 | 18.7668 ml",
                        "V = S · q · (1 + l) | S 0.03 dm², q 100, l 0.3 | 0.039 ml",
                        "V = S · q · (1 + l) | S 0.015 dm², q 50, l 0.3 | 0.00975 ml",
                        "V = S · q · (1 + l) | S 6 dm², q 80, l 0.3 | 6.24 ml"),
                working(new Finishing(), with(piece(MOUTH), faces(6, 1, 2, 1), DyeKind.WATER, Room.USUAL)));
        assertEquals(List.of(), working(new Finishing(), piece(edge("under", 9, 2, EdgePlace.UNDER, PLAIN))));
    }
}
