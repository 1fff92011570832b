package org.hidewright.core.project;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.json.JsonTrouble;
import org.junit.jupiter.api.Test;

/** What a project holds, and what stays as it was when an answer of it is changed. */
class ProjectTest {
    /** Odd spacing, a byte order mark, keys of strangers at every level, and lines ended in three ways. */
    private static final String ODD = "\uFEFF{\r\n  \"hidewright\":1 , \"theirs\":{\"b\":[1.50, 1e5 ,null]},\n"
            + "\t\"name\" : \"Field kit \\u2013 No. 7\",\"show\":{\"units\":\"in\",\"colour\":\"tan\"},\n\"slips\":[ \n"
            + "{\"id\":\"far\", \"calculator\":\"tomorrow\",\"from\":\"org.example.later\",\"version\":3,\n"
            + "   \"questions\":{\"x\" : 1.50,\"y\":[ ],\"z\":{ \"deep\" :\"\\uD83E\\uDDF5\"}},  \"unknown\" :true }\n,"
            + "{\"id\":\"near\",\"calculator\":\"relay\",\"questions\":{\"take\":1.50 ,\"more\": \"2-3 oz\" }},"
            + "{ \"calculator\":\"relay\"}] , \"after\":\"\\u00bd\"}\r\n\r\n ";

    @Test
    void aFileComesBackCharacterForCharacter() {
        assertEquals(ODD, project(ODD).text());
    }

    @Test
    void anAnswerChangesItsOwnCharactersAlone() throws Exception {
        Project project = project(ODD).answering("near", "take", "\"3/32 in\"");
        assertEquals(ODD.replace("\"take\":1.50", "\"take\":\"3/32 in\""), project.text());
    }

    @Test
    void anAnswerGivenForTheFirstTimeIsAddedBehindTheOthers() throws Exception {
        Project project = project(ODD).answering("near", "all", "[1, 2]");
        assertEquals(ODD.replace("\"2-3 oz\" }", "\"2-3 oz\", \"all\": [1, 2] }"), project.text());
    }

    @Test
    void manyAnswersOnManySlipsStillTouchNothingElse() throws Exception {
        Project project = project(ODD)
                .answering("near", "take", "7")
                .answering("far", "x", "\"long enough to move everything behind it\"")
                .answering("near", "more", "null")
                .answering("near", "take", "8");
        assertEquals(
                ODD.replace("\"take\":1.50", "\"take\":8")
                        .replace("\"2-3 oz\"", "null")
                        .replace("\"x\" : 1.50", "\"x\" : \"long enough to move everything behind it\""),
                project.text());
    }

    @Test
    void slipsNotTouchedAreSharedWithTheProjectBefore() throws Exception {
        Project before = project(ODD);
        Project after = before.answering("near", "take", "7");
        assertSame(before.slips().get(0), after.slips().get(0));
        assertSame(before.slips().get(2), after.slips().get(2)); // it moved along its line
        assertEquals(
                "1.50",
                before.slips()
                        .get(1)
                        .textOf(before.slips().get(1).questions().get("take").orElseThrow()));
        assertEquals(ODD, before.text());
    }

    @Test
    void aSlipWithoutQuestionsGetsThem() throws Exception {
        String text = "{\"hidewright\": 1, \"slips\": [{\"id\": \"a\", \"calculator\": \"relay\"}]}";
        assertEquals(
                text.replace("\"relay\"", "\"relay\", \"questions\": {\"take\": 2}"),
                project(text).answering("a", "take", "2").text());
    }

    @Test
    void anAnswerThatIsNoSingleValueIsRefused() {
        Project project = project(ODD);
        assertThrows(JsonTrouble.class, () -> project.answering("near", "take", "2 mm"));
        assertThrows(JsonTrouble.class, () -> project.answering("near", "take", "2, \"more\": 3"));
        assertThrows(JsonTrouble.class, () -> project.answering("near", "all", "2}, {"));
        assertThrows(IllegalArgumentException.class, () -> project.answering("nowhere", "take", "2"));
    }

    /** The parser takes no more than 1000 brackets in each other, of which the project and its slips are two. */
    @Test
    void anAnswerTooDeepForTheFileIsRefusedThoughTheSlipAloneCouldHoldIt() throws Exception {
        Project project = project(ODD);
        String deepest = "[".repeat(996) + "]".repeat(996);
        String text = project.answering("near", "take", deepest).text();
        assertEquals(text, project(text).text());
        assertThrows(JsonTrouble.class, () -> project.answering("near", "take", "[" + deepest + "]"));
    }

    @Test
    void whatIsSaidOfTheFileStandsWhereItIsAfterAnAnswer() throws Exception {
        Project project = project(json("\uFEFF{'hidewright': 1, 'a': 1, 'slips': [{'id': 's',\r'b': 1}, 5,\r\n"
                + "{'id': 't', 'calculator': 'x', 'c': 1, 'questions': {}}], 'd': 1}"));
        Project longer = project.answering("s", "q", "[\n1]").answering("t", "q", "[\r\n\n]");
        for (Project read : List.of(project, longer)) {
            List<String> places = new ArrayList<>();
            for (String start : List.of("'a'", "'d'", "5", "{'id': 's'", "'b'", "'c'")) {
                String before = read.text().substring(1, read.text().indexOf(json(start)));
                String[] lines = before.split("\r\n|\r|\n", -1);
                places.add(lines.length + ":" + (lines[lines.length - 1].length() + 1));
            }
            assertEquals(
                    places,
                    read.remarks().stream()
                            .map(remark -> remark.place().toString())
                            .toList());
        }
    }

    @Test
    void theHeadIsReadAndWhatIsMissingIsEmpty() {
        Project project = project(
                "{\"hidewright\": 1, \"name\": \"Kit\", \"about\": \"For beetles\", \"show\": {\"paper\": \"Letter\"}}");
        assertEquals("Kit", project.name());
        assertEquals(Optional.of("For beetles"), project.about());
        assertEquals(Optional.of("Letter"), project.shown("paper"));
        assertEquals(Optional.empty(), project.shown("units"));
        assertEquals(List.of(), project.slips());
        assertEquals(List.of(), project.remarks());
        assertEquals("", project("{\"hidewright\": 1}").name());
    }

    @Test
    void aSlipKnowsWhatIsWrittenOnIt() {
        Slip far = project(ODD).slip("far").orElseThrow();
        assertEquals(3, far.version());
        assertEquals(Optional.of("org.example.later"), far.from());
        assertEquals(Optional.empty(), far.title());
        assertEquals("1.50", far.textOf(far.questions().get("x").orElseThrow()));
        assertEquals("far (tomorrow)", far.toString());
        assertEquals(1, project(ODD).slip("near").orElseThrow().version());
        assertEquals(Optional.empty(), project(ODD).slip("nowhere"));
        assertEquals(far, project(ODD).slip("far").orElseThrow());
        assertEquals(far.hashCode(), project(ODD).slip("far").orElseThrow().hashCode());
    }
}
