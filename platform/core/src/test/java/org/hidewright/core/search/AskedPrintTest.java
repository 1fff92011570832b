package org.hidewright.core.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/** What tells whether a search was made for what is asked now. */
class AskedPrintTest {
    private static final Path SQUARE = Path.rectangle(Role.CUT, Point.of(0, 0), 60, 40);

    private static String print(Object value) {
        return AskedPrint.of(Values.of(Map.of("asked", value)), "found");
    }

    private static Part.Builder part(Path outline) {
        return Part.of("front", "Front", outline).leather("bridle");
    }

    private static String print(Part.Builder part) {
        return print(Item.builder().part(part.build()).build());
    }

    private static Path corner(UnaryOperator<Path.Builder> last) {
        return last.apply(Path.from(Point.of(0, 0)).lineTo(60, 0).lineTo(60, 40).lineTo(20, 40))
                .lineTo(0, 0)
                .closed(Role.CUT);
    }

    private static void allDiffer(List<String> prints) {
        assertEquals(prints.size(), new HashSet<>(prints).size(), prints::toString);
    }

    @Test
    void eachAnswerCountsButTheOneSearchedForAndTheirOrderDoesNot() {
        Map<String, Object> asked = new LinkedHashMap<>();
        asked.put("gap", Length.ofMm(2));
        asked.put("turned", true);
        String print = AskedPrint.of(Values.of(asked), "found");
        assertEquals(16, print.length());
        Map<String, Object> otherOrder = new LinkedHashMap<>();
        otherOrder.put("found", Values.of(Map.of("place", 1)));
        otherOrder.put("turned", true);
        otherOrder.put("gap", Length.ofMm(2));
        assertEquals(print, AskedPrint.of(Values.of(otherOrder), "found"));
        assertNotEquals(print, AskedPrint.of(Values.of(otherOrder), "place"));
        Map<String, Object> other = new HashMap<>(asked);
        other.put("turned", false);
        assertNotEquals(print, AskedPrint.of(Values.of(other), "found"));
        other.remove("turned");
        assertNotEquals(print, AskedPrint.of(Values.of(other), "found"));
    }

    @Test
    void numbersCountToAMillionthOfTheirBaseUnit() {
        assertEquals(print(Length.ofMm(2)), print(Length.ofMm(2.0000004)));
        assertNotEquals(print(Length.ofMm(2)), print(Length.ofMm(2.000001)));
        assertEquals(print(0.125), print(0.1250000001));
        assertNotEquals(print(0.125), print(0.125002));
        assertNotEquals(print(7), print(8));
    }

    @Test
    void valuesOfEveryKindCount() {
        Values row = Values.row("a", Map.of("at", 1));
        allDiffer(List.of(
                print(row),
                print(Values.row("b", Map.of("at", 1))),
                print(Values.row("a", Map.of("at", 2))),
                print(Values.row("a", Map.of("to", 1))),
                print(Chosen.of("a", row)),
                print(Chosen.of("b", row)),
                print(List.of(row)),
                print(List.of(row, row)),
                print(Money.of(12.5, Units.currency("EUR"))),
                print(Money.of(12.5, Units.currency("USD"))),
                print(Money.of(12.51, Units.currency("EUR"))),
                print(Size.of(Length.ofMm(1), Length.ofMm(2))),
                print(Size.of(Length.ofMm(2), Length.ofMm(1))),
                print("a"),
                print("b"),
                print(true)));
    }

    @Test
    void twoWordsAreNotReadAsOne() {
        assertNotEquals(print(List.of("ab", "c")), print(List.of("a", "bc")));
        assertNotEquals(print(List.of("a 1:b")), print(List.of("a", "b")));
        assertNotEquals(print(List.of(List.of(1), 2)), print(List.of(1, List.of(2))));
    }

    @Test
    void ofAPartCountsAllThatIsCutAndHowOften() {
        List<String> prints = new ArrayList<>();
        prints.add(print(part(SQUARE)));
        prints.add(print(Part.of("back", "Front", SQUARE).leather("bridle")));
        prints.add(print(part(SQUARE).leather("lining")));
        prints.add(print(part(SQUARE).pieces(2, 0)));
        prints.add(print(part(SQUARE).pieces(1, 1)));
        prints.add(print(part(SQUARE).oversize(3)));
        prints.add(print(part(SQUARE).sanded(0.5)));
        prints.add(print(part(SQUARE).direction(0)));
        prints.add(print(part(SQUARE).direction(1)));
        prints.add(print(part(SQUARE).hole(Hole.of("h", Point.of(5, 5), 3))));
        prints.add(print(part(SQUARE).hole(Hole.of("h", Point.of(5, 6), 3))));
        prints.add(print(part(SQUARE).hole(Hole.of("h", Point.of(5, 5), 4))));
        prints.add(print(part(SQUARE).cutOut(Path.rectangle(Role.INNER_CUT, Point.of(10, 10), 20, 5))));
        prints.add(print(part(SQUARE).cutOut(Path.rectangle(Role.INNER_CUT, Point.of(10, 10), 20, 6))));
        allDiffer(prints);
    }

    @Test
    void theWholeWayOfAnOutlineCounts() {
        allDiffer(List.of(
                print(part(SQUARE)),
                print(part(Path.rectangle(Role.CUT, Point.of(0, 0), 60, 41))),
                print(part(Path.rectangle(Role.CUT, Point.of(1, 0), 60, 40))),
                print(part(corner(to -> to.lineTo(0, 20)))),
                print(part(corner(to -> to.arcAround(Point.of(20, 20), Math.PI / 2)))),
                print(part(corner(to -> to.arcAround(Point.of(20, 20), -3 * Math.PI / 2)))),
                print(part(corner(to -> to.cubicTo(Point.of(10, 40), Point.of(0, 30), Point.of(0, 20))))),
                print(part(corner(to -> to.cubicTo(Point.of(10, 40), Point.of(0, 31), Point.of(0, 20))))),
                print(part(corner(to -> to.cubicTo(Point.of(11, 40), Point.of(0, 30), Point.of(0, 20)))))));
    }

    @Test
    void whatIsOnlyDrawnOnAPartDoesNotCount() {
        assertEquals(
                print(part(SQUARE)),
                print(Part.of("front", "Vorderteil", SQUARE)
                        .leather("bridle")
                        .thickness(2)
                        .mark(Path.line(Role.MARK, Point.of(1, 1), Point.of(2, 2)))));
    }
}
