package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/**
 * The folded proof of every template with a folded part: the strap bundle, which maps places on a folded strap to the flat one,
 * is asked where holes must be so that they meet, and the template's flat part must have them there.
 */
class FoldedTemplatesIT {
    private static final double EXACT = 1e-6;

    private final Bench bench = new Bench(BundledCalculators.catalogue());

    FoldedTemplatesIT() throws Exception {}

    private Values answers(String calculator, String questions) {
        WorkedSlip slip = bench.work(
                        ProjectReader.read("{\"hidewright\": 1, \"slips\": [{\"id\": \"one\", \"calculator\": \""
                                        + calculator + "\", \"questions\": {" + questions.replace('\'', '"') + "}}]}")
                                .project()
                                .orElseThrow())
                .slips()
                .get("one");
        return slip.answers()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()));
    }

    private Item item(String template, String questions) {
        return (Item) answers(template, questions).get("item").orElseThrow();
    }

    /** The flat places of the holes of a strap of 20 mm, in their order. */
    private List<Double> flat(double thickness, String sections, String features) {
        Values strap = answers(
                "strap",
                String.format(Locale.ROOT, "'width': '20 mm', 'thickness': '%s mm', ", thickness) + "'sections': ["
                        + sections + "], 'features': [" + features + "]");
        return ((List<?>) strap.get("features").orElseThrow())
                .stream()
                        .map(row -> ((Length) ((Values) row).get("from-start").orElseThrow()).mm())
                        .sorted()
                        .toList();
    }

    private static String straight(String id, double length) {
        return String.format(Locale.ROOT, "{'id': '%s', 'straight': {'length': '%s mm'}}", id, length);
    }

    private static String bend(String id, double radius, String more) {
        return String.format(
                Locale.ROOT,
                "{'id': '%s', 'bend': {'core': {'radius': {'inside-radius': '%s mm'}}, %s}}",
                id,
                radius,
                more);
    }

    private static String hole(String section, String from, double distance, String through) {
        return String.format(
                Locale.ROOT,
                "{'id': 'hole-%s', 'hole': {'diameter': '2 mm', 'section': '%s', 'from': '%s', 'distance': '%s mm'%s}}",
                section,
                section,
                from,
                distance,
                through.isEmpty() ? "" : ", 'also-through': '" + through + "'");
    }

    private static double y(Item item, String part, String hole) {
        return item.hole(new OnPart(part, hole)).orElseThrow().centre().y();
    }

    private static double row(Item item, String part, String row) {
        return item.stitchLine(new OnPart(part, row))
                .orElseThrow()
                .holes()
                .get(0)
                .y();
    }

    private static List<Double> folds(Part part) {
        return part.folds().stream().map(FoldedTemplatesIT::middle).toList();
    }

    private static double middle(Fold fold) {
        return fold.line().segments().get(0).start().y();
    }

    @Test
    void theRivetOfAKeyFobGoesThroughBothLegs() {
        Item fob = item("key-fob", "'length': '80 mm'");
        // half a turn round a wire of 2.5 mm, folded dry; the rivet 9 mm from the turn
        List<Double> flat = flat(
                2.4,
                straight("front", 80) + "," + bend("turn", 1.25, "'turn': '180 deg'") + "," + straight("back", 80),
                hole("front", "end", 9, "") + "," + hole("back", "start", 9, ""));
        assertEquals(flat.get(0), y(fob, "strip", "front"), EXACT);
        assertEquals(flat.get(1), y(fob, "strip", "back"), EXACT);
    }

    @Test
    void theTurnsOfAWatchStrapAreSewnToIt() {
        Item strap = item("watch-strap", "'wrist': '175 mm', 'case-span': '46 mm', 'lug-width': '20 mm'");
        List<Double> flat = flat(
                0.8,
                straight("leg", 20) + ","
                        + bend("turn", 0.9, "'turn': '180 deg', 'preparation': {'cased': {}}") + ","
                        + straight("main", 90),
                hole("leg", "end", 4, "") + "," + hole("main", "start", 4, ""));
        assertEquals(flat.get(0), row(strap, "hole-piece", "lug-1"), EXACT, "a leg as long as the strap is wide");
        assertEquals(flat.get(1), row(strap, "hole-piece", "lug-2"), EXACT);
    }

    @Test
    void theLoopOfASheathMeetsItsRows() {
        Item sheath =
                item("sheath", "'held': {'width': '28 mm', 'height': '110 mm', 'thickness': '4 mm'}, 'belt': '40 mm'");
        double bendAt = 110 + 8.5 + 12;
        List<Double> flat = flat(
                3,
                straight("back", bendAt) + ","
                        + bend("loop", 3, "'turn': '180 deg', 'outside': 'flesh', 'measured-neutral-line': '0.5'") + ","
                        + straight("down", 100),
                hole("back", "end", 58, "") + "," + hole("down", "start", 58, ""));
        assertEquals(flat.get(0), row(sheath, "back", "loop-1-under"), EXACT);
        assertEquals(flat.get(1), row(sheath, "back", "loop-1"), EXACT);
    }

    @Test
    void theFlapOfAFlatPouchComesDownToItsSnap() {
        Item pouch = item("flat-pouch", "'held': {'width': '80 mm', 'height': '120 mm', 'thickness': '12 mm'}");
        double front = pouch.part("front").orElseThrow().outline().bounds().maxY();
        double down = front - y(pouch, "front", "closure");
        List<Double> flat = flat(
                2,
                straight("back", front) + ","
                        + bend("over", 6 + 2, "'turn': '180 deg', 'measured-neutral-line': '0.5'") + ","
                        + straight("flap", 100),
                hole("flap", "start", down, ""));
        assertEquals(flat.get(0), y(pouch, "back", "closure"), EXACT);
    }

    @Test
    void theLidOfALiddedPouchComesDownToItsSnap() {
        Item pouch = item(
                "lidded-pouch",
                "'held': {'width': '80 mm', 'height': '100 mm', 'thickness': '30 mm'}, 'closing': {'snap': {}}");
        double front = pouch.part("front").orElseThrow().outline().bounds().maxY();
        double down = front - y(pouch, "front", "closure");
        String quarter = "'turn': '90 deg', 'measured-neutral-line': '0.5'";
        // inside: the thing and half the ease of 4 mm; then the front of 2.2 mm; less both bends of 1.5 mm
        List<Double> flat = flat(
                2.2,
                straight("back", front) + "," + bend("over", 1.5, quarter) + "," + straight("top", 30 + 2 + 2.2 - 3)
                        + "," + bend("down", 1.5, quarter) + "," + straight("flap", 100),
                hole("flap", "start", down, ""));
        assertEquals(flat.get(0), y(pouch, "back", "closure"), EXACT);
    }

    @Test
    void aBookCoverBendsAtBothSidesOfTheBack() {
        Item cover = item("book-cover", "'held': {'width': '105 mm', 'height': '148 mm', 'thickness': '12 mm'}");
        List<Double> folds = cover.part("outer").orElseThrow().folds().stream()
                .map(fold -> fold.line().segments().get(0).start().x())
                .toList();
        String quarter = "'turn': '90 deg', 'measured-neutral-line': '0.5'";
        double board =
                (cover.part("outer").orElseThrow().outline().bounds().width() - 12 - 2 * Math.PI / 2 * (0.6 + 0.9)) / 2;
        Values strap = answers(
                "strap",
                "'width': '20 mm', 'thickness': '1.8 mm', 'sections': [" + straight("left", board) + ","
                        + bend("one", 0.6, quarter) + "," + straight("back", 12) + "," + bend("two", 0.6, quarter) + ","
                        + straight("right", board) + "]");
        List<Double> middles = ((List<?>) strap.get("folds").orElseThrow())
                .stream()
                        .map(row -> ((Length) ((Values) row).get("middle").orElseThrow()).mm())
                        .toList();
        assertEquals(middles.get(0), folds.get(0), EXACT);
        assertEquals(middles.get(1), folds.get(1), EXACT);
    }

    @Test
    void theInnerOfAWalletIsShorterByWhatTheBendsDiffer() {
        Values wallet = answers(
                "folding-wallet",
                "'cards': {'width': '85.72 mm', 'height': '54.03 mm', 'thickness': '0.84 mm'}, 'lining-thickness': '0.5 mm'");
        double outer = allowance(1.2, 0.5 + 0.9);
        double inner = allowance(0.9, 0);
        assertEquals(outer - inner, ((Length) wallet.get("inner-shorter").orElseThrow()).mm(), EXACT);
    }

    private double allowance(double thickness, double radius) {
        Values bend = answers(
                "bend",
                String.format(
                        Locale.ROOT,
                        "'thickness': '%s mm', 'inside-radius': '%s mm', 'turn': '180 deg', 'measured-neutral-line': '0.5'",
                        thickness,
                        radius));
        return ((Length) bend.get("allowance").orElseThrow()).mm();
    }

    @Test
    void theFlapOfAPenRollBendsOverThePens() {
        Item roll = item("pen-roll", "'pen': '12 mm', 'pen-length': '145 mm'");
        // margin, half a pen, the pen and 6 mm of room; folded damp round half a pen
        double bendAt = 3.5 + 6 + 145 + 6;
        Values strap = answers(
                "strap",
                "'width': '20 mm', 'thickness': '1.4 mm', 'sections': [" + straight("back", bendAt) + ","
                        + bend("over", 6, "'turn': '180 deg', 'preparation': {'cased': {}}") + ","
                        + straight("flap", 0.45 * 145) + "]");
        assertEquals(
                roll.part("back").orElseThrow().outline().bounds().maxY(),
                ((Length) strap.get("cut-length").orElseThrow()).mm(),
                EXACT);
        double middle = ((Length) ((Values) ((List<?>) strap.get("folds").orElseThrow()).get(0))
                        .get("middle")
                        .orElseThrow())
                .mm();
        assertEquals(middle, folds(roll.part("back").orElseThrow()).get(0), EXACT);
    }

    @Test
    void beltsAndCollarsAreTurnedBackInTheirSlot() {
        for (String[] one : new String[][] {
            {"waist-belt", "belt", "'size': '900 mm', 'buckle-inside': '39 mm'"},
            {"dog-collar", "collar", "'neck': '400 mm', 'buckle-inside': '25.5 mm'"}
        }) {
            Item item = item(one[0], one[2]);
            Part strap = item.part(one[1]).orElseThrow();
            double bar = strap.folds().get(0).line().segments().get(0).start().x();
            List<Fitting> legs = item.fittings().stream()
                    .filter(fitting -> fitting.holes().size() == 2)
                    .toList();
            assertTrue(legs.size() >= 2, legs.toString());
            legs.forEach(fitting -> {
                double over =
                        item.hole(fitting.holes().get(0)).orElseThrow().centre().x();
                double under =
                        item.hole(fitting.holes().get(1)).orElseThrow().centre().x();
                assertEquals(over - bar, bar - under, EXACT, "both legs are alike on either side of the bar");
            });
        }
    }
}
