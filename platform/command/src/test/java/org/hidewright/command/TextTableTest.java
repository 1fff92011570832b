package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
    private static List<String> printed(List<List<String>> rows) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new TextTable(rows).print(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        return bytes.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void columnsAreAsWideAsTheirWidestCell() {
        assertEquals(
                List.of("  bar    6 mm", "  ring   13.5 mm", "  alone"),
                printed(List.of(List.of("bar", "6 mm"), List.of("ring", "13.5 mm"), List.of("alone"))));
    }

    @Test
    void whatIsTooWideForAPageIsWrappedBetweenWords() {
        List<String> lines =
                printed(List.of(List.of("edge", "word ".repeat(40).strip(), "does"), List.of("a", "b", "c")));
        assertEquals(3, lines.size());
        assertEquals("  edge  " + "word ".repeat(20).strip() + "     does", lines.get(0));
        assertEquals("        " + "word ".repeat(20).strip(), lines.get(1));
        assertEquals("  a     b" + " ".repeat(103) + "c", lines.get(2));
    }

    @Test
    void theWidestColumnGivesFirstAndNoneGetsTooNarrow() {
        String long1 = "aa ".repeat(30).strip();
        String long2 = "bb ".repeat(50).strip();
        List<String> lines = printed(List.of(List.of(long1, long2)));
        assertEquals(3, lines.size()); // 89 and 149 letters become 55 each
        assertEquals(0, lines.stream().filter(line -> line.length() > 114).count());
        List<String> many =
                printed(List.of(Collections.nCopies(10, "aa ".repeat(8).strip())));
        assertEquals(2, many.size()); // ten columns of 16 letters, five words each
    }
}
