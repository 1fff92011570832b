package org.hidewright.api.declaration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

class RecordCalculatorTest {
    private static final Source HABIT = Source.of("habit", Source.Kind.COMMON_PRACTICE);
    private static final Source TABLE = Source.of("table", Source.Kind.PUBLISHED);
    private static final Formula TWICE = Formula.of("twice", "L = 2 · t", HABIT);

    public enum Tannage {
        VEGETABLE,
        OIL_TANNED
    }

    public sealed interface Core permits RoundBar, FlatRing {}

    public record RoundBar(
            @Asked(unit = "mm", example = "6 mm") Length diameter,
            @Asked Optional<Tannage> cover) implements Core {}

    public record FlatRing(@Asked(preset = "no") boolean stuck) implements Core {}

    public record Layer(
            @RowId String id,
            @Asked(unit = "oz", example = "2 oz") Length thickness,
            @Asked List<Tannage> tannages) {}

    public record Section(@RowId String id, @Asked Core core) {}

    public record Edge(
            @Asked Inner inner, @Asked(preset = "1") int passes) {}

    public record Inner(
            @Asked(unit = "mm", preset = "1 x 2 mm") Size window) {}

    public record Asks(
            @Asked(unit = "oz", min = "1/64 in", max = "12 mm", usual = "1-4 mm", example = "3-4 oz")
            Length insideThickness,

            @Asked(preset = "oil-tanned") Tannage tannage,
            @Asked Optional<String> note,
            @Asked(unit = "%", preset = "35 %") double share,
            @Asked Core core,
            @Asked List<Core> cores,
            @Asked List<Layer> layers,
            @Asked Edge edge,
            @Asked(unit = "mm") Optional<List<Length>> marks) {}

    public record Row(
            @RowId String id,
            @Answered(unit = "mm") Length at,
            @Answered Optional<Tannage> tannage) {}

    public record Gives(
            @Answered(unit = "mm", step = "1/64 in", round = Rounding.DOWN, by = "twice", lead = true)
            Length cutLength,

            @Answered(by = "table") Tannage tannage,
            @Answered List<Row> rows,
            @Answered Optional<String> note,
            @Answered List<Tannage> tannages,
            @Answered boolean any) {}

    @Calculates(value = "fold-2", version = 3)
    public static final class Fold implements Calculator<Asks, Gives> {
        final List<Asks> asked = new ArrayList<>();

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            asked.add(asks);
            return Outcome.of(new Gives(
                    asks.insideThickness().times(2),
                    asks.tannage(),
                    List.of(
                            new Row("a", Length.ofMm(1), Optional.of(Tannage.OIL_TANNED)),
                            new Row("b", Length.ZERO, Optional.empty())),
                    asks.note(),
                    List.of(Tannage.OIL_TANNED),
                    true));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(TWICE);
        }

        @Override
        public List<Source> sources() {
            return List.of(TABLE, HABIT);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(NoticeKind.check("thick"));
        }

        @Override
        public List<String> phrases() {
            return List.of("said");
        }
    }

    private final Fold fold = new Fold();
    private final RecordCalculator calculator = RecordCalculator.of(fold);
    private final Declaration declaration = calculator.declaration();

    @Test
    void idVersionAndWhatItListsComeFromTheCalculator() {
        assertEquals("fold-2", declaration.id());
        assertEquals(3, declaration.version());
        assertEquals("fold-2.title", declaration.titleKey());
        assertEquals("fold-2.purpose", declaration.purposeKey());
        assertEquals(List.of(TWICE), declaration.formulas());
        assertEquals(List.of(HABIT, TABLE), declaration.sources());
        assertEquals(List.of("said"), declaration.phrases());
        assertEquals(1, declaration.notices().size());
    }

    @Test
    void aQuestionHasItsKeyKindUnitLimitsAndExample() {
        Question thickness = declaration.question("inside-thickness").orElseThrow();
        assertEquals("fold-2.inside-thickness", thickness.labelKey());
        assertEquals("fold-2.inside-thickness.help", thickness.helpKey());
        assertEquals(Kind.LENGTH, thickness.kind());
        assertEquals(Kind.LENGTH, thickness.itemKind());
        assertEquals(Optional.of(Units.OUNCE), thickness.unit());
        assertEquals(25.4 / 64, thickness.min().orElseThrow(), 1e-15);
        assertEquals(OptionalDouble.of(12), thickness.max());
        assertEquals(Optional.of(Range.between(1, 4)), thickness.usual());
        assertEquals(Optional.of("3-4 oz"), thickness.example());
        assertEquals(Optional.empty(), thickness.preset());
        assertEquals("inside-thickness (LENGTH)", thickness.toString());
        assertEquals(Optional.empty(), declaration.question("thickness"));
    }

    @Test
    void aPresetIsAnExampleToo() {
        Question share = declaration.question("share").orElseThrow();
        assertEquals(Optional.of("35 %"), share.preset());
        assertEquals(Optional.of("35 %"), share.example());
        assertEquals(Optional.of(Units.PERCENT), share.unit());
        assertEquals(OptionalDouble.empty(), share.min());
        assertEquals(Optional.empty(), share.usual());
    }

    @Test
    void choicesVariantsRowsAndGroupsHaveWhatIsInThem() {
        Question tannage = declaration.question("tannage").orElseThrow();
        assertEquals(
                List.of("vegetable tannage.vegetable", "oil-tanned tannage.oil-tanned"),
                tannage.options().stream()
                        .map(option -> option.key() + " " + option.labelKey())
                        .toList());
        Question core = declaration.question("core").orElseThrow();
        assertEquals(Kind.VARIANTS, core.kind());
        assertEquals(
                List.of("round-bar core.round-bar", "flat-ring core.flat-ring"),
                core.variants().stream()
                        .map(variant -> variant.key() + " " + variant.labelKey())
                        .toList());
        assertEquals(
                "round-bar.diameter", core.variants().get(0).questions().get(0).labelKey());
        assertEquals(List.of(), core.questions());
        Question cores = declaration.question("cores").orElseThrow();
        assertEquals(Kind.ROWS, cores.kind());
        assertEquals(2, cores.variants().size());
        Question layers = declaration.question("layers").orElseThrow();
        assertEquals(Kind.ROWS, layers.kind());
        assertEquals(
                List.of("thickness", "tannages"),
                layers.questions().stream().map(Field::key).toList());
        assertEquals(Kind.CHOICE, layers.questions().get(1).itemKind());
        Question edge = declaration.question("edge").orElseThrow();
        assertEquals("edge.inner", edge.questions().get(0).labelKey());
        assertEquals("inner.window", edge.questions().get(0).questions().get(0).labelKey());
        Question marks = declaration.question("marks").orElseThrow();
        assertTrue(marks.optional());
        assertEquals(Kind.LIST, marks.kind());
        assertEquals(Kind.LENGTH, marks.itemKind());
    }

    @Test
    void anAnswerHasItsStepRoundingAndSource() {
        Answer cut = declaration.answer("cut-length").orElseThrow();
        assertEquals("fold-2.answer.cut-length", cut.labelKey());
        assertEquals(25.4 / 64, cut.step().orElseThrow(), 1e-15);
        assertEquals(Rounding.DOWN, cut.rounding());
        assertTrue(cut.lead());
        assertEquals(Optional.of("twice"), cut.by());
        assertEquals(Optional.of(HABIT), declaration.sourceOf(cut));
        assertEquals(
                Optional.of(TABLE),
                declaration.sourceOf(declaration.answer("tannage").orElseThrow()));
        Answer rows = declaration.answer("rows").orElseThrow();
        assertEquals(
                List.of("row.at", "row.tannage"),
                rows.columns().stream().map(Field::labelKey).toList());
        assertEquals(Optional.empty(), declaration.sourceOf(rows));
        assertEquals(OptionalDouble.empty(), rows.columns().get(0).step());
        assertEquals(Rounding.NEAREST, rows.rounding());
        assertEquals(Optional.empty(), declaration.answer("length"));
    }

    private static Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("inside-thickness", Length.ofMm(2));
        values.put("tannage", "oil-tanned");
        values.put("share", 0.35);
        values.put("core", Chosen.of("round-bar", Values.of(Map.of("diameter", Length.ofMm(6), "cover", "vegetable"))));
        values.put("cores", List.of(Chosen.of("flat-ring", Values.row("r1", Map.of("stuck", true)))));
        values.put(
                "layers",
                List.of(Values.row("l1", Map.of("thickness", Length.ofMm(1), "tannages", List.of("vegetable")))));
        values.put(
                "edge",
                Values.of(Map.of(
                        "inner", Values.of(Map.of("window", Size.of(Length.ofMm(1), Length.ofMm(2)))), "passes", 3)));
        return values;
    }

    @Test
    void valuesReachTheCalculatorInItsRecords() {
        calculator.work(Values.of(values()), Working.NONE);
        assertEquals(
                new Asks(
                        Length.ofMm(2),
                        Tannage.OIL_TANNED,
                        Optional.empty(),
                        0.35,
                        new RoundBar(Length.ofMm(6), Optional.of(Tannage.VEGETABLE)),
                        List.of(new FlatRing(true)),
                        List.of(new Layer("l1", Length.ofMm(1), List.of(Tannage.VEGETABLE))),
                        new Edge(new Inner(Size.of(Length.ofMm(1), Length.ofMm(2))), 3),
                        Optional.empty()),
                fold.asked.get(0));
    }

    @Test
    void optionalValuesThatAreThereReachItToo() {
        Map<String, Object> values = values();
        values.put("note", "mine");
        values.put("marks", List.of(Length.ofMm(1), Length.ofMm(2)));
        Outcome<Values> outcome = calculator.work(Values.of(values), Working.NONE);
        assertEquals(
                Optional.of(List.of(Length.ofMm(1), Length.ofMm(2))),
                fold.asked.get(0).marks());
        assertEquals(Optional.of("mine"), outcome.answers().orElseThrow().get("note"));
    }

    @Test
    void answersComeBackUnderTheirKeys() {
        Values answers =
                calculator.work(Values.of(values()), Working.NONE).answers().orElseThrow();
        assertEquals(
                List.of("cut-length", "tannage", "rows", "tannages", "any"),
                List.copyOf(answers.entries().keySet()));
        assertEquals(Length.ofMm(4), answers.get("cut-length").orElseThrow());
        assertEquals("oil-tanned", answers.get("tannage").orElseThrow());
        assertEquals(List.of("oil-tanned"), answers.get("tannages").orElseThrow());
        assertEquals(
                List.of(
                        Values.row("a", Map.of("at", Length.ofMm(1), "tannage", "oil-tanned")),
                        Values.row("b", Map.of("at", Length.ZERO))),
                answers.get("rows").orElseThrow());
        assertEquals(Optional.empty(), answers.get("note"));
    }

    @Test
    void valuesThatDoNotFitAreAFaultOfTheCaller() {
        Map<String, Object> missing = values();
        missing.remove("share");
        assertThrows(IllegalArgumentException.class, () -> calculator.work(Values.of(missing), Working.NONE));
        Map<String, Object> unknown = values();
        unknown.put("tannage", "paper");
        assertThrows(IllegalArgumentException.class, () -> calculator.work(Values.of(unknown), Working.NONE));
        Map<String, Object> variant = values();
        variant.put("core", Chosen.of("square-bar", Values.of(Map.of())));
        assertThrows(IllegalArgumentException.class, () -> calculator.work(Values.of(variant), Working.NONE));
        assertThrows(NullPointerException.class, () -> calculator.work(null, Working.NONE));
    }

    @Test
    void valuesAreEqualByWhatTheyHold() {
        assertEquals(Values.of(values()), Values.of(values()));
        assertEquals(Values.of(values()).hashCode(), Values.of(values()).hashCode());
        assertNotEquals(Values.row("a", Map.of("x", 1)), Values.row("b", Map.of("x", 1)));
        assertNotEquals(Values.row("a", Map.of("x", 1)), Values.row("a", Map.of("x", 2)));
        assertEquals(Chosen.of("a", Values.of(Map.of())), Chosen.of("a", Values.of(Map.of())));
        assertNotEquals(Chosen.of("a", Values.of(Map.of())), Chosen.of("b", Values.of(Map.of())));
        assertNotEquals(Chosen.of("a", Values.of(Map.of())), Chosen.of("a", Values.of(Map.of("x", 1))));
        assertEquals("a: {x=1}", Values.row("a", Map.of("x", 1)).toString());
        assertThrows(
                UnsupportedOperationException.class,
                () -> Values.of(Map.of()).entries().put("x", 1));
    }

    @Test
    void keysAreLowerCaseWordsJoinedByHyphens() {
        assertEquals("inside-radius", Keys.of("insideRadius"));
        assertEquals("round-bar", Keys.of("RoundBar"));
        assertEquals("will-not", Keys.of("WILL_NOT"));
        assertEquals("k", Keys.of("k"));
        assertEquals("k", Keys.of("K"));
        assertEquals("a6", Keys.of("A6"));
        assertEquals("length-at-angle", Keys.of("lengthAtAngle"));
    }

    /** Loads the classes of this test anew, as another bundle's loader would. */
    private static final class OtherLoader extends ClassLoader {
        OtherLoader() {
            super(RecordCalculatorTest.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (!name.startsWith(RecordCalculatorTest.class.getName())) {
                return super.loadClass(name, resolve);
            }
            Class<?> loaded = findLoadedClass(name);
            if (loaded != null) {
                return loaded;
            }
            try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
                byte[] bytes = in.readAllBytes();
                return defineClass(name, bytes, 0, bytes.length);
            } catch (java.io.IOException e) {
                throw new ClassNotFoundException(name, e);
            }
        }
    }

    @Test
    void aCalculatorOfAnotherLoaderIsBoundToItsOwnRecords() throws Exception {
        Class<?> foreign = new OtherLoader().loadClass(Fold.class.getName());
        assertNotSame(Fold.class, foreign);
        RecordCalculator other = RecordCalculator.of(
                (Calculator<?, ?>) foreign.getDeclaredConstructor().newInstance());
        assertEquals("fold-2", other.declaration().id());
        Values answers = other.work(Values.of(values()), Working.NONE).answers().orElseThrow();
        assertEquals(
                calculator.work(Values.of(values()), Working.NONE).answers().orElseThrow(), answers);
    }

    @Test
    void textsAreReadBesideTheClassAndAMissingOneIsEmpty() {
        assertEquals(Optional.of("Fold"), calculator.texts().find("fold-2.title", Locale.ENGLISH));
        assertEquals(Optional.of("Falz"), calculator.texts().find("fold-2.title", Locale.GERMAN));
        assertEquals(Optional.of("Fold"), calculator.texts().find("fold-2.title", Locale.FRENCH));
        assertEquals(Optional.of("Only here – ½"), calculator.texts().find("only", Locale.GERMANY));
        assertEquals(Optional.empty(), calculator.texts().find("nowhere", Locale.ENGLISH));
        assertEquals(Optional.empty(), Texts.beside(Length.class).find("fold-2.title", Locale.ENGLISH));
        Texts texts = (key, language) -> key.equals("paid") ? Optional.of("{0} of {1}") : Optional.empty();
        assertEquals("2 of 1,5", texts.filled("paid", Locale.GERMAN, "2", "1,5"));
        assertEquals("gone", texts.filled("gone", Locale.GERMAN, "2"));
    }
}
