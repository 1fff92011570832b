package org.hidewright.distribution;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Templates without Java that are nests, circles or no texts. */
final class HostileTemplates {
    private static final Path SOUND = Path.of("../../samples/specimen-tag/specimen-tag.json");

    /** What is told of a template that is in a bundle and of no use. */
    private static final String INVALID = """
            Check: The template {name}.json of {bundle} cannot be used.
                What is wrong in it is told beside this, with line and column.
                Mend the file, or turn the bundle off.""";

    private static final String ASKS_NOBODY = """
            Stop (line {line}, column 1, slip “{name}”): “%s” is asked here, and no such calculator is there.
                Without what it answers nothing can be worked out.
                Turn on the bundle that brings it, or install it; hidewright addons lists those that are here, also those turned off.""";

    /** The template’s own word; a slip that is worked and has nothing to tell but this. */
    private static final String KNIFE = """
            Caution (line {line}, column 1, slip “{name}”): A knife cuts what is in its way.
                The hand that holds the leather is near it.
                Cut away from the hand, along a steel rule, on a board.""";

    private static final int DEEP = 100_000;

    private HostileTemplates() {}

    static List<HostileJar> jars() throws IOException {
        String deep = "{\"template\": 1, \"x\": " + "[".repeat(DEEP) + "]".repeat(DEEP) + "}";
        byte[] latin = sound("latin-tag").replace("Specimen", "Spécimen").getBytes(StandardCharsets.ISO_8859_1);
        return List.of(
                HostileJar.asked("nest", template("nest", deep), HostileJar.UNUSABLE, INVALID, """
                        Stop (line 1, column 1022): The file cannot be read: its brackets stand too deep in each other, or a number or text in it is too long.
                            The file should be JSON text, and from this place on it is not.
                            Mend it at this place. Nothing was changed in the file."""),
                HostileJar.asked("absent", template("absent").packed(), HostileJar.UNUSABLE, INVALID, """
                        Check: The file {name}.json is not there, or cannot be read.
                            The manifest names it as a template.
                            Look at Hidewright-Templates in the manifest, or build the bundle again."""),
                HostileJar.asked(
                        "latin-tag",
                        template("latin-tag").entry("latin-tag.json", latin).packed(),
                        KNIFE),
                HostileJar.asked(
                        "circle", template("circle", asking("circle", "circle")), ASKS_NOBODY.formatted("circle")),
                HostileJar.asked(
                        "chicken", template("chicken", asking("chicken", "egg")), ASKS_NOBODY.formatted("egg")),
                HostileJar.asked("egg", template("egg", asking("egg", "chicken")), ASKS_NOBODY.formatted("chicken")));
    }

    private static String sound(String id) throws IOException {
        return Files.readString(SOUND).replace("specimen-tag", id);
    }

    /** A template that takes a length from another, or from itself. */
    private static String asking(String id, String other) throws IOException {
        String values = "\"values\": {";
        String text = sound(id);
        if (!text.contains(values)) {
            throw new IllegalStateException("the sample has no values any more");
        }
        return text.replace(
                values,
                values + "\"round\": {\"asks\": \"" + other
                        + "\", \"questions\": {}, \"answers\": {\"cut-length\": \"length\"}},");
    }

    private static StrangeBundle template(String id) {
        return StrangeBundle.named("net.example." + id)
                .without("Import-Package")
                .header("Hidewright-Templates", id + ".json");
    }

    private static byte[] template(String id, String text) throws IOException {
        return template(id).entry(id + ".json", text).packed();
    }
}
