package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.measure.Length;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A thing of its standard's greatest size goes in: every card (ISO/IEC 7810 and habits), sheet (ISO 216), cell (IEC 60086) and
 * coin that has a name, through a link as a maker has it; seen by the holes of the seams that are around it.
 */
class StandardSizesIT {
    private static final Catalogue CATALOGUE = catalogue();

    private final Bench bench = new Bench(CATALOGUE);

    private static Catalogue catalogue() {
        try {
            return BundledCalculators.catalogue();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** Every name of a kind of held thing, as its slip would be typed. */
    private static Stream<String> named(String variant, String choice, String more) {
        Question thing = CATALOGUE
                .find("held-thing")
                .orElseThrow()
                .calculator()
                .declaration()
                .question("thing")
                .orElseThrow();
        Variant kind = thing.variants().stream()
                .filter(one -> one.key().equals(variant))
                .findFirst()
                .orElseThrow();
        List<Option> options = kind.questions().stream()
                .filter(question -> question.key().equals(choice))
                .findFirst()
                .orElseThrow()
                .options();
        assertTrue(options.size() > 4, options.toString());
        return options.stream()
                .map(option -> "{\"" + variant + "\": {\"" + choice + "\": \"" + option.key() + "\"" + more + "}}");
    }

    static Stream<String> cards() {
        // a SIM, 15 mm high, is too low for a pocket with a step, and both templates say so
        return named("cards", "card", ", \"count\": \"2\"").filter(thing -> !thing.contains("id-000"));
    }

    static Stream<String> sheets() {
        return named("sheets", "paper", ", \"thickness\": \"9 mm\"");
    }

    static Stream<String> coins() {
        return named("coins", "coin", ", \"count\": \"4\"");
    }

    static Stream<String> cells() {
        return named("cells", "cell", ", \"count\": \"2\"");
    }

    private record Made(Item item, double width, double height, double thickness) {
        List<Point> holes(String part, String row) {
            return item.stitchLine(new OnPart(part, row)).orElseThrow().holes();
        }

        double across(String part, String row) {
            return span(holes(part, row), true);
        }

        double upright(String part, String row) {
            return span(holes(part, row), false);
        }

        private static double span(List<Point> holes, boolean across) {
            double least = holes.stream()
                    .mapToDouble(hole -> across ? hole.x() : hole.y())
                    .min()
                    .orElseThrow();
            double most = holes.stream()
                    .mapToDouble(hole -> across ? hole.x() : hole.y())
                    .max()
                    .orElseThrow();
            return most - least;
        }

        double top(String part) {
            return item.part(part).orElseThrow().outline().bounds().maxY();
        }

        double lowest(String part, String row) {
            return holes(part, row).stream().mapToDouble(Point::y).min().orElseThrow();
        }
    }

    private Made made(String thing, String template, String questions) {
        WorkedProject worked = bench.work(ProjectReader.read("{\"hidewright\": 1, \"slips\": ["
                        + "{\"id\": \"held\", \"calculator\": \"held-thing\", \"questions\": {\"thing\": " + thing
                        + "}}, {\"id\": \"piece\", \"calculator\": \"" + template + "\", \"questions\": {"
                        + questions.replaceAll("@(\\w+)", "{\"from\": \"held\", \"answer\": \"$1\"}") + "}}]}")
                .project()
                .orElseThrow());
        WorkedSlip piece = worked.slips().get("piece");
        assertEquals(WorkedSlip.State.WORKED, piece.state(), () -> thing + piece.remarks());
        Values held = worked.slips().get("held").answers().orElseThrow();
        return new Made(
                piece.answers().orElseThrow().entries().values().stream()
                        .filter(Item.class::isInstance)
                        .map(Item.class::cast)
                        .findFirst()
                        .orElseThrow(),
                mm(held, "width"),
                mm(held, "height"),
                mm(held, "thickness"));
    }

    private static double mm(Values values, String key) {
        return ((Length) values.get(key).orElseThrow()).mm();
    }

    @ParameterizedTest
    @MethodSource("cards")
    void everyCardGoesIntoASleeve(String thing) {
        Made made = made(
                thing,
                "card-sleeve",
                "\"card-width\": @width, \"card-height\": @height, \"card-thickness\": @thickness, \"step\": \"8.5 mm\","
                        + " \"pitch\": \"3 mm\"");
        assertTrue(made.across("front", "rim") >= made.width() + made.thickness());
        // what of the card is in the pocket in front, and half its thickness at the bottom
        double inside = made.top("front") - made.lowest("front", "rim");
        assertTrue(inside >= made.height() - 8.5 + made.thickness() / 2 - 1e-9);
    }

    @ParameterizedTest
    @MethodSource("cards")
    void everyCardGoesIntoAWallet(String thing) {
        Made made = made(
                thing,
                "folding-wallet",
                "\"cards\": {\"width\": @width, \"height\": @height, \"thickness\": @thickness}, \"step\": \"8 mm\", \"pitch\": \"3 mm\"");
        assertTrue(made.across("left-front", "rim") >= made.width() + made.thickness());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everySheetGoesIntoABookCover(String thing) {
        Made made = made(
                thing, "book-cover", "\"held\": {\"width\": @width, \"height\": @height, \"thickness\": @thickness}");
        assertTrue(made.upright("left", "seam") >= made.height());
        double cover =
                made.item().part("outer").orElseThrow().outline().bounds().width();
        assertTrue(cover - 2 * 3.5 >= 2 * made.width() + made.thickness());
    }

    @ParameterizedTest
    @MethodSource("coins")
    void everyCoinGoesIntoAFlatPouch(String thing) {
        inPouch(
                made(
                        thing,
                        "flat-pouch",
                        "\"held\": {\"width\": @width, \"height\": @height, \"thickness\": @thickness}, \"closing\": {\"open\": {\"stands-out\": \"0 mm\"}}"));
    }

    @ParameterizedTest
    @MethodSource("cells")
    void everyCellGoesIntoAFlatPouch(String thing) {
        inPouch(
                made(
                        thing,
                        "flat-pouch",
                        "\"held\": {\"width\": @width, \"height\": @height, \"thickness\": @thickness}, \"closing\": {\"open\": {\"stands-out\": \"0 mm\"}}"));
    }

    /** Half the girth between the seams, and as deep as the thing and half its thickness. */
    private static void inPouch(Made made) {
        assertTrue(made.across("front", "rim") >= made.width() + made.thickness());
        assertTrue(made.top("front") - made.lowest("front", "rim") >= made.height() + made.thickness() / 2 - 1e-9);
    }
}
