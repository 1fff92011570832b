package org.hidewright.core.project;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a project file that is not written as it should be: what, in which words, and where. */
class ProjectRemarksTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'a': 1}|not-a-project|1|1",
                "[]|not-a-project|1|1",
                "3|not-a-project|1|1",
                "~{'hidewright': 1,}|not-json|2|18",
                "{'hidewright': 1} // mine|not-json|1|18",
                "{'hidewright': 1, 'name': 'a', 'name': 'b'}|not-json|1|37",
            })
    void aFileThatIsNoProjectIsToldWithItsPlace(String text, String key, int line, int column) {
        ProjectReader.Result read = ProjectReader.read(json(text).replace("~", "\n"));
        assertTrue(read.project().isEmpty());
        assertEquals(List.of(key), keys(read.remarks()));
        Remark remark = read.remarks().get(0);
        assertEquals(line, remark.place().line());
        assertEquals(column, remark.place().column(), 2);
        assertTrue(remark.stops());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'a': 1,~ 'b': 2~ 'questions': 3}|a comma or the closing bracket is missing before 'questions'|3",
                "{'a': 1 'a key that goes on and on': 2}|a comma or the closing bracket is missing before 'a key that goes on and …|1",
                "[1,~2 3]|a comma or the closing bracket is missing before 3|2",
                "{'a': 3 mm}|mm can be no value; a text stands in straight double quotes, like '3 mm'|1",
                "{'a': yes}|yes can be no value; a text stands in straight double quotes, like '3 mm'|1",
                "{'a': “x”}|“ can be no value; a text stands in straight double quotes, like '3 mm'|1",
                "{'a': 1,~}|a comma stands before } with nothing after it|2",
                "[1,~]|a comma stands before ] with nothing after it|2",
                "{'a' 1}|a colon is missing before 1|1",
                "{'a', 'b': 1}|a colon is missing before ,|1",
                "{name: 1}|a key in double quotes is missing before name|1",
                "{,}|a key is missing before ,|1",
                "{'a': }|a value is missing before }|1",
                "{'a': .5}|. can be no value; a text stands in straight double quotes, like '3 mm'|1",
                "{'a': 05}|this is no number; write it like 0.5, or as a text in double quotes|1",
                "{'a': 1.}|this is no number; write it like 0.5, or as a text in double quotes|1",
                "{~'a': [1, 2~|it ends before the bracket opened in line 2 is closed|3",
                "{'a': [1,|it ends before the bracket opened in line 1 is closed|1",
                "{'a': 'x|it ends before a double quote that closes a text|1",
                "{'a': 'x~'b': 2}|a text runs past the end of its line; the double quote that closes it is missing|1",
                "{'a': '\\q'}|a backslash inside a text stands before ', another backslash, n, t or u with four hexadecimal digits|1",
                "{'a': 1,~'a': 2}|the key “a” stands there twice|2",
                "{~// mine~}|a remark has no place in it|2",
                "{'a': [1}}|} does not close the bracket opened in line 1|1",
                "}|} closes nothing|1",
            })
    void whereAFileCannotBeReadItIsSaidWhatIsMissingThere(String text, String said, int line) {
        ProjectReader.Result read = ProjectReader.read(json(text).replace("~", "\n"));
        assertEquals(
                "The file cannot be read: " + json(said) + ".",
                said(read.remarks().get(0)).split(" \\| ")[0]);
        assertEquals(
                line, read.remarks().get(0).place().line(), said(read.remarks().get(0)));
    }

    @Test
    void bracketsTooDeepInEachOtherAreTold() {
        assertTrue(said(ProjectReader.read("[".repeat(2000)).remarks().get(0)).contains("too deep in each other"));
    }

    @Test
    void anEmptyFileIsToldInWordsOfTheHost() {
        assertEquals(List.of("empty-file"), keys(ProjectReader.read(" \n").remarks()));
        assertEquals(
                List.of("more-after-end"),
                keys(ProjectReader.read("{\"hidewright\": 1}\n{}").remarks()));
    }

    @Test
    void aKeyThatMeansNothingIsNamedWithTheNearestRightOne() {
        Project project =
                project("{\"hidewright\": 1,\n\"nmae\": \"Kit\",\n\"show\": {\"unit\": \"mm\",\n\"colour\": 1},\n"
                        + "\"slips\": [{\"id\": \"a\", \"calculator\": \"relay\",\n\"question\": {},\n\"tags\": []}]}");
        assertEquals(
                List.of(
                        "unknown-key-nearest",
                        "unknown-key-nearest",
                        "unknown-key",
                        "unknown-key-nearest",
                        "unknown-key"),
                keys(project.remarks()));
        assertTrue(said(project.remarks().get(0))
                .startsWith("“nmae” means nothing here; “name” would. | line 2, column "));
        assertTrue(said(project.remarks().get(1)).startsWith("“unit” means nothing here; “units” would. | line 3, "));
        assertTrue(said(project.remarks().get(2)).contains("Known here: units, paper, language."));
        assertTrue(said(project.remarks().get(3))
                .startsWith("“question” means nothing here; “questions” would. | line 6, column 1, slip “a” | "));
        assertEquals("a", project.remarks().get(4).slip());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'hidewright': '1'|1",
                "'hidewright': 0|1",
                "'hidewright': 1.0|1",
                "'hidewright': 1, 'name': 5|1",
                "'hidewright': 1, 'about': []|1",
                "'hidewright': 1, 'show': 'mm'|1",
                "'hidewright': 1, 'show': {'units': 5}|1",
                "'hidewright': 1, 'slips': {}|1",
                "'hidewright': 1, 'slips': [~5]|2",
            })
    void whatIsWrittenInTheWrongShapeIsToldWithItsLine(String members, int line) {
        Project project = project(json("{" + members + "}").replace("~", "\n"));
        assertEquals(List.of("wrong-shape"), keys(project.remarks()));
        assertEquals(line, project.remarks().get(0).place().line());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "'slips': 3|“slips” is the number 3 here; a list in square brackets belongs there.|[{'id': '…',",
                "'slips': [{}, 'a']|“slips[2]” is a text in double quotes here; a group in braces belongs there.|{'id': '…',",
                "'show': []|“show” is a list in square brackets here; a group in braces belongs there.|{'units': 'mm'}.",
                "'name': {}|“name” is a group in braces here; a text in double quotes belongs there.|'…'.",
                "'about': true|“about” is the word true without quotes here; a text in double quotes belongs there.|'…'.",
                "'workshop': {'tables': {'leather': [{'id': 'a'}, null]}}"
                        + "|“leather[2]” is the word null without quotes here; a group in braces belongs there.|{'id': '…', …}.",
                "'slips': [{'id': 'a', 'calculator': 'b', 'version': 1.5}]"
                        + "|“version” is the number 1.5 here; a whole number from 1 up belongs there.|1.",
            })
    void whatStandsThereAndWhatBelongsThereIsSaidInWords(String member, String what, String like) {
        Remark remark = project(json("{'hidewright': 1, " + member + "}")).remarks().stream()
                .filter(told -> told.key().equals("notice.wrong-shape"))
                .findFirst()
                .orElseThrow();
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        assertEquals(what, wording.what(remark));
        assertTrue(wording.next(remark).startsWith("Write it like " + json(like)), wording.next(remark));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "'title': 5",
                "'from': []",
                "'version': '2'",
                "'version': -1",
                "'questions': []",
                "'questions': 3"
            })
    void whatIsWrittenInTheWrongShapeOnASlipNamesTheSlip(String member) {
        Project project =
                project(json("{'hidewright': 1, 'slips': [\n{'id': 'a', 'calculator': 'relay',\n" + member + "}]}"));
        assertEquals(List.of("wrong-shape"), keys(project.remarks()));
        assertEquals(3, project.remarks().get(0).place().line());
        assertEquals("a", project.remarks().get(0).slip());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'calculator': 'relay'}|slip-without-id|",
                "{'id': '', 'calculator': 'relay'}|slip-without-id|",
                "{'id': 5, 'calculator': 'relay'}|slip-without-id|",
                "{'id': 'b'}|slip-without-calculator|b",
                "{'id': 'a', 'calculator': 'relay'}|slip-id-twice|a",
            })
    void aSlipThatCannotBeUsedIsToldAndKept(String slip, String key, String id) {
        String text = json("{'hidewright': 1, 'slips': [{'id': 'a', 'calculator': 'relay'},\n" + slip + "]}");
        Project project = project(text);
        assertEquals(List.of(key), keys(project.remarks()));
        assertEquals(2, project.remarks().get(0).place().line());
        assertEquals(id == null ? "" : id, project.remarks().get(0).slip());
        assertEquals(2, project.slips().size());
        assertEquals(text, project.text());
    }

    @Test
    void aNewerFormatIsOpenedWithAWord() {
        Project project = project("{\"hidewright\": 2, \"name\": \"Kit\"}");
        assertEquals(List.of("newer-format"), keys(project.remarks()));
        assertEquals("Kit", project.name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"'units': 'cm'", "'paper': 'B5'", "'language': 'de_DE'"})
    void aSettingThatIsNoneIsToldWithItsLine(String setting) {
        Project project = project(json("{'hidewright': 1, 'show': {\n" + setting + "}}"));
        assertEquals(1, project.remarks().size());
        assertTrue(keys(project.remarks()).get(0).startsWith("no-such-setting"));
        assertEquals(2, project.remarks().get(0).place().line());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "paper,Leter,Letter",
        "paper,us-letter,Letter",
        "paper,A5,A4",
        "units,inches,in",
        "units,milimetres,mm",
    })
    void aSettingThatIsNearlyOneIsNamedWithIt(String setting, String given, String near) {
        Project project = project(json("{'hidewright': 1, 'show': {'" + setting + "': '" + given + "'}}"));
        assertEquals(
                "“" + given + "” is none of the choices for “" + setting + "”; “" + near + "” is.",
                said(project.remarks().get(0)).split(" \\| ")[0]);
    }

    @Test
    void aSettingThatIsFarFromAllSaysWhatItCanBe() {
        Project units = project(json("{'hidewright': 1, 'show': {'units': 'furlongs'}}"));
        assertTrue(said(units.remarks().get(0)).contains("It can be: mm, in."));
        Project language = project(json("{'hidewright': 1, 'show': {'language': 'english'}}"));
        assertTrue(said(language.remarks().get(0)).contains("It can be: en, de, pt-BR, …."));
    }

    @Test
    void aSettingOrQuestionsAtTheHeadAreSaidToBelongFurtherIn() {
        Project project = project(json("{'hidewright': 1,\n'units': 'in', 'questions': {}}"));
        assertEquals(List.of("misplaced-key", "misplaced-key"), keys(project.remarks()));
        assertTrue(said(project.remarks().get(0))
                .startsWith("“units” means nothing here; inside “show” it would. | line 2, column 1"));
        assertTrue(said(project.remarks().get(1)).contains("Move it into “slips”."));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{'hidewrite': 1, 'slips': []}|hidewright",
                "{'hidewright': 1, 'slips': [{'id': 'a', 'calculater': 'relay'}]}|calculator",
                "{'hidewright': 1, 'slips': [{'di': 'a', 'calculator': 'relay'}]}|id",
            })
    void aKeyThatMustBeThereAndIsMisspeltIsToldOnce(String text, String near) {
        ProjectReader.Result read = ProjectReader.read(json(text));
        assertEquals(List.of("misspelt-key"), keys(read.remarks()));
        assertTrue(said(read.remarks().get(0)).contains("“" + near + "” would, and is missing."));
        assertTrue(read.remarks().get(0).stops());
    }

    @Test
    void theWorkedSettingsAreTakenInAnyCase() {
        assertEquals(
                List.of(),
                project(json("{'hidewright': 1, 'show': {'units': 'IN', 'paper': 'letter'}}"))
                        .remarks());
    }
}
