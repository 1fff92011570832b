package org.hidewright.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

class TextTemplateTest {
    private static final DeclaredCalculator PLATES = RecordCalculator.of(new Plates());

    private static final DeclaredCalculator DOUBLING = RecordCalculator.of(new Doubling());

    private static final String SLEEVE = """
            {
              "template": 1,
              "id": "card-sleeve",
              "title": "Card sleeve",
              "purpose": "Two panels and stepped pockets for cards.",
              "questions": [
                {"key": "card-width", "kind": "length", "unit": "mm", "min": "30 mm", "max": "200 mm",
                 "preset": "85.6 mm", "label": "Width of a card", "help": "The longer side."},
                {"key": "pockets", "kind": "count", "min": "0", "max": "6", "preset": "2", "label": "Pockets", "help": "In front."},
                {"key": "lining", "kind": "choice", "options": {"none": "None", "cloth": "Cloth"}, "preset": "none",
                 "label": "Lining", "help": "Inside."},
                {"key": "thumb", "kind": "flag", "preset": "yes", "label": "Thumb notch", "help": "To push cards out."}
              ],
              "values": {
                "margin": "3 mm + 1 mm",
                "width": "card-width + 2 * margin",
                "step": "12 mm"
              },
              "tells": [
                {"key": "too-many", "severity": "check", "when": "pockets > 4", "at": "pockets", "with": ["pockets", "width"],
                 "what": "{0} pockets pile up at {1}.", "why": "It doesn't close.", "next": "Take fewer."},
                {"key": "no-pocket", "severity": "stop", "when": "pockets is 0", "what": "No pocket.", "why": "A sleeve has one.",
                 "next": "Take one."}
              ],
              "answers": [
                {"key": "panel-width", "kind": "length", "unit": "mm", "step": "0.1 mm", "round": "up", "is": "width", "lead": true,
                 "label": "Width of a panel", "help": "As cut."},
                {"key": "lined", "kind": "flag", "is": "lining is not 'none'", "label": "Lined", "help": "Or not."}
              ],
              "draws": {
                "calculator": "plates",
                "questions": {
                  "plates": [
                    {"id": "back", "name": "Back", "width": "=width", "height": "90 mm"},
                    {"each": "=pockets", "id": "pocket-{nth}", "name": "Pocket {nth}", "width": "=width",
                     "height": "=60 mm - (nth - 1) * step", "turned": "=nth * 10 deg"},
                    {"when": "=lining is 'cloth'", "id": "lining", "name": "Lining", "width": "=width - 2 mm", "height": "88 mm"}
                  ]
                }
              }
            }
            """;

    private static TemplateReader.Result read(String text) {
        return TemplateReader.read(
                text,
                id -> Stream.of(PLATES, DOUBLING)
                        .filter(found -> found.declaration().id().equals(id))
                        .findFirst());
    }

    private static TextTemplate sleeve() {
        TemplateReader.Result result = read(SLEEVE);
        assertEquals(List.of(), result.remarks());
        return result.template().orElseThrow();
    }

    private static Values asked(int pockets, String lining) {
        return Values.of(Map.of("card-width", Length.ofMm(85.6), "pockets", pockets, "lining", lining, "thumb", true));
    }

    private static Outcome<Values> work(TextTemplate template, Values asked) {
        return template.work(asked, Working.NONE);
    }

    private static Item item(Outcome<Values> outcome) {
        return (Item) outcome.answers().orElseThrow().get("item").orElseThrow();
    }

    @Test
    void aTemplateAsksAndAnswersAsAnyCalculatorDoes() {
        TextTemplate sleeve = sleeve();
        assertEquals("card-sleeve", sleeve.declaration().id());
        assertEquals(
                List.of("card-width", "pockets", "lining", "thumb"),
                sleeve.declaration().questions().stream()
                        .map(question -> question.key())
                        .toList());
        assertEquals(
                30,
                sleeve.declaration().question("card-width").orElseThrow().min().orElseThrow());
        assertEquals(
                Kind.ITEM, sleeve.declaration().answer("item").orElseThrow().kind());
        assertEquals("Cloth", text(sleeve, "card-sleeve.lining.cloth"));
        assertEquals("It doesn''t close.", text(sleeve, "notice.too-many.why"), "as a pattern is written");
    }

    private static String text(TextTemplate template, String key) {
        return template.texts().find(key, Locale.ENGLISH).orElse("");
    }

    @Test
    void whatIsWorkedOutIsAnsweredAndDrawn() {
        Outcome<Values> outcome = work(sleeve(), asked(2, "none"));
        assertEquals(List.of(), outcome.notices());
        Values answers = outcome.answers().orElseThrow();
        assertEquals(93.6, ((Length) answers.get("panel-width").orElseThrow()).mm(), 1e-9); // 85.6 + 2 · 4
        assertEquals(false, answers.get("lined").orElseThrow());
        assertEquals(
                "back 93.6 x 90.0 at 0.0, pocket-1 93.6 x 60.0 at 10.0, pocket-2 93.6 x 48.0 at 20.0",
                drawn(item(outcome)));
    }

    private static String drawn(Item item) {
        return item.parts().stream()
                .map(part -> {
                    Box box = part.outline().bounds();
                    return part.id() + " " + Math.round(box.width() * 1e6) / 1e6 + " x "
                            + Math.round(box.height() * 1e6) / 1e6 + " at " + Math.round(box.minX() * 1e6) / 1e6;
                })
                .collect(Collectors.joining(", "));
    }

    @Test
    void whatIsChosenIsDrawnToo() {
        Outcome<Values> outcome = work(sleeve(), asked(1, "cloth"));
        assertEquals(
                "back 93.6 x 90.0 at 0.0, pocket-1 93.6 x 60.0 at 10.0, lining 91.6 x 88.0 at 0.0",
                drawn(item(outcome)));
        assertEquals(true, outcome.answers().orElseThrow().get("lined").orElseThrow());
    }

    @Test
    void whatIsWorkedOutIsExplainedWithItsNumbers() {
        List<String> steps = new ArrayList<>();
        TextTemplate sleeve = sleeve();
        sleeve.work(asked(2, "none"), new Working() {
            @Override
            public void step(Formula formula, Object result, Object... symbolsAndValues) {
                assertTrue(sleeve.declaration().formulas().contains(formula), formula.key());
                steps.add(formula.symbols() + " | " + List.of(symbolsAndValues) + " | " + result);
            }

            @Override
            public void source(String answer, Source source) {
                throw new AssertionError("its formulas have their source");
            }
        });
        assertEquals(
                List.of("width = card_width + 2 · margin | [card_width, 85.6 mm, margin, 4.0 mm] | 93.6 mm"), steps);
        assertEquals("Width", text(sleeve, "formula.value-width"));
        assertEquals(1, sleeve.declaration().formulas().size(), "what hangs on nothing is not shown");
        assertEquals("template-author", sleeve.declaration().sources().get(0).key());
    }

    @Test
    void aValueSaysWhereItComesFrom() {
        String was = "\"card-width + 2 * margin\"";
        TemplateReader.Result read = read(SLEEVE.replace(
                was,
                "{\"is\": " + was + ", \"kind\": \"measured\", \"source\": \"Tried on ten of the maker's cards\"}"));
        assertEquals(List.of(), read.remarks());
        TextTemplate sleeve = read.template().orElseThrow();
        Source source = sleeve.declaration().formulas().get(0).source();
        assertEquals(Source.of("card-sleeve-width", Source.Kind.MEASURED_HERE), source);
        assertEquals(List.of(source), sleeve.declaration().sources());
        assertEquals("Tried on ten of the maker''s cards", text(sleeve, "source.card-sleeve-width"));
        assertEquals(
                93.6,
                ((Length) work(sleeve, asked(1, "none"))
                                .answers()
                                .orElseThrow()
                                .get("panel-width")
                                .orElseThrow())
                        .mm(),
                1e-9);
        assertEquals(
                List.of("template-declaration 16:77"),
                all(was, "{\"is\": " + was + ", \"source\": \"A habit\", \"kind\": \"habit\"}"));
        assertEquals(List.of("template-missing 16:14"), all(was, "{\"is\": " + was + ", \"kind\": \"published\"}"));
    }

    @Test
    void itTellsWhatHoldsAndRefusesWhereItMust() {
        Notice many = work(sleeve(), asked(5, "none")).notices().get(0);
        assertEquals("too-many", many.kind().key());
        assertEquals("pockets", many.place());
        assertEquals(List.of(5.0, Length.ofMm(85.6 + 8)), many.args());
        Outcome<Values> none = work(sleeve(), asked(0, "none"));
        assertTrue(none.refused());
        assertEquals("no-pocket", none.notices().get(0).kind().key());
    }

    @Test
    void itsOwnStopComesBeforeWhatIsAskedInVain() {
        String text = asking("""
                        "doubled": {"asks": "doubling", "questions": {"of": "=card-width * pockets"}, "answers": {"twice": "length"}}
                        """);
        assertEquals(
                "no-pocket",
                work(read(text).template().orElseThrow(), asked(0, "none"))
                        .notices()
                        .get(0)
                        .kind()
                        .key());
    }

    @Test
    void whatTheDrawerRefusesIsToldInItsWords() {
        String text = SLEEVE.replace("\"=width - 2 mm\"", "\"=width - width + 3 mm\"");
        Outcome<Values> outcome = work(read(text).template().orElseThrow(), asked(1, "cloth"));
        assertTrue(outcome.refused());
        assertEquals("narrow", outcome.notices().get(0).kind().key());
        String outside = SLEEVE.replace("\"=width - 2 mm\"", "\"=width * 10\"");
        outcome = work(read(outside).template().orElseThrow(), asked(1, "cloth"));
        assertEquals(
                "[plates, plates[lining].width: 936 mm is above the most possible, 500 mm.]",
                outcome.notices().get(0).args().toString().replace('\u00a0', ' '));
    }

    @Test
    void aNumberThatLostItsUnitIsNotDrawn() {
        String text = SLEEVE.replace("\"=width - 2 mm\"", "\"=width / 1 mm\"");
        Outcome<Values> outcome = work(read(text).template().orElseThrow(), asked(1, "cloth"));
        assertTrue(outcome.refused());
        assertEquals(
                "[plates, plates[lining].width: 93.6 has no unit.]",
                outcome.notices().get(0).args().toString());
    }

    @Test
    void whatCannotBeTypedIsNoAmountToDraw() {
        assertEquals("template-gives 37:83", said("\"=width - 2 mm\"", "\"=1 / width\""));
        assertEquals("template-gives 37:83", said("\"=width - 2 mm\"", "\"=width * width * width\""));
        assertEquals("template-gives 34:32", said("\"name\": \"Back\"", "\"name\": \"Back {thumb}\""));
        assertEquals(
                "template-each-outside 32:20",
                said("\"questions\": {\n      \"plates\"", "\"questions\": { \"each\": 2,\n      \"plates\""));
    }

    private static String asking(String values) {
        return SLEEVE.replace("\"step\": \"12 mm\"", "\"step\": \"12 mm\", " + values);
    }

    @Test
    void anotherCalculatorIsAskedForAValue() {
        TextTemplate template = read(asking("""
                        "doubled": {"asks": "doubling", "questions": {"of": "=card-width"}, "answers": {"twice": "length"}},
                        "four": "2 * doubled.twice"
                        """).replace("\"is\": \"width\"", "\"is\": \"four\""))
                .template()
                .orElseThrow();
        Outcome<Values> outcome = work(template, asked(1, "none"));
        assertEquals(
                4 * 85.6,
                ((Length) outcome.answers().orElseThrow().get("panel-width").orElseThrow()).mm(),
                1e-9);
        assertEquals(
                List.of("doubled"),
                outcome.notices().stream()
                        .map(notice -> notice.kind().key() + notice.place())
                        .toList());
        assertEquals("Doubled.", text(template, "notice.doubled.what"), "told in the words of who was asked");
    }

    @Test
    void whatIsAskedInVainEndsItWithItsReason() {
        assertEquals("template-nobody-to-ask [halving]", asked("\"halving\"", "=card-width", "length"));
        assertEquals(
                "template-no-such-answer [doubling, an area, twice, twice]",
                asked("\"doubling\"", "=card-width", "area"));
        assertEquals(
                "template-asks-badly [doubling, of: 85.6 has no unit.]",
                asked("\"doubling\"", "=card-width / 1 mm", "length"));
        assertEquals("too-long [190.0 mm]", asked("\"doubling\"", "=card-width + 104.4 mm", "length"));
    }

    private static String asked(String whom, String of, String kind) {
        String text = asking("\"doubled\": {\"asks\": " + whom + ", \"questions\": {\"of\": \"" + of
                + "\"}, \"answers\": {\"twice\": \"" + kind + "\"}}");
        Notice told = work(read(text).template().orElseThrow(), asked(1, "none"))
                .notices()
                .get(0);
        Wording words = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return told.kind().key() + " "
                + told.args().stream()
                        .map(arg ->
                                arg instanceof Phrase phrase ? words.phrase(CoreTexts.TEXTS, phrase) : arg.toString())
                        .toList()
                        .toString()
                        .replace('\u00a0', ' ');
    }

    @Test
    void whatFollowsFromAnAnswerThatIsWronglyTakenIsNotToldAgain() {
        TemplateReader.Result result = read(asking("""
                "doubled": {"asks": "doubling", "questions": {"of": "=card-width"}, "answers": {"twice": "lenght"}},
                "four": "2 * doubled.twice"
                """));
        assertEquals(
                List.of("notice.template-declaration"),
                result.remarks().stream().map(Remark::key).toList());
    }

    @Test
    void withoutACalculatorThatDrawsThereIsNothing() {
        TextTemplate template =
                TemplateReader.read(SLEEVE, id -> Optional.empty()).template().orElseThrow();
        Outcome<Values> outcome = work(template, asked(1, "none"));
        assertEquals("template-nobody-to-ask", outcome.notices().get(0).kind().key());
        assertEquals(List.of("plates"), outcome.notices().get(0).args());
    }

    @Test
    void moreRowsThanAnybodyCutsAreNotDrawn() {
        String text = SLEEVE.replace("\"=pockets\"", "\"=pockets * 400\"");
        Outcome<Values> outcome = work(read(text).template().orElseThrow(), asked(2, "none"));
        assertEquals("template-too-many", outcome.notices().get(0).kind().key());
    }

    @Test
    void whatIsDividedByNothingIsTold() {
        String text = SLEEVE.replace("\"3 mm + 1 mm\"", "\"3 mm / (pockets - 2)\"");
        Outcome<Values> outcome = work(read(text).template().orElseThrow(), asked(2, "none"));
        assertEquals(
                "expression-divides-by-nothing", outcome.notices().get(0).kind().key());
    }

    /** The first thing said of a template in which something was replaced: kind, place and what it is told with. */
    private static String said(String was, String is) {
        assertTrue(SLEEVE.contains(was), was);
        TemplateReader.Result result = read(SLEEVE.replace(was, is));
        Remark remark = result.remarks().get(0);
        if (remark.stops()) {
            assertFalse(result.template().isPresent());
        }
        return remark.key().replace("notice.", "") + " " + remark.place();
    }

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

    private static List<String> all(String was, String is) {
        assertTrue(SLEEVE.contains(was), was);
        return read(SLEEVE.replace(was, is)).remarks().stream()
                .map(remark -> remark.key().replace("notice.", "") + " " + remark.place())
                .toList();
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
    void itsItemIsCalledByItsTitleOrAsItSays() {
        assertEquals("Card sleeve", text(sleeve(), "card-sleeve.answer.item"));
        TextTemplate called = read(SLEEVE.replace(
                        "\"id\": \"card-sleeve\",", "\"id\": \"card-sleeve\", \"item\": \"Sleeve\","))
                .template()
                .orElseThrow();
        assertEquals("Sleeve", text(called, "card-sleeve.answer.item"));
    }

    @Test
    void textsOfWhoIsAskedAreFoundAndOthersAreNot() {
        TextTemplate template = read(asking(
                        "\"doubled\": {\"asks\": \"doubling\", \"questions\": {\"of\": \"=card-width\"}, \"answers\": {\"twice\": \"length\"}}"))
                .template()
                .orElseThrow();
        assertEquals("Doubled.", text(template, "notice.doubled.what"));
        assertEquals("", text(template, "notice.nobody.what"));
        assertFalse(text(template, "notice.template-too-many.what").isEmpty(), "of the host");
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
}
