package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hidewright.api.calculator.Calculator;
import org.hidewright.testkit.faults.Declared;
import org.hidewright.testkit.faults.Strip;
import org.junit.jupiter.api.Test;

/** What is left out of a declaration or its texts, or contradicts itself there, is told with what to do. */
class DeclarationFaultsTest {
    private static final String TEXTS = Faulty.texts(new Strip());

    private static Faulty without(String key) {
        assertTrue(TEXTS.contains(key + " ="), key);
        return Faulty.worded(new Strip(), TEXTS.replace(key + " =", "#"));
    }

    private static Faulty with(String line) {
        return Faulty.worded(new Strip(), TEXTS + line + "\n");
    }

    @Test
    void aQuestionWithoutLabel() {
        without("strip.width")
                .fails(
                        BundleContract::everythingShownHasItsText,
                        "strip / width: the text strip.width is missing. Write it in messages.properties.");
    }

    @Test
    void aQuestionWithoutHelp() {
        without("strip.length.help")
                .fails(
                        BundleContract::everythingShownHasItsText,
                        "strip / length: the text strip.length.help is missing. Write it");
    }

    @Test
    void aRefusalWithoutWhatToDo() {
        without("notice.too-long.next")
                .fails(BundleContract::everythingShownHasItsText, "strip: the text notice.too-long.next is missing.");
    }

    @Test
    void aTextThatNothingShows() {
        with("strip.colour = Colour")
                .fails(BundleContract::everyTextIsShownSomewhere, "strip.colour is shown nowhere. Take it out");
    }

    @Test
    void aTextThatStandsTwice() {
        with("strip.width = Breadth")
                .fails(BundleContract::noKeyIsWrittenTwice, "strip.width stands more than once", "Keep one.");
    }

    @Test
    void aPlaceThatNothingFills() {
        with("strip.width = Width {0}")
                .fails(
                        BundleContract::aNoticeCallsOnlyForWhatItIsRaisedWith,
                        "strip.width has a place that nothing fills");
        with("notice.too-long.why = {1} is longer")
                .fails(
                        BundleContract::aNoticeCallsOnlyForWhatItIsRaisedWith,
                        "notice.too-long.why calls for 2 and is raised with 1. Give what it calls for");
    }

    @Test
    void anApostropheThatHidesPlaces() {
        with("strip.purpose = The strip's leather")
                .fails(
                        BundleContract::noTextHasAStraightApostropheWhichWouldHideItsPlaces,
                        "strip.purpose = The strip's leather: a straight apostrophe",
                        "Write ’.");
    }

    @Test
    void aQuestionWithNeitherPresetNorExample() {
        Faulty.of(new Declared.NoExample())
                .fails(
                        BundleContract::everyQuestionCanBeAnsweredFromItsPresetOrExample,
                        "no-example: the question width has neither preset nor example. Give it");
    }

    @Test
    void aMeasureWithoutLimits() {
        Faulty.of(new Declared.NoLimits())
                .fails(
                        BundleContract::everyMeasureHasLimitsAndUsualOnesLieInside,
                        "no-limits: the question width has no lower limit. Say min and max");
    }

    @Test
    void usualLimitsOutsideTheHardOnes() {
        Faulty.of(new Declared.UsualOutside())
                .fails(
                        BundleContract::everyMeasureHasLimitsAndUsualOnesLieInside,
                        "usual-outside: the question width has usual limits, 10.0 to 60.0",
                        "inside min and max");
    }

    @Test
    void aPresetOutsideTheUsualLimits() {
        Faulty.of(new Declared.UnusualPreset())
                .fails(
                        BundleContract::everyMeasureHasLimitsAndUsualOnesLieInside,
                        "unusual-preset: the question width is preset to 90 mm, outside its own usual limits",
                        "mend one of them");
    }

    @Test
    void aPresetOutsideTheHardLimits() {
        notDeclared(new Declared.PresetOutside(), "component width: \"90 mm\" is above max 20 mm");
    }

    @Test
    void twoQuestionsWithOneKey() {
        notDeclared(new Declared.KeyTwice(), "two questions have the key width");
    }

    /** All of them at once, with what to write; of its texts nothing is told before. */
    @Test
    void numbersThatNameNoFormulaOrSource() {
        notDeclared(
                new Declared.WrongSource(),
                "the answer width has by = \"breadth\", and no formula or source is called so; the answer half has by ="
                        + " \"strip-are\", and no formula or source is called so. Write the key of one that is listed in"
                        + " formulas() or sources() (" + Strip.AREA.key() + ", "
                        + Strip.AREA.source().key() + "), or list the one you mean.");
        BundleContract contract = Faulty.worded(new Declared.WrongSource(), "wrong-source.title = Wrong\n");
        assertDoesNotThrow(contract::everyTextIsShownSomewhere);
        assertDoesNotThrow(contract::thereIsACalculator);
    }

    /** The host leaves such a calculator out, so that there is no contract to hold it to. */
    private static void notDeclared(Calculator<?, ?> calculator, String said) {
        Faulty.worded(calculator, "")
                .fails(
                        BundleContract::everyCalculatorCanBeDeclared,
                        said,
                        calculator.getClass().getSimpleName());
    }

    @Test
    void anExampleThatLeavesAQuestionOpen() {
        Faulty.of(new Declared.OddExample())
                .fails(
                        BundleContract::thePresetsAndExamplesTogetherAreAnswered,
                        "odd-example: an example leaves length open, which has no preset",
                        "say it there");
    }

    @Test
    void aNumberFromNowhere() {
        Faulty.of(new Declared.NoSource())
                .fails(
                        BundleContract::everyNumberNamesAFormulaOrSourceThatIsDeclared,
                        "no-source: the answer width names no formula or source. Say by =");
    }
}
