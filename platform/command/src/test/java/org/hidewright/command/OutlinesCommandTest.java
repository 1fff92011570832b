package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed of a drawing; the drawing here is a text of names and corners, a line each. */
class OutlinesCommandTest {
    private static final String SIDE =
            "hide 10 10 410 10 410 310 10 310\nhole-1 60 60 80 60 80 90 60 90\nscar 100 100 110 100 100 120\n";

    private final Terminal terminal = new Terminal();

    @TempDir
    Path folder;

    private static final class Plain implements DrawingReader {
        @Override
        public String ending() {
            return ".kit";
        }

        @Override
        public ReadDrawing read(byte[] file) throws FileTrouble {
            List<DrawnLine> lines = new ArrayList<>();
            for (String text : new String(file, StandardCharsets.UTF_8).split("\n")) {
                String[] words = text.split(" ");
                List<Point> places = new ArrayList<>();
                for (int i = 1; i + 1 < words.length; i += 2) {
                    places.add(Point.of(Double.parseDouble(words[i]), Double.parseDouble(words[i + 1])));
                }
                Place at = new Place(lines.size() + 1, 1);
                if (places.isEmpty()) {
                    throw OutlineNotices.trouble(OutlineNotices.DRAWN_UNREADABLE.with(words[0], "nothing"), at);
                }
                lines.add(new DrawnLine(words[0], at, List.of(words[0]), places, true));
            }
            return new ReadDrawing(lines, List.of());
        }
    }

    @BeforeEach
    void aReaderIsThere() {
        terminal.readers = List.of(new Plain());
    }

    private int run(String text, String... more) throws Exception {
        Path file = Files.writeString(folder.resolve("Spring side 2.KIT"), text);
        List<String> arguments = new ArrayList<>(List.of("outlines", file.toString(), "--language=en"));
        arguments.addAll(List.of(more));
        return terminal.run(arguments.toArray(String[]::new));
    }

    @Test
    void sizesAndAreasAreShownWithWhatIsToBePutIn() throws Exception {
        assertEquals(ExitCode.DONE, run(SIDE), terminal.err);
        String out = terminal.out.replace('\u00a0', ' ');
        assertTrue(out.startsWith("  Hide    400 mm × 300 mm  12 dm²  hide, line 1\n"), out);
        assertTrue(out.contains("  hole    20 mm × 30 mm    6 cm²   hole-1, line 2\n"), out);
        assertTrue(out.contains("  marked  10 mm × 20 mm    1 cm²   scar, line 3\n"), out);
        assertTrue(out.contains("\nOutline\n0,0 400,0 400,300 0,300\n"), out);
        assertTrue(out.contains("\nhole 50,50 70,50 70,80 50,80;\nmarked 90,90 100,90 90,110\n"), out);
        assertTrue(terminal.err.contains("Taken as marked") && terminal.err.contains("scar (3)"), terminal.err);
    }

    @Test
    void asJsonItIsTheRowOfAProject() throws Exception {
        assertEquals(ExitCode.DONE, run(SIDE, "--json"), terminal.err);
        JsonNode row = new ObjectMapper().readTree(terminal.out);
        assertEquals("spring-side-2", row.get("id").asText());
        assertEquals(4, row.get("hide").get("outline").asText().split(" ").length);
        assertEquals(2, row.get("hide").get("flaws").size());
        assertTrue(row.get("hide").get("flaws").get(0).asText().startsWith("hole "), terminal.out);
        assertEquals(2, row.get("hide").size(), "what else a hide has is typed");
    }

    @Test
    void withoutAHideOrAFileThatIsReadThereIsNothing() throws Exception {
        assertEquals(ExitCode.REFUSED, run("hide 0 0 90 90 90 0 0 50"));
        assertEquals("", terminal.out);
        assertTrue(terminal.err.contains("crosses or touches itself"), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, run(SIDE + "odd"));
        assertTrue(terminal.err.contains("(line 4, column 1): Of odd, “nothing” cannot be read."), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("outlines", "side.kit", "--language=en"));
        assertTrue(terminal.err.contains("There is no file side.kit"), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("outlines", "side.dwg", "--language=en"));
        assertTrue(
                terminal.err.contains("side.dwg is no drawing that can be read. Save it as one of these kinds: .kit."),
                terminal.err);
        terminal.readers = List.of();
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("outlines", "side.kit", "--language=en"));
        assertTrue(terminal.err.contains("No bundle that reads drawings is installed"), terminal.err);
    }
}
