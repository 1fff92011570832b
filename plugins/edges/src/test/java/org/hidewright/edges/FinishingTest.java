package org.hidewright.edges;

import static org.hidewright.edges.Finished.BURNISHED;
import static org.hidewright.edges.Finished.MOUTH;
import static org.hidewright.edges.Finished.PAINTED;
import static org.hidewright.edges.Finished.PLAIN;
import static org.hidewright.edges.Finished.TURNED;
import static org.hidewright.edges.Finished.answers;
import static org.hidewright.edges.Finished.byLaser;
import static org.hidewright.edges.Finished.edge;
import static org.hidewright.edges.Finished.faces;
import static org.hidewright.edges.Finished.keys;
import static org.hidewright.edges.Finished.mm;
import static org.hidewright.edges.Finished.of;
import static org.hidewright.edges.Finished.piece;
import static org.hidewright.edges.Finished.steps;
import static org.hidewright.edges.Finished.told;
import static org.hidewright.edges.Finished.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.measure.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Schedules worked by hand on paper: rows, steps, and what is told. */
class FinishingTest {
    private static final Edge RIM = edge("rim", 400, 3.6, EdgePlace.SEWN_TOGETHER, BURNISHED);

    @ParameterizedTest(name = "{0} is finished {1}")
    @CsvSource({
        "POCKET_MOUTH, BEFORE_GLUE_UP, BEFORE_GLUE_UP",
        "SLOT, BEFORE_GLUE_UP, BEFORE_GLUE_UP",
        "KEEPER, BEFORE_GLUE_UP, BEFORE_GLUE_UP",
        "STRAP, BEFORE_GLUE_UP, BEFORE_GLUE_UP",
        "SOON_OUT_OF_REACH, BEFORE_GLUE_UP, BEFORE_GLUE_UP",
        "IN_REACH, FLUSH_AFTER_STITCHING, BEFORE_GLUE_UP",
        "SEWN_TOGETHER, FLUSH_AFTER_STITCHING, BEFORE_GLUE_UP",
        "UNDER, BURIED, BURIED"
    })
    void everyEdgeIsSortedByWhereItLies(EdgePlace lies, EdgeGroup cut, EdgeGroup turned) {
        assertEquals(
                List.of(cut, turned),
                answers(piece(edge("cut", 100, 2, lies, BURNISHED), edge("turned", 100, 2, lies, TURNED)))
                        .edges()
                        .stream()
                        .map(Finishing.EdgeRow::group)
                        .toList());
    }

    @Test
    void aBurnishedMouthBeforeGlueUp() {
        assertEquals(
                List.of(
                        "bevel",
                        "sand-p240",
                        "sand-p400",
                        "sand-p800",
                        "dye-1",
                        "dye-2",
                        "burnish-1",
                        "burnish-2",
                        "wax",
                        "check-margins",
                        "glue-and-stitch"),
                steps(piece(MOUTH)));
    }

    @Test
    void layersSewnTogetherAreSandedFlushFirst() {
        assertEquals(
                List.of(
                        "check-margins",
                        "glue-and-stitch",
                        "after-sand-flush",
                        "after-bevel",
                        "after-sand-p180",
                        "after-sand-p240",
                        "after-sand-p400",
                        "after-sand-p800",
                        "after-dye-1",
                        "after-dye-2",
                        "after-burnish-1",
                        "after-burnish-2",
                        "after-wax"),
                steps(piece(RIM)));
    }

    @Test
    void paintIsSandedBetweenCoats() {
        assertEquals(
                List.of(
                        "after-bevel",
                        "after-sand-p240",
                        "after-sand-p400",
                        "after-paint-1",
                        "after-sand-paint-1",
                        "after-paint-2",
                        "after-sand-paint-2",
                        "after-paint-3"),
                steps(piece(edge("flap", 100, 2, EdgePlace.IN_REACH, PAINTED))));
    }

    @Test
    void aTurnedEdgeIsSkivedCementedAndFolded() {
        assertEquals(
                List.of("skive-turn", "cement-turn", "fold-turn", "check-margins", "glue-and-stitch"),
                steps(piece(edge("top", 100, 1.2, EdgePlace.SEWN_TOGETHER, TURNED))));
    }

    @Test
    void aSlotAloneNeedsNoGlue() {
        assertEquals(
                List.of("bevel", "sand-p240", "sand-p320"), steps(piece(edge("slot", 40, 2, EdgePlace.SLOT, PLAIN))));
    }

    @Test
    void aThinEdgeIsNotBeveledNorOneThatIsNotToBe() {
        Edge square = new Edge("square", mm(100), mm(3), 1, EdgePlace.STRAP, PLAIN, CutBy.KNIFE, false);
        assertFalse(steps(piece(edge("thin", 100, 1.1, EdgePlace.STRAP, PLAIN), square))
                .contains("bevel"));
        assertEquals(
                List.of(Optional.empty(), Optional.empty()),
                answers(piece(edge("thin", 100, 1.1, EdgePlace.STRAP, PLAIN), square)).edges().stream()
                        .map(Finishing.EdgeRow::bevel)
                        .toList());
    }

    @Test
    void charGoesFirstAndBuriedEdgesAreLeft() {
        List<String> steps =
                steps(piece(MOUTH, byLaser(RIM), byLaser(edge("under", 100, 1.5, EdgePlace.UNDER, BURNISHED))));
        assertEquals("clean-char", steps.get(0));
        Finishing.EdgeRow buried = answers(piece(edge("under", 100, 1.5, EdgePlace.UNDER, BURNISHED)))
                .edges()
                .get(0);
        assertEquals(
                new Finishing.EdgeRow("under", EdgeGroup.BURIED, Optional.empty(), Optional.empty(), "", Duration.ZERO),
                buried);
    }

    @Test
    void facesAreDyedWithTheEdgesBuffedAndSealedAtTheEnd() {
        assertEquals(
                List.of(
                        "dye-1",
                        "dye-2",
                        "dye-3",
                        "buff",
                        "check-margins",
                        "glue-and-stitch",
                        "after-seal-1",
                        "after-seal-2"),
                steps(with(piece(MOUTH), faces(6, 1, 3, 2), DyeKind.WATER, Room.USUAL)).stream()
                        .filter(id -> !id.matches("bevel|sand.*|burnish.*|wax"))
                        .toList());
        assertFalse(steps(with(piece(MOUTH), faces(6, 1, 0, 0), DyeKind.WATER, Room.USUAL))
                .contains("buff"));
    }

    @Test
    void stepsSayWhatAndOnWhat() {
        Map<String, String> words = answers(with(
                        piece(
                                MOUTH,
                                edge("tab", 50, 2, EdgePlace.STRAP, new EdgeFinish.Burnished(1, 1, true)),
                                edge("top", 50, 1, EdgePlace.KEEPER, TURNED)),
                        faces(6, 1, 2, 1),
                        DyeKind.WATER,
                        Room.USUAL))
                .steps()
                .stream()
                .collect(Collectors.toMap(Finishing.StepRow::id, row -> row.work() + " on " + row.on()));
        assertEquals("step-bevel[] on step-and[step-edge[mouth], step-edge[tab]]", words.get("bevel"));
        assertEquals("step-sand[P240] on step-and[step-edge[mouth], step-edge[tab]]", words.get("sand-p240"));
        assertEquals(
                "step-dye-coat[1, 2] on step-and[step-and[step-faces[], step-edge[mouth]], step-edge[tab]]",
                words.get("dye-1"));
        assertEquals("step-dye-coat[2, 2] on step-and[step-faces[], step-edge[mouth]]", words.get("dye-2"));
        assertEquals("step-wax-margins-free[] on step-and[step-edge[mouth], step-edge[tab]]", words.get("wax"));
        assertEquals("step-cement-turn[300.0 s, 1200.0 s] on step-edge[top]", words.get("cement-turn"));
        assertEquals("step-seal[] on step-faces[]", words.get("after-seal-1"));
        assertEquals("step-glue-and-stitch[] on step-whole-piece[]", words.get("glue-and-stitch"));
        assertEquals(
                "step-wax[] on step-edge[rim]",
                answers(piece(RIM)).steps().stream()
                        .filter(row -> row.id().equals("after-wax"))
                        .map(row -> row.work() + " on " + row.on())
                        .findFirst()
                        .orElseThrow());
        assertEquals(
                "step-sand-paint[]",
                answers(piece(edge("flap", 100, 2, EdgePlace.IN_REACH, PAINTED))).steps().stream()
                        .filter(row -> row.id().equals("after-sand-paint-1"))
                        .map(row -> row.work().toString())
                        .findFirst()
                        .orElseThrow());
    }

    /** Common practice: vegetable-tanned fibre packs, with chrome in it half, everything else not. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "VEGETABLE, DOES, burnish-packs, edge-burnish-it, ",
        "COMBINATION, TEST_FIRST, burnish-packs-half, edge-try-or-paint, burnish-test-first",
        "RETANNED, TEST_FIRST, burnish-packs-half, edge-try-or-paint, burnish-test-first",
        "CHROME, WILL_NOT, burnish-springs, edge-paint-or-turn, will-not-burnish",
        "BONDED, WILL_NOT, burnish-smears, edge-paint-or-turn, will-not-burnish",
        "OIL, WILL_NOT, burnish-felts, edge-turn-or-bind, will-not-burnish",
        "ALUM, WILL_NOT, burnish-felts, edge-turn-or-bind, will-not-burnish",
        "RAWHIDE, WILL_NOT, burnish-swells, edge-lace-or-leave, will-not-burnish"
    })
    void burnishingIsToldByTannage(
            Tannage tannage, BurnishingVerdict verdict, String because, String instead, String notice) {
        Finishing.Finished finished = answers(of(tannage, MOUTH));
        assertEquals(verdict, finished.burnishing());
        assertEquals(because + "[]", finished.because().toString());
        assertEquals(instead + "[]", finished.edgeToChoose().toString());
        List<String> told = told(new Finishing(), of(tannage, MOUTH)).stream()
                .filter(line -> line.contains("burnish"))
                .toList();
        assertEquals(
                notice == null
                        ? List.of()
                        : List.of(notice + " at edges[mouth].finish [mouth, " + because + "[], " + instead + "[]]"),
                told);
        assertEquals(
                List.of(),
                told(new Finishing(), of(tannage, edge("flap", 100, 2, EdgePlace.IN_REACH, PAINTED))).stream()
                        .filter(line -> line.contains("burnish"))
                        .toList());
    }

    @Test
    void aThinEdgeIsHardToBurnish() {
        assertEquals(
                List.of("thin-to-burnish at edges[thin].thickness [thin, 1.1 mm]"),
                told(new Finishing(), piece(edge("thin", 100, 1.1, EdgePlace.STRAP, BURNISHED))).stream()
                        .filter(line -> line.contains("burnish"))
                        .toList());
        assertFalse(
                keys(piece(edge("firm", 100, 1.2, EdgePlace.STRAP, BURNISHED))).contains("thin-to-burnish"));
        assertFalse(
                keys(piece(edge("under", 100, 1.1, EdgePlace.UNDER, BURNISHED))).contains("thin-to-burnish"));
    }

    @Test
    void anEdgeLeftRawBesideDyeIsTold() {
        Edge raw = edge("raw", 100, 2, EdgePlace.STRAP, new EdgeFinish.Burnished(0, 1, false));
        assertEquals(
                List.of("edge-left-raw at edges[raw].finish [raw]"),
                told(new Finishing(), with(piece(raw), faces(6, 1, 1, 0), DyeKind.WATER, Room.USUAL)).stream()
                        .filter(line -> line.startsWith("edge-left"))
                        .toList());
        assertFalse(keys(piece(raw)).contains("edge-left-raw"));
        assertFalse(keys(with(piece(MOUTH), faces(6, 1, 1, 0), DyeKind.WATER, Room.USUAL))
                .contains("edge-left-raw"));
        assertFalse(steps(piece(raw)).contains("wax"));
    }

    @Test
    void cautionsStandWhereTheRiskIs() {
        Edge plain = edge("slot", 40, 1, EdgePlace.SLOT, PLAIN);
        assertEquals(List.of("leather-dust"), keys(piece(plain)));
        assertEquals(List.of("leather-dust", "blade"), keys(piece(edge("slot", 40, 2, EdgePlace.SLOT, PLAIN))));
        assertEquals(List.of("dyes-and-finishes", "solvent-fire", "leather-dust", "blade"), keys(piece(MOUTH)));
        Edge dyed = edge("slot", 40, 1, EdgePlace.SLOT, new EdgeFinish.Plain(1));
        assertEquals(List.of("dyes-and-finishes", "leather-dust"), keys(piece(dyed)));
        assertEquals(
                List.of("dyes-and-finishes", "solvent-fire", "leather-dust"),
                keys(with(piece(dyed), null, DyeKind.SPIRIT, Room.USUAL)));
        assertEquals(
                List.of("dyes-and-finishes", "solvent-fire", "leather-dust"),
                keys(with(piece(dyed), null, DyeKind.OIL, Room.USUAL)));
        assertEquals(List.of("leather-dust"), keys(with(piece(plain), null, DyeKind.SPIRIT, Room.USUAL)));
        assertEquals(
                List.of("dyes-and-finishes", "leather-dust"),
                keys(with(piece(plain), faces(1, 1, 0, 1), DyeKind.SPIRIT, Room.USUAL)));
        assertEquals(
                List.of("dyes-and-finishes", "leather-dust"),
                keys(piece(edge("slot", 40, 1, EdgePlace.SLOT, new EdgeFinish.Painted(1)))));
        assertEquals(List.of("solvent-fire", "blade"), keys(piece(edge("slot", 40, 1, EdgePlace.SLOT, TURNED))));
    }

    @Test
    void heatOnChromeAndLasersAreCautioned() {
        Edge slot = edge("slot", 40, 1, EdgePlace.SLOT, PLAIN);
        for (Tannage tannage : List.of(Tannage.CHROME, Tannage.COMBINATION, Tannage.RETANNED)) {
            assertEquals(List.of("leather-dust", "chrome-heat"), keys(of(tannage, slot)));
        }
        assertEquals(List.of("leather-dust", "laser-char"), keys(piece(byLaser(slot))));
        assertEquals(List.of("leather-dust", "laser-never"), keys(of(Tannage.BONDED, byLaser(slot))));
    }
}
