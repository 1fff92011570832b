package org.hidewright.core.template;

import static org.hidewright.core.template.Sleeve.SLEEVE;
import static org.hidewright.core.template.Sleeve.all;
import static org.hidewright.core.template.Sleeve.read;
import static org.hidewright.core.template.Sleeve.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

/** What is wrong with a template that is a text is told once and where it stands. */
class TemplateFaultsTest {
    @Test
    void whatIsWrongIsToldWithItsPlaceInTheFile() {
        assertEquals(
                "expression-unknown-name-nearest 16:15",
                said("\"card-width + 2 * margin\"", "\"card-widht + 2 * margin\""));
        assertEquals("expression-not-alike 16:26", said("\"card-width + 2 * margin\"", "\"card-width + 2\""));
        assertEquals(
                "expression-unknown-name 34:51",
                said("\"=width\", \"height\": \"90 mm\"", "\"=girth\", \"height\": \"90 mm\""));
        assertEquals("template-name-twice 17:5", said("\"step\": \"12 mm\"", "\"lining\": \"12 mm\""));
        assertEquals(
                "template-missing 7:5",
                said("\"preset\": \"85.6 mm\", \"label\": \"Width of a card\", ", "\"preset\": \"85.6 mm\", "));
        assertEquals("template-declaration 7:5", said("\"preset\": \"85.6 mm\"", "\"preset\": \"8.56 mm\""));
        assertEquals("template-declaration 9:32", said("\"kind\": \"count\"", "\"kind\": \"counts\""));
        assertEquals("template-gives 26:99", said("\"is\": \"width\"", "\"is\": \"width * width\""));
        assertEquals(
                "unknown-key-nearest 3:24",
                said("\"id\": \"card-sleeve\",", "\"id\": \"card-sleeve\", \"tittle\": \"\","));
    }

    @Test
    void wordsThatNoChoiceHasAreTold() {
        assertEquals(
                "expression-no-such-word-nearest 28:59",
                said("\"is\": \"lining is not 'none'\"", "\"is\": \"lining is not 'noen'\""));
        assertEquals(
                "expression-no-such-word 37:30",
                said("\"when\": \"=lining is 'cloth'\"", "\"when\": \"=lining is 'felt'\""));
        assertEquals("expression-missing-is 37:27", said("\"=lining is 'cloth'\"", "\"=lining 'cloth'\""));
    }

    @Test
    void whatIsNamedIsThere() {
        assertEquals("template-names-nothing-nearest 20:75", said("\"at\": \"pockets\"", "\"at\": \"pocket\""));
        assertEquals("template-names-nothing 20:75", said("\"at\": \"pockets\"", "\"at\": \"margin\""));
        assertEquals(
                "template-names-nothing-nearest 26:99",
                said("\"is\": \"width\"", "\"by\": \"value-widht\", \"is\": \"width\""));
        assertEquals(
                List.of(),
                read(SLEEVE.replace("\"is\": \"width\"", "\"by\": \"value-width\", \"is\": \"width\""))
                        .remarks());
    }

    @Test
    void oneFaultIsToldOnce() {
        assertEquals(List.of("template-other-measure 15:5"), all("\"3 mm + 1 mm\"", "\"4\""), "used further down");
        assertEquals(List.of("template-other-measure 15:5"), all("\"3 mm + 1 mm\"", "\"4 g\""));
        assertEquals(List.of("template-other-measure 17:5"), all("\"step\": \"12 mm\"", "\"step\": \"12\""));
        assertEquals(
                List.of("template-declaration 7:5"),
                all("\"min\": \"30 mm\"", "\"min\": \"300 mm\""),
                "whatever takes its answer");
        assertEquals(
                List.of("template-name-twice 9:5"),
                all("\"key\": \"pockets\"", "\"key\": \"card-width\"").subList(0, 1));
    }

    @Test
    void whatIsWorkedOutFurtherDownIsToldSo() {
        TemplateReader.Result read = read(SLEEVE.replace("\"3 mm + 1 mm\"", "\"step / 3\""));
        assertEquals(
                List.of("notice.template-name-later 15:16"),
                read.remarks().stream()
                        .map(remark -> remark.key() + " " + remark.place())
                        .toList());
        assertEquals(
                "“step” is worked out only in line 17.",
                new Wording(Locale.ENGLISH, UnitSystem.METRIC)
                        .what(read.remarks().get(0)));
    }

    @Test
    void questionsThatNothingTakesAreKnown() {
        assertEquals(Set.of("thumb"), read(SLEEVE).unused());
    }

    @Test
    void whatIsOfAnotherShapeIsToldWithItsPlace() {
        assertEquals(
                List.of(
                        "wrong-shape 4:12",
                        "wrong-shape 10:52",
                        "wrong-shape 17:13",
                        "template-declaration 20:37",
                        "template-gives 22:54",
                        "wrong-shape 31:19",
                        "wrong-shape 3:35"),
                List.of(
                        said("\"title\": \"Card sleeve\"", "\"title\": 5"),
                        said("{\"none\": \"None\", \"cloth\": \"Cloth\"}", "[\"none\", \"cloth\"]"),
                        said("\"step\": \"12 mm\"", "\"step\": [12]"),
                        said("\"severity\": \"check\"", "\"severity\": \"chek\""),
                        said("\"when\": \"pockets is 0\"", "\"when\": \"pockets\""),
                        said("\"calculator\": \"plates\"", "\"calculator\": [\"plates\"]"),
                        said("\"id\": \"card-sleeve\",", "\"id\": \"card-sleeve\", \"version\": 0,")));
    }

    @Test
    void whatNoExpressionCanNameIsNoName() {
        assertEquals("template-declaration 17:5", said("\"step\": \"12 mm\"", "\"\": \"12 mm\""));
        assertEquals("template-declaration 17:5", said("\"step\": \"12 mm\"", "\"Step\": \"12 mm\""));
        assertEquals("template-declaration 17:5", said("\"step\": \"12 mm\"", "\"a step\": \"12 mm\""));
    }

    @Test
    void whatFollowsFromAFaultIsNotToldAgain() {
        TemplateReader.Result result = read(SLEEVE.replace("\"3 mm + 1 mm\"", "\"3 mm + 1\""));
        assertEquals(
                List.of("notice.expression-not-alike"),
                result.remarks().stream().map(Remark::key).toList());
        assertEquals(Optional.empty(), result.template());
    }

    @Test
    void whatIsNoTemplateIsTold() {
        assertEquals("[notice.not-json]", keys("{"));
        assertEquals("[notice.not-a-template]", keys("[]"));
        assertEquals("[notice.not-a-template]", keys("{\"hidewright\": 1}"));
        assertEquals("[notice.template-newer]", keys("{\"template\": 2}"));
        assertTrue(keys("{\"template\": 1}").startsWith("[notice.template-missing"), keys("{\"template\": 1}"));
    }

    private static String keys(String text) {
        return read(text).remarks().stream().map(Remark::key).toList().toString();
    }

    /** Of the head, of what has a key, and of what has none. */
    @Test
    void whereSomethingIsMissingItIsSaidWhichPartMeansNothingWithoutIt() {
        assertEquals("Without it the whole text means nothing.", why("\"title\": \"Card sleeve\",", ""));
        assertEquals(
                "Without it “card-width” means nothing.", why("\"label\": \"Width of a card\", \"help\"", "\"help\""));
        assertEquals("Without it what these braces hold means nothing.", why("\"calculator\": \"plates\",", ""));
    }

    private static String why(String was, String is) {
        assertTrue(SLEEVE.contains(was), was);
        return new Wording(Locale.ENGLISH, UnitSystem.METRIC)
                .why(read(SLEEVE.replace(was, is)).remarks().get(0));
    }
}
