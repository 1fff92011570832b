package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.distribution.BuiltProgram.Ended;

/**
 * The built program with strange bundles among the maker’s add-ons and a short patience. Whatever they do, no stack trace is
 * printed, the packet is written whole, and the answer of another bundle is in it.
 */
final class StrangeRun {
    private static final Pattern STOP = Pattern.compile("(?m)^Stop \\(line");

    /** Seconds until a call is given up, and a start. */
    static final int PATIENCE = 2;

    private final BuiltProgram program;

    StrangeRun(Path scratch, String... javaOptions) {
        String[] options = new String[javaOptions.length + 2];
        System.arraycopy(javaOptions, 0, options, 2, javaOptions.length);
        options[0] = "-Dhidewright.call-limit=" + PATIENCE;
        options[1] = "-Dhidewright.start-limit=" + PATIENCE;
        program = BuiltProgram.inPlace(scratch, options);
    }

    StrangeRun with(StrangeBundle bundle) throws IOException {
        bundle.pack(addOns(), "odd.jar");
        return this;
    }

    Path addOns() {
        return program.addOns();
    }

    Ended run(String... arguments) throws IOException, InterruptedException {
        Ended ended = program.run(arguments);
        assertFalse(ended.told().contains("\tat ") || ended.answer().contains("\tat "), ended::toString);
        if (Boolean.getBoolean("hidewright.show")) {
            System.out.println("=== " + String.join(" ", arguments) + " -> " + ended.code() + "\n" + cut(ended.answer())
                    + "--- told\n" + cut(ended.told()));
        }
        return ended;
    }

    private static String cut(String text) {
        return text.length() < 3000 ? text : text.substring(0, 3000) + "…\n";
    }

    /** A slip in a project file. */
    static String slip(String id, String calculator) {
        return "{\"id\": \"" + id + "\", \"calculator\": \"" + calculator + "\"}";
    }

    /** Makes a project of these slips and a plain one after them. */
    Packet make(String... slips) throws IOException, InterruptedException {
        Path project = Files.createDirectories(program.elsewhere()).resolve("kit.json");
        String plain = "{\"id\": \"plain\", \"calculator\": \"thickness\", \"questions\": {\"thickness\": \"2 mm\"}}";
        String before = slips.length == 0 ? "" : String.join(",\n", slips) + ",\n";
        Files.writeString(
                project, "{\"hidewright\": 1, \"name\": \"Field kit\", \"slips\": [\n" + before + plain + "]}");
        Packet packet =
                new Packet(run("make", project.toString()), program.elsewhere().resolve("out/kit"));
        packet.isWholeAndThePlainSlipIsAnswered();
        return packet;
    }

    /** Checks that the sentences follow each other, the first word of each included, and that nothing else was told. */
    static void assertTold(Ended ended, String... lines) {
        assertEquals(String.join("\n", lines), told(ended).strip());
    }

    /** What is told before the stops in it are said again, as they are where there are any. */
    static String told(Ended ended) {
        int again = ended.told().indexOf("\nStops that are told above: ");
        String told = again < 0 ? ended.told() : ended.told().substring(0, again);
        assertEquals(STOP.matcher(told).find(), again >= 0, ended.told());
        return told;
    }

    /** What {@code make} wrote. */
    record Packet(Ended ended, Path folder) {

        void isWholeAndThePlainSlipIsAnswered() throws IOException {
            assertTrue(Files.exists(folder.resolve("job-card.json")), ended::toString);
            JsonObject plain = slip("plain");
            assertEquals("worked", plain.text("state").orElse(""), ended::toString);
            JsonObject answer = (JsonObject) plain.get("answers")
                    .flatMap(answers -> ((JsonObject) answers).get("millimetres"))
                    .orElseThrow();
            assertEquals("2.0", scalar(answer.get("value").orElseThrow()));
            assertTrue(Files.readString(folder.resolve("job-card.csv")).contains("plain"), ended::toString);
            assertTrue(page().contains("Thickness “plain”"), ended::toString);
        }

        JsonObject slip(String id) throws IOException {
            for (JsonNode slip : ((JsonArray) json().get("slips").orElseThrow()).items()) {
                if (((JsonObject) slip).text("id").orElse("").equals(id)) {
                    return (JsonObject) slip;
                }
            }
            throw new AssertionError("no slip " + id);
        }

        private JsonObject json() throws IOException {
            return read(Files.readString(folder.resolve("job-card.json")));
        }

        /** The texts of the PDF. */
        String page() throws IOException {
            return PrintedText.of(folder.resolve("job-card.pdf"));
        }
    }

    /** A JSON text that has to be one, and nothing beside. */
    static JsonObject read(String json) {
        try {
            return (JsonObject) JsonText.read(json).root();
        } catch (JsonTrouble e) {
            throw new AssertionError(json, e);
        }
    }

    static String scalar(JsonNode node) {
        return ((JsonScalar) node).text();
    }
}
