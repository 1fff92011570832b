package org.hidewright.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class PartsTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static DrawnPart part(String id, Shape shape) {
        return part(id, shape, 1, 0, 0);
    }

    private static DrawnPart part(String id, Shape shape, int count, int turnedOver, double leftStanding) {
        return new DrawnPart(
                id,
                Optional.empty(),
                shape,
                Optional.of("shoulder"),
                Optional.of(mm(1.8)),
                count,
                turnedOver,
                mm(leftStanding),
                mm(0.2),
                Shows.BOTH,
                Optional.of(Angle.ofRadians(Math.PI / 2)));
    }

    private static Shape rectangle(double width, double height, double radius) {
        return new Shape.Rectangle(mm(width), mm(height), mm(radius));
    }

    private static DrawnStitches stitches(String id, Along along, double pitch) {
        return new DrawnStitches(id, along, mm(pitch), AtCorners.MARK, Optional.empty());
    }

    private static DrawnStitches like(String id, Along along, String mate) {
        return new DrawnStitches(id, along, mm(4), AtCorners.MARK, Optional.of(mate));
    }

    private static DrawnOpening opening(String id, double x, double y, double width, double length) {
        return new DrawnOpening(
                id, Optional.of(mm(x)), Optional.of(mm(y)), mm(width), mm(length), Angle.ofRadians(Math.PI / 2));
    }

    /** What is typed, one table after the other. */
    private static final class Typed {
        private final List<DrawnPart> parts;
        private List<DrawnEdge> edges = List.of();
        private List<DrawnOpening> openings = List.of();
        private List<DrawnStitches> stitches = List.of();
        private List<DrawnFold> folds = List.of();
        private List<DrawnSeam> seams = List.of();
        private List<DrawnFitting> fittings = List.of();
        private List<DrawnOperation> operations = List.of();

        Typed(DrawnPart... parts) {
            this.parts = List.of(parts);
        }

        Outcome<Parts.Made> worked() {
            return new Parts()
                    .calculate(
                            new Parts.Drawn(
                                    parts,
                                    Optional.of(edges),
                                    Optional.of(openings),
                                    Optional.of(stitches),
                                    Optional.of(folds),
                                    Optional.of(seams),
                                    Optional.of(fittings),
                                    Optional.of(operations),
                                    Optional.empty()),
                            Working.NONE);
        }

        Item item() {
            Outcome<Parts.Made> outcome = worked();
            return outcome.answers()
                    .orElseThrow(() -> new AssertionError(outcome.notices().toString()))
                    .item();
        }

        void refused(String key, String place, Object... args) {
            Outcome<Parts.Made> outcome = worked();
            assertTrue(outcome.refused());
            assertEquals(key, outcome.notices().get(0).kind().key());
            assertEquals(place, outcome.notices().get(0).place());
            assertEquals(List.of(args), outcome.notices().get(0).args());
        }
    }

    @Test
    void aPartIsAsDrawn() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 8), 2, 1, 1.5));
        Part front = typed.item().part("front").orElseThrow();
        assertEquals(100 * 80 - (4 - Math.PI) * 64, Curve.of(front.outline()).area(), 1e-9);
        assertEquals("front", front.name());
        assertEquals("shoulder", front.leather());
        assertEquals(1.8, front.thickness().orElseThrow());
        assertEquals(1.5, front.oversize());
        assertEquals(List.of(2, 1, 3), List.of(front.count(), front.mirrored(), front.pieces()));
        assertEquals(Math.PI / 2, front.direction().orElseThrow());
        Parts.Made made = typed.worked().answers().orElseThrow();
        assertEquals(3, made.pieces());
        assertEquals(3 * (100 * 80 - (4 - Math.PI) * 64), made.leather().mm2(), 1e-6);
    }

    @Test
    void anOutlineMayBeWrittenEitherWayRound() {
        Item item = new Typed(
                        part("one", new Shape.Path("M0 0H60V40H0Z")),
                        part("other", new Shape.Path("M0 0V40H60V0Z")),
                        part("disc", new Shape.Circle(mm(40))))
                .item();
        assertEquals(2400, Curve.of(item.part("one").orElseThrow().outline()).area(), 1e-9);
        assertEquals(2400, Curve.of(item.part("other").orElseThrow().outline()).area(), 1e-9);
        assertEquals(
                Math.PI * 400,
                Curve.of(item.part("disc").orElseThrow().outline()).area(),
                1e-9);
    }

    @Test
    void holesAndSlotsAreWhereTheyAreTold() {
        Typed typed = new Typed(part("back", rectangle(100, 80, 0)));
        typed.openings = List.of(opening("back.rivet", 50, 65, 3, 0), opening("back.slot", 20, 40, 4, 30));
        Part back = typed.item().part("back").orElseThrow();
        assertEquals(List.of(Hole.of("rivet", Point.of(50, 65), 3)), back.holes());
        Curve slot = Curve.of(back.cutOuts().get(0));
        assertEquals(26 * 4 + Math.PI * 4, Math.abs(slot.area()), 1e-9);
        assertEquals(25, slot.bounds().minY(), 1e-9);
        assertEquals(55, slot.bounds().maxY(), 1e-9);
        assertEquals(18, slot.bounds().minX(), 1e-9);
    }

    @Test
    void stitchesRunInsideTheFinishedEdgeEvenlySpaced() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0), 1, 0, 2));
        typed.stitches = List.of(
                stitches("front.rim", new Along.AllRound(mm(4)), 4),
                stitches("front.sides", new Along.Part(mm(180), mm(100), mm(5)), 4),
                stitches("front.row", new Along.Between(mm(20), mm(10), mm(20), mm(70)), 5));
        List<StitchLine> lines = typed.item().part("front").orElseThrow().stitchLines();
        Curve rim = Curve.of(lines.get(0).line());
        assertEquals(2 * (92 + 72), rim.length(), 1e-9, "the margin counts from the finished edge");
        assertEquals(2 * (23 + 18), lines.get(0).holes().size());
        Curve sides = Curve.of(lines.get(1).line());
        assertEquals(95 + 70 + 95, sides.length(), 1e-9, "round two corners, over the start");
        assertEquals(13, lines.get(2).holes().size());
        assertEquals(Point.of(20, 10), lines.get(2).holes().get(0));
    }

    @Test
    void aLineHasAsManyHolesAsItsMate() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)), part("gusset", rectangle(250, 30, 0)));
        Along straight = new Along.Between(mm(5), mm(4), mm(242), mm(4));
        typed.stitches = List.of(
                stitches("front.row", new Along.Between(mm(4), mm(10), mm(96), mm(10)), 4),
                like("gusset.row", straight, " front.row "));
        Item item = typed.item();
        List<Point> mate =
                item.part("gusset").orElseThrow().stitchLines().get(0).holes();
        assertEquals(24, mate.size(), "23 gaps of 4 mm on 92 mm");
        assertEquals(237.0 / 23, mate.get(1).x() - mate.get(0).x(), 1e-9);
        typed.stitches =
                List.of(stitches("front.rim", new Along.AllRound(mm(4)), 4), like("gusset.row", straight, "front.rim"));
        typed.refused("runs-differ", "stitches[gusset.row].like", "gusset.row", "front.rim");
        typed.stitches = List.of(like("gusset.row", straight, "front.row"));
        typed.refused("not-on-a-part", "stitches[gusset.row]", "front.row", "gusset.row", "");
    }

    @Test
    void seamsFittingsEdgesAndFoldsNameWhatIsOnParts() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)), part("back", rectangle(100, 80, 0)));
        typed.stitches = List.of(
                stitches("front.rim", new Along.AllRound(mm(4)), 4),
                stitches("back.rim", new Along.AllRound(mm(4)), 4));
        typed.openings = List.of(opening("back.rivet", 50, 65, 3, 0));
        typed.edges = List.of(
                new DrawnEdge("front.mouth", "mouth", mm(180), Optional.of(mm(280))),
                new DrawnEdge("back.rim", "rim", mm(0), Optional.empty()));
        typed.edges = List.of(typed.edges.get(0));
        typed.folds = List.of(new DrawnFold(
                "back.lid", new Along.Between(mm(0), mm(60), mm(100), mm(60)), mm(2), DrawnFold.Outside.FLESH));
        typed.seams = List.of(new DrawnSeam("side", List.of("front.rim", " back.rim ")));
        typed.fittings = List.of(new DrawnFitting("loop", Optional.of("Rivet"), Optional.of(List.of("back.rivet"))));
        Item item = typed.item();
        assertEquals(
                List.of(Seam.of("side", List.of(new OnPart("front", "rim"), new OnPart("back", "rim")))), item.seams());
        assertEquals(List.of(Fitting.of("loop", "Rivet", List.of(new OnPart("back", "rivet")))), item.fittings());
        Fold fold = item.part("back").orElseThrow().folds().get(0);
        assertEquals(2, fold.insideRadius());
        assertEquals(100, Curve.of(fold.line()).length(), 1e-9);
        assertEquals(180, item.part("front").orElseThrow().edges().get(0).from());
    }

    @Test
    void whatCannotBeUsedIsToldWithItsRow() {
        Shape plain = rectangle(100, 80, 0);
        new Typed(part("front", plain), part("front", plain)).refused("id-twice", "parts", "front");
        new Typed(part("front", rectangle(100, 80, 41))).refused("corner-too-round", "parts[front].shape", "front");
        new Typed(part("front", new Shape.Path("M0 0H60V40"))).refused("path-open", "parts[front].shape", "front");
        new Typed(part("front", new Shape.Path("M0 0H60V40X")))
                .refused("path-unreadable", "parts[front].shape", "front", "no letter or number", "X");
        new Typed(part("front", new Shape.Path("M0 0H60V40H")))
                .refused("path-unreadable", "parts[front].shape", "front", "a number is missing", "…");
        new Typed(part("front", new Shape.Path("M0 0 L40 30 L40 0 L0 30Z")))
                .refused("outline-faulty", "parts[front].shape", "front", mm(20), mm(15));
        new Typed(part("front", plain, 0, 0, 0)).refused("none-cut", "parts[front].count", "front");
    }

    @Test
    void whatIsOnNoPartIsToldWithWhatThereIs() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)));
        typed.stitches = List.of(stitches("front.rim", new Along.AllRound(mm(4)), 4));
        typed.seams = List.of(new DrawnSeam("side", List.of("front.rim", "back.rim")));
        typed.refused("not-on-a-part", "seams[side]", "back.rim", "side", "front.rim");
        typed.seams = List.of();
        typed.stitches = List.of(stitches("rim", new Along.AllRound(mm(4)), 4));
        typed.refused("no-such-part", "stitches[rim]", "rim", "front");
        typed.stitches = List.of(stitches("front.", new Along.AllRound(mm(4)), 4));
        typed.refused("no-such-part", "stitches[front.]", "front.", "front");
        typed.stitches = List.of(stitches("front.rim", new Along.AllRound(mm(40)), 4));
        typed.refused("no-room-for-line", "stitches[front.rim].along", "front.rim");
        typed.stitches = List.of(stitches("front.rim", new Along.Between(mm(4), mm(4), mm(4), mm(4)), 4));
        typed.refused("no-room-for-line", "stitches[front.rim].along", "front.rim");
        typed.stitches = List.of(stitches("front.rim", new Along.Part(mm(0), mm(361), mm(4)), 4));
        typed.refused("edge-too-long", "stitches[front.rim]", "front.rim", mm(361), mm(360));
        typed.stitches = List.of();
        typed.edges = List.of(new DrawnEdge("front.mouth", "mouth", mm(400), Optional.empty()));
        typed.refused("edge-too-long", "edges[front.mouth]", "front.mouth", mm(400), mm(360));
        typed.edges = List.of();
        typed.folds = List.of(new DrawnFold(
                "front.lid", new Along.Between(mm(1), mm(1), mm(1), mm(1)), mm(0), DrawnFold.Outside.GRAIN));
        typed.refused("no-room-for-line", "folds[front.lid].line", "front.lid");
    }

    private static DrawnOperation work(String id, List<String> on, List<String> after) {
        return new DrawnOperation(
                id,
                "Do " + id,
                Optional.of(on),
                Optional.of(after),
                Optional.empty(),
                Optional.of(Duration.ofSeconds(600)),
                Optional.of(Duration.ofSeconds(60)),
                Optional.empty());
    }

    @Test
    void workIsPutInAnOrderThatWorks() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)));
        typed.operations =
                List.of(work("stitch", List.of(), List.of("glue")), work("glue", List.of(" front "), List.of()));
        List<Operation> order = typed.item().operations();
        assertEquals(
                List.of("glue", "stitch"), order.stream().map(Operation::id).toList());
        assertEquals(List.of("front"), order.get(0).on());
        assertEquals(60, order.get(0).leastWait().orElseThrow().seconds());
        assertEquals(0.2, typed.item().parts().get(0).sanded());
        assertEquals(Set.of(Face.GRAIN, Face.FLESH), typed.item().parts().get(0).shows());
    }

    @Test
    void workOnNothingOrInACircleIsTold() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)));
        typed.operations = List.of(work("glue", List.of("lid"), List.of()));
        typed.refused("work-on-nothing", "operations[glue].on", "lid", "glue", "front");
        typed.operations = List.of(work("glue", List.of(), List.of("skive")));
        typed.refused("work-on-nothing", "operations[glue].after", "skive", "glue", "glue");
        typed.operations = List.of(work("a", List.of(), List.of("b")), work("b", List.of(), List.of("a")));
        typed.refused("work-in-circle", "operations");
        typed.operations = List.of(new DrawnOperation(
                "dry",
                "Dry",
                Optional.empty(),
                Optional.empty(),
                Optional.of("rack"),
                Optional.empty(),
                Optional.of(Duration.ofSeconds(120)),
                Optional.of(Duration.ofSeconds(60))));
        typed.refused(
                "waits-cross", "operations[dry].wait-most", "dry", Duration.ofSeconds(120), Duration.ofSeconds(60));
    }

    /** Two parts that share nothing, with a line and a hole each. */
    private static Typed pair() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)), part("back", rectangle(100, 80, 0)));
        typed.stitches = List.of(
                stitches("front.rim", new Along.AllRound(mm(4)), 4),
                stitches("back.rim", new Along.AllRound(mm(4)), 4));
        typed.openings = List.of(opening("front.rivet", 50, 65, 3, 0), opening("back.rivet", 50, 65, 3, 0));
        typed.seams = List.of(new DrawnSeam("side", List.of("front.rim", "back.rim")));
        typed.fittings =
                List.of(new DrawnFitting("loop", Optional.empty(), Optional.of(List.of("front.rivet", "back.rivet"))));
        return typed;
    }

    @Test
    void anIdThatLinksUseStandsOnceInTheWholeItem() {
        Typed typed = pair();
        assertEquals("loop", typed.item().fittings().get(0).name(), "what has no name is called by its id");
        typed.seams = List.of(new DrawnSeam("front", List.of("front.rim")));
        typed.refused("id-twice", "seams", "front");
        typed = pair();
        typed.fittings = List.of(new DrawnFitting("side", Optional.empty(), Optional.of(List.of("front.rivet"))));
        typed.refused("id-twice", "fittings", "side");
        typed = pair();
        typed.operations = List.of(work("side", List.of(), List.of()));
        typed.refused("id-twice", "operations", "side");
        typed = pair();
        typed.openings = List.of(opening("front.rim", 50, 65, 3, 0));
        typed.refused("id-twice", "stitches", "front.rim");
    }

    @Test
    void workIsDoneOnPartsSeamsAndFittings() {
        Typed typed = pair();
        typed.operations = List.of(new DrawnOperation(
                "sew",
                "Sew and rivet",
                Optional.of(List.of("front", "side", "loop")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Duration.ofSeconds(600)),
                Optional.of(Duration.ofSeconds(60)),
                Optional.of(Duration.ofSeconds(60))));
        Operation sew = typed.item().operations().get(0);
        assertEquals(List.of("front", "side", "loop"), sew.on());
        assertEquals(600, sew.handsOn().orElseThrow().seconds());
        assertEquals(60, sew.leastWait().orElseThrow().seconds());
        assertEquals(60, sew.mostWait().orElseThrow().seconds(), "the least may be the most");
    }

    /** Of parts called front and front.lid what is called front.lid.x is on the longer one. */
    @Test
    void theLongestNameThatFitsIsThePart() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)), part("front.lid", rectangle(60, 40, 0)));
        typed.openings = List.of(opening("front.lid.rivet", 30, 20, 3, 0), opening("front.x", 50, 65, 3, 0));
        Item item = typed.item();
        assertEquals(
                "rivet", item.part("front.lid").orElseThrow().holes().get(0).id());
        assertEquals("x", item.part("front").orElseThrow().holes().get(0).id());
    }

    @Test
    void anOpeningWithoutAPlaceIsInTheMiddle() {
        Typed typed = new Typed(part("back", new Shape.Path("M20 10H120V50H20Z")));
        typed.openings = List.of(
                new DrawnOpening("back.hole", Optional.empty(), Optional.empty(), mm(3), mm(3), Angle.ofRadians(0)));
        assertEquals(
                List.of(Hole.of("hole", Point.of(70, 30), 3)),
                typed.item().part("back").orElseThrow().holes(),
                "and as long as it is wide it is punched");
    }

    @Test
    void anEdgeMayGoOnceRound() {
        Typed typed = new Typed(part("front", rectangle(100, 80, 0)));
        typed.edges = List.of(new DrawnEdge("front.rim", "rim", mm(0), Optional.of(mm(360))));
        assertEquals(
                360, typed.item().part("front").orElseThrow().edges().get(0).to(), 1e-9);
    }
}
