package org.hidewright.api.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Duration;
import org.junit.jupiter.api.Test;

class WorkOrderTest {
    private static Operation operation(String id, String... after) {
        return Operation.of(id, "Do " + id).after(List.of(after)).build();
    }

    private static Optional<List<String>> order(Operation... operations) {
        return WorkOrder.of(List.of(operations))
                .map(order -> order.stream().map(Operation::id).toList());
    }

    @Test
    void eachComesAfterWhatItNeedsAndElseAsGiven() {
        assertEquals(
                Optional.of(List.of("skive", "glue", "stitch", "sand")),
                order(operation("stitch", "glue"), operation("skive"), operation("glue", "skive"), operation("sand")));
        assertEquals(Optional.of(List.of("b", "a")), order(operation("b"), operation("a", "gone")));
    }

    @Test
    void aCircleHasNoOrder() {
        assertEquals(Optional.empty(), order(operation("a", "b"), operation("b", "c"), operation("c", "a")));
        assertEquals(Optional.empty(), order(operation("a", "a")));
    }

    /** Seeded work: an order is found just where a search through what needs what finds no circle. */
    @Test
    void anOrderIsFoundWhereThereIsOne() {
        Random random = new Random(3);
        int circles = 0;
        for (int i = 0; i < 500; i++) {
            int n = 1 + random.nextInt(9);
            List<Operation> operations = new ArrayList<>();
            for (int j = 0; j < n; j++) {
                List<String> after = new ArrayList<>();
                for (int k = 0; k < n; k++) {
                    if (random.nextInt(2 * n) == 0) {
                        after.add("o" + k);
                    }
                }
                operations.add(operation("o" + j, after.toArray(String[]::new)));
            }
            Optional<List<Operation>> order = WorkOrder.of(operations);
            boolean circle = operations.stream().anyMatch(one -> needsItself(one, operations));
            circles += circle ? 1 : 0;
            assertEquals(!circle, order.isPresent());
            order.ifPresent(found -> assertKept(found, operations));
        }
        assertTrue(circles > 50 && circles < 450, "both happen: " + circles);
    }

    private static boolean needsItself(Operation one, List<Operation> all) {
        List<String> open = new ArrayList<>(one.after());
        List<String> seen = new ArrayList<>();
        while (!open.isEmpty()) {
            String id = open.remove(0);
            if (id.equals(one.id())) {
                return true;
            }
            if (!seen.contains(id)) {
                seen.add(id);
                all.stream().filter(other -> other.id().equals(id)).forEach(other -> open.addAll(other.after()));
            }
        }
        return false;
    }

    private static void assertKept(List<Operation> order, List<Operation> operations) {
        Map<String, Integer> at = new HashMap<>();
        order.forEach(operation -> at.put(operation.id(), at.size()));
        assertEquals(operations.size(), at.size());
        order.forEach(operation ->
                operation.after().forEach(before -> assertTrue(at.get(before) < at.get(operation.id()))));
    }

    private static Item.Builder plate() {
        return Item.builder()
                .part(Part.of("plate", "Plate", Path.rectangle(Role.CUT, Point.of(0, 0), 20, 10))
                        .sanded(0.3)
                        .oversize(1)
                        .shows(Face.FLESH)
                        .build());
    }

    @Test
    void anItemHasItsWorkInOrderAndNamesOnlyWhatIsThere() {
        Operation cut = Operation.of("cut", "Cut the plate")
                .on(List.of("plate"))
                .tool("knife")
                .handsOn(Duration.ofSeconds(300))
                .leastWait(Duration.ofSeconds(60))
                .mostWait(Duration.ofSeconds(60))
                .build();
        Item item = plate().operation(operation("sand", "cut")).operation(cut).build();
        assertEquals(
                List.of("cut", "sand"),
                item.operations().stream().map(Operation::id).toList());
        assertEquals("Cut the plate", cut.what());
        assertEquals("knife", cut.tool());
        assertEquals(300, cut.handsOn().orElseThrow().seconds());
        assertEquals(60, cut.mostWait().orElseThrow().seconds());
        assertEquals(
                item, plate().operation(cut).operation(operation("sand", "cut")).build());
        assertFalse(item.equals(plate().build()));
        Item.Builder elsewhere =
                plate().operation(Operation.of("x", "X").on(List.of("lid")).build());
        assertThrows(IllegalArgumentException.class, elsewhere::build);
        Item.Builder before = plate().operation(operation("x", "y"));
        assertThrows(IllegalArgumentException.class, before::build);
        Item.Builder circle = plate().operation(operation("x", "x"));
        assertThrows(IllegalArgumentException.class, circle::build);
        Operation.Builder crossed =
                Operation.of("x", "X").leastWait(Duration.ofSeconds(61)).mostWait(Duration.ofSeconds(60));
        assertThrows(IllegalArgumentException.class, crossed::build);
    }

    @Test
    void aPartIsCutLargerByWhatIsTrimmedAndSanded() {
        Part part = plate().build().parts().get(0);
        assertEquals(1.3, part.allowance(), 1e-12);
        assertEquals(0.3, part.sanded());
        assertEquals(Set.of(Face.FLESH), part.shows());
    }
}
