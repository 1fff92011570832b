package org.hidewright.core.template;

import static org.hidewright.core.template.Sleeve.SLEEVE;
import static org.hidewright.core.template.Sleeve.all;
import static org.hidewright.core.template.Sleeve.asked;
import static org.hidewright.core.template.Sleeve.asking;
import static org.hidewright.core.template.Sleeve.item;
import static org.hidewright.core.template.Sleeve.read;
import static org.hidewright.core.template.Sleeve.said;
import static org.hidewright.core.template.Sleeve.sleeve;
import static org.hidewright.core.template.Sleeve.work;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

/** A template that is a text asks, works out, tells, answers and draws as any calculator does. */
class TextTemplateTest {
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
        assertEquals("template-nobody-to-ask [halving]", answerOf("\"halving\"", "=card-width", "length"));
        assertEquals(
                "template-no-such-answer [doubling, an area, twice, twice]",
                answerOf("\"doubling\"", "=card-width", "area"));
        assertEquals(
                "template-asks-badly [doubling, of: 85.6 has no unit.]",
                answerOf("\"doubling\"", "=card-width / 1 mm", "length"));
        assertEquals("too-long [190.0 mm]", answerOf("\"doubling\"", "=card-width + 104.4 mm", "length"));
    }

    /** How it was worked out there, under which name it is taken here, and what it stands on: in the words of who was asked. */
    @Test
    void whatIsTakenFromAnotherCalculatorSaysWhereItComesFrom() {
        TextTemplate template = read(asking("""
                        "doubled": {"asks": "doubling", "questions": {"of": "=card-width"}, "answers": {"twice": "length"}},
                        "four": "2 * doubled.twice"
                        """).replace("\"is\": \"width\"", "\"is\": \"doubled.twice\""))
                .template()
                .orElseThrow();
        List<String> told = new ArrayList<>();
        template.work(asked(1, "none"), new Working() {
            @Override
            public void step(Formula formula, Object result, Object... symbolsAndValues) {
                told.add(String.join(
                        " | ",
                        text(template, "formula." + formula.key()),
                        formula.symbols(),
                        List.of(symbolsAndValues) + " " + result,
                        text(template, "source." + formula.source().key())));
            }

            @Override
            public void source(String answer, Source source) {
                told.add(answer + " stands on " + source);
            }
        });
        assertEquals(
                List.of(
                        "Doubling: Twice the length | L = 2 · l | [l, 85.6 mm] 171.2 mm | Two is two",
                        "Doubling: Twice as long | doubled_twice = twice | [] 171.2 mm | Two is two",
                        "Four | four = 2 · doubled_twice | [doubled_twice, 171.2 mm] 342.4 mm"
                                + " | As the author of the template wrote it",
                        "panel-width stands on DEFINITION doubling:two"),
                told.subList(1, told.size()));
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

    private static String answerOf(String whom, String of, String kind) {
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
}
