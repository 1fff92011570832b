package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stops the work is not pushed out of sight by what is printed after it. */
class StopsToldTest {
    private static final String[] REFUSED = {
        "work",
        "kit-strap",
        "--language=en",
        "core=flat-ring",
        "core.inside=20",
        "edge.bevel=1",
        "sections=[]",
        "note=refuse"
    };

    @TempDir
    Path folder;

    private final Terminal terminal = new Terminal(new Strap());

    private int make(String... slips) throws Exception {
        Path file = folder.resolve("strap.json");
        Files.writeString(
                file, "{\"hidewright\": 1, \"name\": \"Kit\", \"slips\": [\n" + String.join(",\n", slips) + "\n]}");
        return terminal.run(
                "make",
                file.toString(),
                "--language=en",
                "--into",
                folder.resolve("out").toString());
    }

    private static String slip(String id, String thickness) {
        return "{\"id\": \"" + id + "\", \"calculator\": \"kit-strap\", \"questions\": {\"thickness\": \"" + thickness
                + "\", \"core\": {\"flat-ring\": {\"inside\": \"20\"}}, \"edge\": {\"bevel\": \"1\"}, \"sections\": []}}";
    }

    @Test
    void afterTheFilesOfAPacketItIsSaidHowManyThereAreAndWhere() throws Exception {
        assertEquals(ExitCode.REFUSED, make(slip("a", "3 sheep"), slip("b", "2 mm"), slip("c", "")));
        String again = terminal.err.substring(terminal.err.indexOf("\nStops that are told above"));
        List<String> lines = again.lines().toList();
        assertEquals(
                "Stops that are told above: 2. Until they are mended, not everything is worked out:", lines.get(1));
        assertTrue(
                lines.get(2).startsWith("    line 2, column ")
                        && lines.get(2).contains("slip “a”, question “thickness”: “sheep”"),
                again);
        assertTrue(lines.get(3).contains("slip “c”, question “thickness”: "), again);
        assertEquals(4, lines.size(), again);
        assertEquals(ExitCode.DONE, make(slip("b", "2 mm")), terminal.err);
        assertFalse(terminal.err.contains("Stops"), terminal.err);
    }

    @Test
    void ofManyTheFirstAreNamed() throws Exception {
        List<String> slips = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            slips.add(slip("a" + i, "sheep"));
        }
        make(slips.toArray(String[]::new));
        assertTrue(terminal.err.contains("Stops that are told above: 11."), terminal.err);
        assertTrue(terminal.err.endsWith("\n    … and 3 more\n"), terminal.err);
    }

    /** Below what was preset, which may be pages. */
    @Test
    void whatRefusesOneCalculationStandsLast() {
        List<String> arguments = new ArrayList<>(List.of(REFUSED));
        arguments.add("thickness=6 mm");
        assertEquals(ExitCode.REFUSED, terminal.run(arguments.toArray(String[]::new)));
        int presets = terminal.out.indexOf("Not typed, so taken as");
        assertTrue(presets > 0 && terminal.out.indexOf("\nStop") > presets, terminal.out);
    }

    @Test
    void whatIsWrongWithTheWorkshopIsSaidAgainBelowTheAnswers() throws Exception {
        Path workshop = folder.resolve("bench.json");
        Files.writeString(
                workshop, "{\"workshop\": 1, \"tables\": {\"leather\": [{\"id\": \"calf\"}, {\"id\": \"calf\"}]}}");
        List<String> arguments = new ArrayList<>(List.of(REFUSED));
        arguments.set(arguments.indexOf("note=refuse"), "thickness=2 mm");
        arguments.addAll(List.of("--workshop", workshop.toString()));
        terminal.run(arguments.toArray(String[]::new));
        assertTrue(terminal.out.contains("Cut length"), terminal.out + terminal.err);
        assertTrue(terminal.err.contains("\nStops that are told above: 1."), terminal.err);
        terminal.run("workshop", workshop.toString(), "--language=en");
        assertTrue(terminal.err.contains("\nStops that are told above: 1."), terminal.err);
    }

    @Test
    void aProjectIsNoCalculator() {
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("work", "strap.json", "--language=en"));
        assertEquals(
                "“strap.json” is no calculator. A project is worked out by: hidewright make strap.json\n",
                terminal.err);
    }
}
