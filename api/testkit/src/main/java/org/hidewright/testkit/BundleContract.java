package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.item.Item;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/**
 * What the host expects of every bundle: sound declarations, a text for everything that is shown, and no text that nothing
 * shows; calculators that answer whatever is usual, the same today and tomorrow, here and elsewhere, and quickly; templates whose
 * parts can be cut and sewn. What is wrong is told in sentences that name the calculator and say what to do.
 *
 * <p>Extend it in a test class of your own; it reads the sources in {@code src/main/java} of the folder the build runs in, to see
 * what notices are raised with. Calculators are asked at their presets and examples, with one question at a time changed, and in
 * drawn sets, the same every time: inside usual limits (near the example where a question has none), and anywhere inside the hard
 * ones.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
public abstract class BundleContract {
    /** Whoever mends these sees the next ones then. */
    private static final int MOST_TOLD = 20;

    private final Bundle bundle;
    private final Bench bench = new Bench();
    private final List<Trials> trials = new ArrayList<>();

    /** @param one any class of the package the calculators and their {@code messages.properties} are in */
    protected BundleContract(Class<?> one) {
        this(Bundle.beside(one));
    }

    BundleContract(Bundle bundle) {
        this.bundle = bundle;
    }

    /** Keys of texts that are shown by other means than a calculator, such as those of sections of a job card. */
    protected Set<String> otherTexts() {
        return Set.of();
    }

    /**
     * Keys of refusals that come of answers that do not go together though each of them is usual, such as a strap that is too short
     * for its holes, or a grade that a system of numbers does not have. Any other refusal inside usual limits is a fault. A pad that
     * is too narrow for a wide strap, told by {@code NoticeKind.stop("no-room")}, is named by {@code return Set.of("no-room");}.
     */
    protected Set<String> refusedTogether() {
        return Set.of();
    }

    /**
     * What a question for an item is answered with: two panels, {@code front} and {@code back}, sewn along their lines {@code rim} by
     * the seam {@code side}. Give another where your examples name other parts.
     */
    protected Item itemAsked() {
        return TwoPanels.item();
    }

    @Test
    void thereIsACalculator() {
        assertFalse(
                bundle.calculators().isEmpty() && bundle.undeclared().isEmpty(),
                "No class beside the one that is named has @Calculates. Annotate it with the id of the calculator.");
    }

    @Test
    void everyCalculatorCanBeDeclared() {
        none(bundle.undeclared());
    }

    @Test
    void everyQuestionCanBeAnsweredFromItsPresetOrExample() {
        none(new DeclarationChecks(bundle).withoutExample());
    }

    @Test
    void everyNumberNamesAFormulaOrSourceThatIsDeclared() {
        none(new DeclarationChecks(bundle).withoutSource());
    }

    @Test
    void everyMeasureHasLimitsAndUsualOnesLieInside() {
        none(new DeclarationChecks(bundle).limits());
    }

    @Test
    void everythingShownHasItsText() {
        none(ofTexts(TextChecks::missing));
    }

    @Test
    void everyTextIsShownSomewhere() {
        none(ofTexts(TextChecks::idle));
    }

    @Test
    void noKeyIsWrittenTwice() {
        none(ofTexts(TextChecks::twice));
    }

    @Test
    void fieldsThatShareALabelAskForOneThing() {
        none(ofTexts(TextChecks::sharedByOthers));
    }

    @Test
    void noTextHasAStraightApostropheWhichWouldHideItsPlaces() {
        none(ofTexts(TextChecks::straightApostrophes));
    }

    @Test
    void aNoticeCallsOnlyForWhatItIsRaisedWith() {
        none(ofTexts(TextChecks::unfilled));
    }

    @Test
    void everyDeclaredNoticeIsRaisedSomewhere() {
        none(ofTexts(TextChecks::neverRaised));
    }

    @Test
    void headingsOfColumnsAreShort() {
        none(ofTexts(TextChecks::longHeadings));
    }

    @Test
    void thePresetsAndExamplesTogetherAreAnswered() {
        none(ofEach(Answering::example));
    }

    @Test
    void whateverIsAskedIsAnsweredWholeOrRefusedInWords() {
        none(ofEach(Answering::all));
    }

    @Test
    void nothingUsualIsRefusedButWhatDoesNotGoTogether() {
        none(Refusing.wrong(trials(), refusedTogether()));
    }

    @Test
    void theSameQuestionsHaveTheSameAnswers() {
        none(ofEachType(SameAnswers::again));
    }

    @Test
    void noAnswerHangsOnLanguageTimeZoneOrThread() {
        none(ofEachType(SameAnswers::elsewhere));
    }

    @Test
    void noCodeReadsTheClockTakesChancesOrReachesOutside() {
        none(ofEachType((calculator, type) -> PureCode.wrong(calculator.id(), type)));
    }

    @Test
    void aSmallChangeOfAMeasureMakesNoLeap() {
        none(ofEach(SoundRanges::wrong));
    }

    @Test
    void noAnswerKeepsAMakerWaiting() {
        none(ofEach(Pace::wrong));
    }

    @Test
    void partsCanBeCutAndSewn() {
        none(ofEach(SoundParts::wrong));
    }

    /** Not while a calculator cannot be declared: its texts would belong to nothing. */
    private Collection<String> ofTexts(Function<TextChecks, Collection<String>> check) {
        return bundle.undeclared().isEmpty() ? check.apply(new TextChecks(bundle, otherTexts())) : List.of();
    }

    /** Asked once for all tests of a bundle. */
    private List<Trials> trials() {
        if (trials.isEmpty()) {
            for (RecordCalculator calculator : bundle.calculators()) {
                trials.add(Trials.of(calculator, bench, itemAsked()));
            }
        }
        return trials;
    }

    private List<String> ofEach(Function<Trials, List<String>> check) {
        return trials().stream().map(check).flatMap(List::stream).toList();
    }

    private List<String> ofEachType(BiFunction<Trials, Class<?>, List<String>> check) {
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < bundle.types().size(); i++) {
            wrong.addAll(check.apply(trials().get(i), bundle.types().get(i)));
        }
        return wrong;
    }

    private static void none(Collection<String> wrong) {
        if (!wrong.isEmpty()) {
            List<String> told = wrong.stream().limit(MOST_TOLD).toList();
            int more = wrong.size() - told.size();
            fail(String.join("\n", told) + (more > 0 ? "\nand " + more + " more" : ""));
        }
    }
}
