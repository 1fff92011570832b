package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.held;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.priced;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Cuts.upwards;
import static org.hidewright.layout.Outcomes.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Part;
import org.hidewright.layout.CuttingLayout.LaidOut;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.open.RunBudget;
import org.hidewright.layout.task.Outline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What a search finds can be cut, by our own check and by that of an outside library on what is drawn. */
class LayoutSearchTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final long TRIES = 60_000;

    private static List<Places> search(Cuts cuts) {
        List<Places> found = new ArrayList<>();
        new CuttingLayout().search(cuts.cut(), RunBudget.ofTries(1, 1, TRIES), found::add);
        return found;
    }

    private static Cuts best(Cuts cuts) {
        List<Places> found = search(cuts);
        return cuts.laid(found.get(found.size() - 1).pieces());
    }

    /** Every cut line of the drawing as a polygon of JTS. */
    private static List<Geometry> drawn(LaidOut answers) {
        return answers.drawing().orElseThrow().shapes().stream()
                .filter(shape -> shape instanceof Path path && path.role() == Role.CUT)
                .map(shape -> polygon(Curve.of((Path) shape)))
                .toList();
    }

    private static Geometry polygon(Curve curve) {
        Outline flat = Flattened.of(curve);
        Coordinate[] corners = new Coordinate[flat.corners() + 1];
        for (int corner = 0; corner <= flat.corners(); corner++) {
            corners[corner] = new Coordinate(flat.x(corner % flat.corners()), flat.y(corner % flat.corners()));
        }
        return JTS.createPolygon(corners);
    }

    private static void assertApart(double gap, LaidOut answers) {
        List<Geometry> pieces = drawn(answers);
        assertEquals(answers.laid(), pieces.size());
        for (int one = 0; one < pieces.size(); one++) {
            for (int other = 0; other < one; other++) {
                double distance = pieces.get(one).distance(pieces.get(other));
                assertTrue(distance >= gap - 1e-6, one + " and " + other + " are " + distance + " apart");
                double shared = pieces.get(one).intersection(pieces.get(other)).getArea();
                assertEquals(0, shared, 1e-6, one + " and " + other);
            }
        }
    }

    private static Part.Builder disc(String id, double diameter) {
        return Part.of(id, id, Outlines.circle(Point.of(0, 0), diameter).path(Role.CUT));
    }

    @Test
    void allPiecesFindAPlaceWithTheGapBetweenThem() {
        Cuts cuts = best(
                Cuts.of(rectangle("front", 90, 60), rectangle("strap", 150, 18).direction(0), disc("patch", 40))
                        .times(3)
                        .on(panel("panel", 210, 297, null)));
        LaidOut answers = answers(cuts);
        assertEquals(9, answers.laid());
        assertEquals(1, answers.sheetsUsed());
        assertApart(2, answers);
    }

    /**
     * Plain arithmetic: 3 by 2 squares of 100 on 300 by 200; two halves of a panel of 8½ by 11 in; with a gap of 2 between them and to the
     * edges, 3 by 2 of 98. None says how it has to lie, and all lie edge to edge.
     */
    @ParameterizedTest
    @CsvSource({"100, 100, 6, 300, 200, 0", "107.95, 279.4, 2, 215.9, 279.4, 0", "98, 98, 6, 302, 202, 2"})
    void whatFillsAPanelExactlyLiesThereEdgeToEdge(
            double width, double height, int count, double across, double up, double gap) {
        Cuts cuts = best(
                Cuts.of(rectangle("tag", width, height)).times(count).apart(gap).on(panel("panel", across, up, 2)));
        LaidOut answers = answers(cuts);
        assertEquals(count, answers.laid());
        assertEquals(1, answers.sheetsUsed());
        assertApart(gap, answers);
    }

    /** A panel of 240 by 100 cut up by straight lines is put together again; one strap is held where it was. */
    @Test
    void piecesLieEdgeToEdgeWithOneThatIsHeld() {
        Part.Builder wedge = Part.of(
                "wedge",
                "Wedge",
                Outlines.polygon(Point.of(0, 0), Point.of(160, 0), Point.of(80, 50), Point.of(0, 50))
                        .path(Role.CUT));
        Cuts cuts = best(Cuts.of(wedge, rectangle("strap", 240, 25))
                .times(2)
                .apart(0)
                .on(panel("panel", 240, 100, 1))
                .laid(held(at("strap-1", "panel", 120, 12.5, 0))));
        LaidOut answers = answers(cuts);
        assertEquals(4, answers.laid());
        assertEquals(1, answers.yield().orElseThrow(), 1e-12);
        assertApart(0, answers);
    }

    /** Stopped when a first layout is there, edge to edge: nothing is begun any more at other angles, nor made ready for that. */
    @Test
    void aSearchThatIsStoppedBeginsNoOther() {
        AtomicBoolean stopped = new AtomicBoolean();
        AtomicInteger begun = new AtomicInteger();
        RunBudget whole = RunBudget.ofTries(1, 1, TRIES);
        Budget budget = new Budget() {
            @Override
            public int workers() {
                return 1;
            }

            @Override
            public void sideBySide(List<? extends Runnable> searches) {
                begun.addAndGet(stopped.get() ? 1 : 0);
                whole.sideBySide(searches);
            }

            @Override
            public long seed() {
                return 1;
            }

            @Override
            public double spent(long tried) {
                return stopped.get() ? 1 : whole.spent(tried);
            }
        };
        Cuts cuts = Cuts.of(rectangle("tag", 100, 100)).times(6).apart(0).on(panel("panel", 300, 200, null));
        new CuttingLayout().search(cuts.cut(), budget, found -> stopped.set(true));
        assertTrue(stopped.get(), "there was a first layout");
        assertEquals(0, begun.get(), "searches begun after that");
    }

    @Test
    void theSameSeedAndTriesFindTheSame() {
        Cuts cuts =
                Cuts.of(rectangle("front", 90, 60), disc("patch", 40)).times(4).on(panel("panel", 210, 297, null));
        assertEquals(search(cuts), search(cuts));
    }

    @Test
    void pairsLieTurnedOverAndAlongABackboneThatRunsUp() {
        Part.Builder side = Part.of(
                        "side",
                        "Side",
                        Outlines.polygon(Point.of(0, 0), Point.of(120, 0), Point.of(80, 50), Point.of(0, 30))
                                .path(Role.CUT))
                .direction(0.3)
                .pieces(1, 1);
        Cuts cuts = best(Cuts.of(side).times(3).on(upwards(panel("panel", 200, 290, null))));
        LaidOut answers = answers(cuts);
        assertEquals(6, answers.laid());
        assertApart(2, answers);
    }

    /** There is room to spare: what may lie up to 10 degrees off lies along the backbone all the same. */
    @Test
    void wherePartsMayLieAskewTheyLieStraightIfThereIsRoom() {
        Cuts cuts = Cuts.of(rectangle("strap", 300, 30).direction(0))
                .times(5)
                .on(hide("0,0 420,20 400,260 -20,240", 5, "marked 150,100 190,100 170,120"));
        LaidOut answers = answers(best(cuts));
        assertEquals(5, answers.laid());
        for (Placed placed : best(cuts).placed()) {
            assertEquals(0, Math.sin(placed.turned().radians()), 1e-9, placed.id());
        }
    }

    /** Straight it is too long for the panel, and only somewhat askew it fits: sqrt(300² + 30²) = 301.5. */
    @Test
    void aPartLiesAskewWhereItFitsOnlySo() {
        Cuts cuts = Cuts.of(rectangle("strap", 300, 10).direction(0)).on(panel("panel", 302, 90, 1));
        LaidOut answers = answers(best(cuts));
        assertEquals(1, answers.laid());
        assertTrue(Math.abs(Math.sin(best(cuts).placed().get(0).turned().radians())) > Math.sin(Math.toRadians(6)));
    }

    /** Three squares in a column leave 490 by 400 of a hide that is 600 wide; side by side, as parts were drawn together along the backbone, less. */
    @Test
    void aLayoutThatLeavesMoreInOnePieceIsNotGivenUp() {
        Cuts column = Cuts.of(rectangle("square", 100, 100))
                .times(3)
                .on(upwards(panel("panel", 600, 400, 1)))
                .laid(
                        at("square-1", "panel", 53, 53, 0),
                        at("square-2", "panel", 53, 157, 0),
                        at("square-3", "panel", 53, 261, 0));
        double standing = answers(column).sheets().get(0).inOnePiece().mm2();
        for (Places found : search(column)) {
            double left = answers(column.laid(found.pieces()))
                    .sheets()
                    .get(0)
                    .inOnePiece()
                    .mm2();
            assertTrue(left > standing - 100, left + " mm² in place of " + standing);
        }
    }

    @Test
    void theCheaperLeatherIsTaken() {
        Cuts cuts = best(Cuts.of(rectangle("front", 90, 60))
                .times(4)
                .on(priced(panel("dear", 210, 297, 1), 40), priced(panel("cheap", 210, 297, 1), 15)));
        assertEquals("15.00", answers(cuts).cost().orElseThrow().amount().toPlainString());
    }

    @Test
    void onAHideFlawsAreAvoided() {
        String hole = "hole 200,150 260,150 260,210 200,210";
        String scar = "marked 60,60 90,60 75,200";
        Cuts cuts = best(Cuts.of(rectangle("front", 90, 60))
                .times(5)
                .on(hide("0,0 400,20 420,300 200,360 -30,280", 10, hole, scar)));
        LaidOut answers = answers(cuts);
        assertEquals(5, answers.laid());
        assertApart(2, answers);
        Geometry flaws = polygon(Outlines.polygon(
                        Point.of(200 + 30, 150),
                        Point.of(260 + 30, 150),
                        Point.of(260 + 30, 210),
                        Point.of(200 + 30, 210)))
                .union(polygon(Outlines.polygon(Point.of(60 + 30, 60), Point.of(90 + 30, 60), Point.of(75 + 30, 200))));
        drawn(answers).forEach(piece -> assertTrue(piece.intersection(flaws).getArea() == 0));
    }

    /** Strips of scars 8 mm wide every 68 mm: parts of 90 by 60 with a hidden rim of 20 fit between, others do not. */
    @Test
    void scarsMayRunUnderHiddenRims() {
        String[] scars = new String[6];
        for (int scar = 0; scar < scars.length; scar++) {
            int left = 40 + 66 * scar;
            scars[scar] = "marked " + left + ",0 " + (left + 8) + ",0 " + (left + 8) + ",300 " + left + ",300";
        }
        Cuts cuts = Cuts.of(rectangle("front", 90, 90)).times(4).on(hide("0,0 440,0 440,300 0,300", 5, scars));
        assertEquals(List.of(), search(cuts));
        Cuts hidden = best(cuts.rules(Cuts.rule("front", null, null, 20.0, null, null)));
        assertTrue(answers(hidden).laid() >= 3, answers(hidden).laid() + " laid");
        assertApart(2, answers(hidden));
    }

    @Test
    void whatIsHeldStaysAndTheOthersAreLaidRoundIt() {
        Placed middle = held(at("front-1", "panel", 105, 148, 45));
        Cuts cuts = best(Cuts.of(rectangle("front", 90, 60))
                .times(4)
                .on(panel("panel", 210, 297, 1))
                .laid(middle));
        assertTrue(cuts.placed().contains(middle), cuts.placed().toString());
        LaidOut answers = answers(cuts);
        assertTrue(answers.laid() >= 3, answers.laid() + " laid");
        assertApart(2, answers);
    }

    @Test
    void onlyWhatIsBetterThanWhatStandsThereIsHandedOn() {
        Cuts cuts = Cuts.of(rectangle("front", 90, 60)).times(3).on(panel("panel", 210, 297, 3));
        List<Placed> spread = List.of(
                at("front-1", "panel-1", 60, 60, 0),
                at("front-2", "panel-2", 60, 60, 0),
                at("front-3", "panel-3", 60, 60, 0));
        assertEquals(1, answers(best(cuts.laid(spread))).sheetsUsed());
        List<Placed> tight = best(cuts).placed();
        assertEquals(List.of(), search(cuts.laid(tight)));
    }

    @Test
    void aLayoutThatCannotBeCutAnyMoreIsReplacedByAnyThatCan() {
        Cuts cuts = Cuts.of(rectangle("front", 90, 60)).times(2).on(panel("panel", 210, 297, 1));
        List<Placed> over = List.of(at("front-1", "panel", 60, 60, 0), at("front-2", "panel", 70, 60, 0));
        assertEquals(2, answers(best(cuts.laid(over))).laid());
    }

    @Test
    void whatFitsNowhereIsLeftOver() {
        Cuts cuts = best(
                Cuts.of(rectangle("front", 90, 60), rectangle("long", 400, 20)).on(panel("panel", 210, 297, 2)));
        assertEquals(
                List.of("long"),
                answers(cuts).leftOver().stream()
                        .map(CuttingLayout.LeftOver::id)
                        .toList());
    }

    @Test
    void whereNothingIsLeftToSearchOrTheTaskIsRefusedNothingIsFound() {
        Cuts cuts = Cuts.of(rectangle("front", 90, 60)).on(panel("panel", 210, 297, 1));
        assertEquals(List.of(), search(cuts.laid(held(at("front", "panel", 105, 148, 0)))));
        assertEquals(List.of(), search(cuts.from("Calf")));
        assertEquals(Optional.empty(), answers(cuts).yield());
    }
}
