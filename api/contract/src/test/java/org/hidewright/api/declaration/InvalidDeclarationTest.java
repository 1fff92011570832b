package org.hidewright.api.declaration;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be a declaration is refused when the bundle starts, and the message says where and what would be right. */
class InvalidDeclarationTest {
    record NotAsked(int number) {}

    record NoKind(@Asked Instant moment) {}

    record BadDate(@Asked(example = "1 March") LocalDate day) {}

    record UnitOfMoney(@Asked(unit = "EUR") Money price) {}

    record MoneyWithoutCurrency(@Asked(example = "12") Money price) {}

    record RawList(@Asked @SuppressWarnings("rawtypes") List values) {}

    record WildList(@Asked(unit = "mm") List<? extends Length> values) {}

    record Generic<T>(@Asked T value) {}

    record ListOfLists(@Asked(unit = "mm") List<List<Length>> values) {}

    record NoUnit(@Asked Length length) {}

    record NoUnitOfSize(@Asked Size size) {}

    record WrongUnit(@Asked(unit = "deg") Length length) {}

    record UnknownUnit(@Asked(unit = "furlong") Length length) {}

    record UnitOfText(@Asked(unit = "mm") String text) {}

    record UnitOfCount(@Asked(unit = "%") int count) {}

    record LimitsOfText(@Asked(max = "3") String text) {}

    record BadLimit(@Asked(unit = "mm", min = "thin") Length length) {}

    record BadUsual(@Asked(unit = "mm", usual = "1-4 kg") Length length) {}

    record FromNowhere(
            @Asked(unit = "mm", from = "held-thing") Length length) {}

    record TextFrom(@Asked(from = "held-thing.width") String text) {}

    record StockWithoutColumn(
            @Asked(unit = "mm", stock = "leather") Length length) {}

    record PictureInWords(
            @Asked(unit = "mm", picture = "a belt") Length length) {}

    record StockOfMany(
            @Asked(unit = "mm", stock = "leather.thickness") List<Length> lengths) {}

    record Backwards(
            @Asked(unit = "mm", min = "4 mm", max = "1 mm") Length length) {}

    record PresetOptional(@Asked(preset = "1") Optional<Integer> number) {}

    record AskedPhrase(@Asked Phrase phrase) {}

    record AskedDrawing(@Asked Drawing drawing) {}

    record AskedDrawings(@Asked List<Drawing> drawings) {}

    record BadPreset(@Asked(unit = "mm", preset = "thin") Length length) {}

    record BadExample(@Asked(unit = "mm", example = "3 kg") Length length) {}

    record PresetPastLimit(
            @Asked(unit = "mm", max = "3 mm", preset = "4 mm")
            Length length) {}

    record ExampleBelowLimit(
            @Asked(unit = "mm", min = "3 mm", example = "2 mm")
            Length length) {}

    record PresetOfList(
            @Asked(unit = "mm", max = "3 mm", preset = "1 mm; 4 mm")
            List<Length> lengths) {}

    record PresetOfSize(@Asked(unit = "mm", preset = "3 mm") Size size) {}

    enum Tannage {
        VEGETABLE,
        OIL_TANNED
    }

    record PresetOfChoice(@Asked(preset = "oil") Tannage tannage) {}

    record PresetOfFlag(@Asked(preset = "perhaps") boolean lined) {}

    record PresetOfCount(@Asked(preset = "1.5") int count) {}

    record Clash(
            @Asked(preset = "1") int strapWidth,
            @Asked(preset = "1") int STRAP_WIDTH) {}

    record ClashInside(@Asked Clash clash) {}

    enum SameKeys {
        OilTanned,
        OIL_TANNED
    }

    record SameOptions(@Asked(preset = "oil-tanned") SameKeys tannage) {}

    record Endless(@Asked List<Endless> parts) {}

    record EndlessAround(@Asked EndlessVariant variant) {}

    sealed interface EndlessVariant permits EndlessOne {}

    record EndlessOne(@Asked Optional<EndlessVariant> next) implements EndlessVariant {}

    sealed interface NotRecords permits Plain {}

    static final class Plain implements NotRecords {}

    record VariantNoRecord(@Asked NotRecords variant) {}

    record NoRowId(@RowId int id, @Asked(preset = "1") int number) {}

    record RowIdTop(@RowId String id, @Asked(preset = "1") int number) {}

    record IdAsked(@Asked(preset = "a") String id) {}

    record RowWithId(@Asked(preset = "[]") List<IdAsked> rows) {}

    sealed interface IsVariants permits Is {}

    record Is(@Asked(preset = "1") int number) implements IsVariants {}

    record VariantCalledIs(@Asked IsVariants variant) {}

    static Stream<Arguments> questions() {
        return Stream.of(
                Arguments.of(NotAsked.class, "number: annotate it with @Asked"),
                Arguments.of(BadDate.class, "is no date such as 2026-03-01"),
                Arguments.of(UnitOfMoney.class, "money has no unit, but \"EUR\" is given"),
                Arguments.of(MoneyWithoutCurrency.class, "cannot be read as money"),
                Arguments.of(NoKind.class, "java.time.Instant is no kind of question or answer"),
                Arguments.of(RawList.class, "say what it holds, for example List<Length>"),
                Arguments.of(WildList.class, "say what it holds, for example List<Length>"),
                Arguments.of(Generic.class, "is no kind of question or answer"),
                Arguments.of(ListOfLists.class, "java.util.List is no kind of question or answer"),
                Arguments.of(NoUnit.class, "it has no unit; give it one, such as mm"),
                Arguments.of(NoUnitOfSize.class, "it has no unit; give it one, such as mm"),
                Arguments.of(WrongUnit.class, "\"deg\" is no unit of length"),
                Arguments.of(UnknownUnit.class, "\"furlong\" is no unit of length"),
                Arguments.of(UnitOfText.class, "text has no unit, but \"mm\" is given"),
                Arguments.of(UnitOfCount.class, "count has no unit, but \"%\" is given"),
                Arguments.of(LimitsOfText.class, "text has no limits"),
                Arguments.of(BadLimit.class, "\"thin\" cannot be read as length"),
                Arguments.of(BadUsual.class, "\"1-4 kg\" cannot be read as length"),
                Arguments.of(
                        FromNowhere.class,
                        "\"held-thing\" is no answer of a calculator, id.answer, for a single value"),
                Arguments.of(
                        TextFrom.class,
                        "\"held-thing.width\" is no answer of a calculator, id.answer, for a single value"),
                Arguments.of(
                        StockWithoutColumn.class,
                        "\"leather\" is no column of a workshop’s table, table.column, for a single value"),
                Arguments.of(PictureInWords.class, "\"a belt\" is no picture, name or name#part"),
                Arguments.of(
                        StockOfMany.class,
                        "\"leather.thickness\" is no column of a workshop’s table, table.column, for a single value"),
                Arguments.of(Backwards.class, "min 4 mm is above max 1 mm"),
                Arguments.of(PresetOptional.class, "with a preset it is never absent: leave Optional out"),
                Arguments.of(AskedPhrase.class, "a PHRASE can only be an answer"),
                Arguments.of(AskedDrawing.class, "a DRAWING can only be an answer"),
                Arguments.of(AskedDrawings.class, "a DRAWING can only be an answer"),
                Arguments.of(BadPreset.class, "\"thin\" cannot be read as length"),
                Arguments.of(BadExample.class, "\"3 kg\" cannot be read as length"),
                Arguments.of(PresetPastLimit.class, "\"4 mm\" is above max 3 mm"),
                Arguments.of(ExampleBelowLimit.class, "\"2 mm\" is below min 3 mm"),
                Arguments.of(PresetOfList.class, "\"1 mm; 4 mm\" is above max 3 mm"),
                Arguments.of(PresetOfSize.class, "\"3 mm\" cannot be read as size"),
                Arguments.of(PresetOfChoice.class, "\"oil\" is none of vegetable, oil-tanned"),
                Arguments.of(PresetOfFlag.class, "\"perhaps\" is neither yes nor no"),
                Arguments.of(PresetOfCount.class, "\"1.5\" is not a whole number"),
                Arguments.of(Clash.class, "two questions have the key strap-width"),
                Arguments.of(ClashInside.class, "two questions have the key strap-width"),
                Arguments.of(SameOptions.class, "two constants have the key oil-tanned"),
                Arguments.of(Endless.class, "holds itself"),
                Arguments.of(EndlessAround.class, "holds itself"),
                Arguments.of(VariantNoRecord.class, "variant Plain must be a record"),
                Arguments.of(NoRowId.class, "a row's id is a String"),
                Arguments.of(RowWithId.class, "the key id is kept for the row's id"),
                Arguments.of(VariantCalledIs.class, "the key is is kept for saying which variant is chosen"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("questions")
    void aQuestionThatCannotBeIsRefused(Class<?> record, String said) {
        InvalidDeclaration refused =
                assertThrows(InvalidDeclaration.class, () -> QuestionReader.questions(record, "x"));
        assertTrue(refused.getMessage().contains(said), refused.getMessage());
        assertTrue(
                refused.getMessage().startsWith("org.hidewright.api.declaration.InvalidDeclarationTest$"),
                refused.getMessage());
    }

    record NotAnswered(int number) {}

    record AnswerVariants(@Answered NotRecords variant) {}

    record AnswerUnit(@Answered Length length) {}

    record BadStep(@Answered(unit = "mm", step = "fine") Length length) {}

    record StepOfText(@Answered(step = "1") String text) {}

    record NoUnitToKeep(@Answered(keepUnit = true) double factor) {}

    record FileOfNumber(@Answered(asFile = true) int count) {}

    record StockOfNumber(@Answered(stock = "hides") int count) {}

    record OneOfStock(@Answered int count) {}

    record StockOfColumn(@Answered(stock = "hides.outline") List<OneOfStock> rows) {}

    record NoStep(@Answered(unit = "mm", step = "0 mm") Length length) {}

    record AnswerClash(@Answered int strapWidth, @Answered int STRAP_WIDTH) {}

    record EndlessRows(@Answered List<EndlessRows> rows) {}

    static Stream<Arguments> answers() {
        return Stream.of(
                Arguments.of(NotAnswered.class, "number: annotate it with @Answered"),
                Arguments.of(AnswerVariants.class, "answers have no variants; use a record"),
                Arguments.of(AnswerUnit.class, "it has no unit; give it one, such as mm"),
                Arguments.of(BadStep.class, "\"fine\" cannot be read as length"),
                Arguments.of(StepOfText.class, "TEXT has no step"),
                Arguments.of(NoUnitToKeep.class, "there is no unit to keep; give it one"),
                Arguments.of(FileOfNumber.class, "only a drawing is written as a file"),
                Arguments.of(StockOfNumber.class, "only rows are put away into a table"),
                Arguments.of(StockOfColumn.class, "must be lower-case words joined by hyphens"),
                Arguments.of(NoStep.class, "a step is above nothing"),
                Arguments.of(AnswerClash.class, "two answers have the key strap-width"),
                Arguments.of(EndlessRows.class, "holds itself"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("answers")
    void anAnswerThatCannotBeIsRefused(Class<?> record, String said) {
        InvalidDeclaration refused = assertThrows(InvalidDeclaration.class, () -> AnswerReader.answers(record, "x"));
        assertTrue(refused.getMessage().contains(said), refused.getMessage());
    }

    record One(@Asked(preset = "1") int number) {}

    record Result(@Answered(by = "nowhere") int number) {}

    record Good(@Answered int number) {}

    abstract static class Base<Q extends Record, A extends Record> implements Calculator<Q, A> {
        @Override
        public Outcome<A> calculate(Q questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    static final class NoId implements Calculator<One, Good> {
        @Override
        public Outcome<Good> calculate(One questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    @Calculates("Strap_Width")
    static final class BadId implements Calculator<One, Good> {
        @Override
        public Outcome<Good> calculate(One questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    @Calculates("inherits")
    static final class Inherits extends Base<One, Good> {}

    @Calculates("sourceless")
    static final class Sourceless implements Calculator<One, Result> {
        @Override
        public Outcome<Result> calculate(One questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    @Calculates(value = "versionless", version = 0)
    static final class Versionless implements Calculator<One, Good> {
        @Override
        public Outcome<Good> calculate(One questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    record Drawn(@Asked(unit = "mm", picture = "belt#size") Length length) {}

    @Calculates("drawn")
    static final class Undrawn implements Calculator<Drawn, Good> {
        @Override
        public Outcome<Good> calculate(Drawn questions, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    static Stream<Arguments> calculators() {
        return Stream.of(
                Arguments.of(
                        new Undrawn(),
                        "question length is drawn by \"belt\", and there is no file pictures/belt.json beside it"),
                Arguments.of(new NoId(), "annotate it with @Calculates(\"its-id\")"),
                Arguments.of(new BadId(), "the id \"Strap_Width\" must be lower-case words joined by hyphens"),
                Arguments.of(new Inherits(), "implement Calculator<Questions, Answers> directly"),
                Arguments.of(
                        new Sourceless(),
                        "the answer number has by = \"nowhere\", and no formula or source is called so. Write the key of"
                                + " one that is listed in formulas() or sources() (there is none yet), or list the one"
                                + " you mean"),
                Arguments.of(new Versionless(), "a version is 1 or more"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("calculators")
    void aCalculatorThatCannotBeIsRefused(Calculator<?, ?> calculator, String said) {
        InvalidDeclaration refused = assertThrows(InvalidDeclaration.class, () -> RecordCalculator.of(calculator));
        assertTrue(refused.getMessage().contains(said), refused.getMessage());
        assertTrue(refused.getMessage().startsWith(calculator.getClass().getName()), refused.getMessage());
    }

    @Test
    void theSameRecordMayStandTwiceSideBySide() {
        record Edge(@Asked(preset = "1") int number) {}
        record Both(
                @Asked Edge left,
                @Asked Edge right,
                @Asked(preset = "[]") List<Edge> more) {}
        assertTrue(QuestionReader.questions(Both.class, "x").size() == 3);
    }
}
