package org.hidewright.core.proof;

import static org.hidewright.core.template.Sleeve.DOUBLING;
import static org.hidewright.core.template.Sleeve.PLATES;
import static org.hidewright.core.template.Sleeve.SLEEVE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Conditions of a template that cannot turn are found, and those that turn at one answer alone are left alone. */
class ConditionsProofTest {
    private static final Wording WORDING = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    private static final String STOP = "\"when\": \"pockets is 0\"";
    private static final String THUMB = "{\"key\": \"thumb\",";

    private static List<Remark> found(String text) {
        Surroundings beside = new Surroundings(
                id -> Stream.of(PLATES, DOUBLING)
                        .filter(other -> other.declaration().id().equals(id))
                        .findFirst(),
                Tables.of(List.of()));
        Proof proof = TemplateProof.of(text, "card-sleeve", beside, WORDING);
        assertTrue(proof.asked() > 100, "it can be read, and is asked");
        return proof.remarks().stream()
                .filter(remark -> List.of("notice.proof-never-told", "notice.proof-always-told")
                        .contains(remark.key()))
                .toList();
    }

    private static List<String> of(String when) {
        return of(SLEEVE, when);
    }

    private static List<String> of(String text, String when) {
        assertTrue(text.contains(STOP), "the stop is there");
        return found(text.replace(STOP, "\"when\": \"" + when + "\"")).stream()
                .map(remark -> remark.key().replace("notice.proof-", ""))
                .toList();
    }

    private static String with(String question, String values) {
        return SLEEVE.replace(THUMB, question + THUMB).replace("\"step\": \"12 mm\"", "\"step\": \"12 mm\"" + values);
    }

    @Test
    void whatIsToldNamesTheStopItsConditionAndTheLimits() {
        Remark never =
                found(SLEEVE.replace(STOP, "\"when\": \"width > 500 mm\"")).get(0);
        assertEquals("“no-pocket” is never told: its condition “width > 500 mm” is never met.", WORDING.what(never));
        assertEquals(
                "It was asked over all the limits and at their corners (card-width 30 mm – 200 mm).",
                WORDING.why(never));
        assertTrue(WORDING.next(never).startsWith("Change the condition, or the limits, or leave it out."));
        assertTrue(SLEEVE.lines().toList().get(never.place().line() - 1).contains("\"no-pocket\""));
        Remark always = found(SLEEVE.replace(STOP, "\"when\": \"lining is 'none' or lining is 'cloth' or thumb\""))
                .get(0);
        assertEquals(
                "It was asked over all the limits and at their corners (lining none | cloth; thumb yes | no).",
                WORDING.why(always));
    }

    @Test
    void whatIsToldWhateverIsAnsweredIsFoundUnlessThatIsMeant() {
        assertEquals(List.of("always-told"), of("card-width < 200.1 mm"));
        assertEquals(List.of("always-told"), of("yes"), "nothing can be made of what always stops");
        assertEquals(List.of(), of(SLEEVE.replace("\"when\": \"pockets > 4\"", "\"when\": \"yes\""), "pockets is 0"));
    }

    /** 208 mm is the widest panel: only the upper end of one question comes to it, and so for the others. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "width >= 208 mm",
                "width is 208 mm and pockets is 6 and not thumb and lining is 'cloth'",
                "card-width is 61.75 mm",
                "card-width is not 61.75 mm",
                "card-width > 61.7 mm and card-width < 61.8 mm",
                "pockets is 5 and lining is 'cloth'"
            })
    void whatTurnsAtOneAnswerAloneIsLeftAlone(String when) {
        assertEquals(List.of(), of(when));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "width > 208 mm",
                "width < 38 mm",
                "card-width > 30 cm",
                "pockets > 6",
                "pockets is 2.5",
                "lining is 'none' and lining is 'cloth'",
                "thumb and not thumb"
            })
    void whatIsMetByNoAnswersIsFound(String when) {
        assertEquals(List.of("never-told"), of(when));
    }

    /** A word that somebody types can be any. */
    @Test
    void aWordThatIsTypedFreelyIsTriedAsItIsWritten() {
        String text = with(
                "{\"key\": \"mark\", \"kind\": \"text\", \"preset\": \"a\", \"label\": \"Mark\", \"help\": \"Stamped.\"}, ",
                "");
        assertEquals(List.of(), of(text, "mark is 'z'"));
        assertEquals(List.of(), of(text, "mark is not 'a'"));
        assertEquals(List.of("never-told"), of(text, "mark is 'a' and mark is 'z'"));
    }

    @Test
    void whatAnotherStopAlwaysComesBeforeIsFound() {
        String before =
                "{\"key\": \"too-wide\", \"severity\": \"stop\", \"when\": \"card-width > 100 mm\", \"what\": \"Too wide.\","
                        + " \"why\": \"So it is.\", \"next\": \"Narrower.\"}, {\"key\": \"no-pocket\"";
        String text = SLEEVE.replace("{\"key\": \"no-pocket\"", before);
        assertEquals(List.of("never-told"), of(text, "width > 150 mm"));
        assertEquals(List.of(), of(text, "width > 106 mm"));
    }

    @Test
    void whatHangsOnTheAnswerOfAnotherIsFoundToo() {
        String text = with(
                "",
                ", \"twice\": {\"asks\": \"doubling\", \"questions\": {\"of\": \"=card-width\"},"
                        + " \"answers\": {\"twice\": \"length\"}}");
        assertEquals(List.of("never-told"), of(text, "twice.twice > 301 mm"));
        assertEquals(List.of(), of(text, "twice.twice > 200 mm"));
    }
}
