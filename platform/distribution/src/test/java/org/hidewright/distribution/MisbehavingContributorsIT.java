package org.hidewright.distribution;

import static org.hidewright.distribution.StrangeRun.assertTold;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.hidewright.distribution.StrangeRun.Packet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Real jars whose sections of the job card, or tables of the workshop, do wrong: told in plain words, and the rest is whole. */
class MisbehavingContributorsIT {
    private static final String TELL =
            "    Tell the maker of the bundle, or turn it off: hidewright addons off net.example.odd. Everything else ";

    private static final String LATE =
            "it had not come back after " + StrangeRun.PATIENCE + " s and was left to itself";

    @TempDir
    Path scratch;

    private static StrangeBundle contributor(String members, String sections) {
        return StrangeBundle.named(StrangeBundle.PACKAGE)
                .source("OddSections", """
                        import java.util.*;
                        import org.hidewright.api.document.*;
                        import org.hidewright.api.drawing.*;

                        public class OddSections implements SectionContributor {
                            %s

                            @Override
                            @SuppressWarnings({"unchecked", "rawtypes"})
                            public List<Section> sections(JobView job) {
                                %s
                            }
                        }
                        """.formatted(members, sections))
                .contributor("OddSections");
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        "throws",
                        "",
                        "throw new IllegalStateException(\"the stamp\\n\\tat the bench broke\");",
                        "java.lang.IllegalStateException: the stamp at the bench broke"),
                Arguments.of("never comes back", "", "while (true) {}", LATE),
                Arguments.of("is never made", "public OddSections() { while (true) {} }", "return List.of();", LATE),
                Arguments.of(
                        "cannot be made",
                        "public OddSections() { throw new IllegalStateException(\"no ink\"); }",
                        "return List.of();",
                        "it was announced, and could not be made"),
                Arguments.of("nothing", "", "return null;", "it gave nothing, not even an empty list of sections"),
                Arguments.of(
                        "no section",
                        "",
                        "return (List) List.of(\"Stamps\");",
                        "it gave a java.lang.String where a section belongs"),
                Arguments.of(
                        "null among them",
                        "",
                        "return Collections.singletonList(null);",
                        "it gave a null where a section belongs"),
                Arguments.of("a list without end", "", """
                        return new AbstractList<Section>() {
                            @Override public Section get(int i) { return null; }
                            @Override public int size() { while (true) {} }
                        };""", LATE),
                Arguments.of(
                        "a flood of rows", "", """
                        Table.Builder table = Table.builder().column("Stamp", Table.Align.START);
                        for (int i = 0; i < 100_000; i++) {
                            table.row("s");
                        }
                        return List.of(Section.of("odd", "Stamps", table.build()));""", "its sections have more than 2000 lines, and no more can be shown"),
                Arguments.of(
                        "a flood of sections",
                        "",
                        "return Collections.nCopies(100_000, Section.of(\"odd\", \"Stamps\"));",
                        "its sections have more than 2000 lines, and no more can be shown"),
                Arguments.of(
                        "a flood of text",
                        "",
                        "return List.of(Section.of(\"odd\", \"Stamps\", Paragraph.of(\"x\".repeat(10_000_000))));",
                        "its text of 10000000 characters is longer than the 4000 that can be shown"),
                Arguments.of(
                        "space without end",
                        "",
                        "return List.of(Section.of(\"odd\", \"Stamps\", NoteSpace.of(\"Notes\", 1_000_000)));",
                        "its sections have more than 2000 lines, and no more can be shown"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void aFaultIsToldInPlaceOfTheSections(String name, String members, String sections, String why) throws Exception {
        Packet packet =
                new StrangeRun(scratch).with(contributor(members, sections)).make();
        assertTold(
                packet.ended(),
                "Check: What bundle net.example.odd adds to the job card is missing.",
                "    This is a fault of the bundle: " + why,
                TELL + "on the card stands.");
        assertEquals(1, packet.ended().code());
        assertTrue(
                packet.page().contains("What bundle net.example.odd adds to the job card is missing"),
                packet::toString);
    }

    private static StrangeBundle table(String members) {
        return StrangeBundle.named(StrangeBundle.PACKAGE)
                .source("OddTable", """
                        import org.hidewright.api.calculator.*;
                        import org.hidewright.api.measure.*;
                        import org.hidewright.api.workshop.*;

                        @Tabulates("odds")
                        public class OddTable implements WorkshopTable<OddTable.Row> {
                            public record Row(@Asked(example = "Moss") String name) {}

                            %s
                        }
                        """.formatted(members))
                .table("OddTable", "odds");
    }

    static Stream<Arguments> tables() {
        return Stream.of(
                Arguments.of(
                        "throws",
                        "public OddTable() { throw new IllegalStateException(\"no shelf\"); }",
                        "    The bundle announced it and then gave none."),
                Arguments.of(
                        "never comes back",
                        "public OddTable() { while (true) {} }",
                        "    This is a fault of the bundle: " + LATE));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void aTableThatCannotBeHadIsToldAndTheOthersAreThere(String name, String members, String why) throws Exception {
        StrangeRun run = new StrangeRun(scratch).with(table(members));
        Ended ended = run.run("workshop");
        assertEquals(0, ended.code());
        assertTrue(ended.answer().contains("(leather)"), ended.answer());
        String[] told = {
            "Check: A calculator or table of bundle net.example.odd did not start.", why, TELL + "works on."
        };
        assertTold(ended, told);
        Packet packet = run.make("""
                {"id": "taken", "calculator": "thickness",
                  "questions": {"thickness": {"workshop": "leather", "row": "none", "column": "thickness"}}}""");
        String then = "\n\nStops that are told above: 1.";
        assertTrue(packet.ended().told().contains(String.join("\n", told) + then), packet::toString);
    }
}
