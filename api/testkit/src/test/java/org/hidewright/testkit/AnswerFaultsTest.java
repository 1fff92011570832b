package org.hidewright.testkit;

import org.hidewright.api.calculator.Calculator;
import org.hidewright.testkit.faults.Answering;
import org.junit.jupiter.api.Test;

/** An answer that is none, and what is told beside it and was never declared. */
class AnswerFaultsTest {
    private static void told(Calculator<?, ?> calculator, String... said) {
        Faulty.of(calculator).fails(BundleContract::whateverIsAskedIsAnsweredWholeOrRefusedInWords, said);
    }

    @Test
    void anAnswerThatIsNoNumber() {
        told(
                new Answering.NotANumber(),
                "not-a-number: the answer share is NaN, which is no number; look for what is divided by nothing",
                "asked with {width=60.0 mm");
    }

    @Test
    void anAnswerWithoutEnd() {
        told(new Answering.Endless(), "endless: the answer share is Infinity, which is no number");
    }

    @Test
    void anAnswerThatIsMissing() {
        told(new Answering.Missing(), "missing: the answer area is missing", "Give it, or declare it Optional.");
    }

    @Test
    void noOutcome() {
        told(new Answering.NoOutcome(), "no-outcome: breaks with", "calculate gave null where an outcome belongs");
    }

    @Test
    void anExceptionForSomeAnswers() {
        told(
                new Answering.Breaks(),
                "breaks: breaks with java.lang.IllegalStateException: too wide in org.hidewright.testkit.faults.Answering$Breaks",
                "asked with {width=60.0 mm",
                "Refuse in words what cannot be answered");
    }

    @Test
    void aLoopWithoutEnd() {
        told(
                new Answering.NeverEnds(),
                "never-ends: no answer came within 5 seconds. The host waits no longer",
                "look for a loop without end");
    }

    @Test
    void aRefusalThatIsNotDeclared() {
        told(
                new Answering.SecretRefusal(),
                "secret-refusal: the notice “too-long” is raised and not declared",
                "list it in notices()");
    }

    @Test
    void aFormulaThatIsNotDeclared() {
        told(
                new Answering.SecretFormula(),
                "secret-formula: the formula “strip-area: A = w · l” is worked by and not declared; list it in formulas()");
    }

    @Test
    void aSymbolThatItsFormulaDoesNotHave() {
        told(
                new Answering.SecretSymbol(),
                "secret-symbol: the symbol q is given a value and does not stand in “strip-area: A = w · l”",
                "write it into the formula");
    }

    @Test
    void aSourceThatIsNotDeclared() {
        told(
                new Answering.SecretSource(),
                "secret-source: the answer area stands on the source hearsay, which is not declared; list it in sources()");
    }

    @Test
    void aPhraseThatIsNotDeclared() {
        told(
                new Answering.SecretPhrase(),
                "secret-phrase: the phrase “wide-enough” is answered and not declared; list it in phrases()");
    }

    @Test
    void aNoticeFilledWithAnObjectTheHostHasNoWordsFor() {
        told(
                new Answering.OwnWords(),
                "own-words: the notice “own-words” is filled with something a java.lang.Object",
                "give a quantity, a number, an enum constant, a phrase or a text");
    }

    @Test
    void aTextThatNoPageHasRoomFor() {
        told(
                new Answering.LongWinded(),
                "long-winded: the answer told is a text of 5000 characters; no page has room for more than 4000");
    }

    @Test
    void aNoticeThatIsNeverRaised() {
        Faulty.of(new Answering.NeverRaised())
                .fails(
                        BundleContract::everyDeclaredNoticeIsRaisedSomewhere,
                        "forgotten: the notice is declared and raised nowhere. Raise it, or take it out of notices().");
    }
}
