package org.hidewright.api.declaration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

class WrittenTest {
    private static Question question(Kind kind, Map<String, String> attributes, String... options) {
        return Written.question("fob", "width", kind, attributes, List.of(options));
    }

    private static String refused(Kind kind, Map<String, String> attributes, String... options) {
        return assertThrows(InvalidDeclaration.class, () -> question(kind, attributes, options))
                .getMessage();
    }

    @Test
    void aLengthHasItsUnitLimitsAndPreset() {
        Question width = question(
                Kind.LENGTH,
                Map.of(
                        "unit",
                        "mm",
                        "min",
                        "1 cm",
                        "max",
                        "80 mm",
                        "usual",
                        "15-35 mm",
                        "preset",
                        "22 mm",
                        "example",
                        "1 in",
                        "from",
                        "held-thing.width",
                        "stock",
                        "leather.thickness"));
        assertEquals("width", width.key());
        assertEquals("fob.width", width.labelKey());
        assertEquals("fob.width.help", width.helpKey());
        assertEquals(Kind.LENGTH, width.kind());
        assertEquals(Kind.LENGTH, width.itemKind());
        assertEquals(Optional.of(Units.MM), width.unit());
        assertEquals(10, width.min().orElseThrow(), 1e-12);
        assertEquals(80, width.max().orElseThrow(), 1e-12);
        assertEquals(35, width.usual().orElseThrow().high(), 1e-12);
        assertEquals(Optional.of("22 mm"), width.preset());
        assertEquals(Optional.of("1 in"), width.example());
        assertEquals(Optional.of("held-thing.width"), width.from());
        assertEquals(Optional.of("leather.thickness"), width.stock());
        assertEquals(false, width.optional());
        assertEquals(
                Optional.empty(), question(Kind.LENGTH, Map.of("unit", "mm")).from());
    }

    @Test
    void aChoiceHasItsOptionsWithLabels() {
        Question closed = question(Kind.CHOICE, Map.of("preset", "seam"), "rivet", "seam");
        assertEquals(
                List.of("rivet fob.width.rivet", "seam fob.width.seam"),
                closed.options().stream()
                        .map(option -> option.key() + " " + option.labelKey())
                        .toList());
    }

    @Test
    void whatContradictsItselfIsNoQuestion() {
        assertEquals(
                "width: min 9 mm is above max 8 mm",
                refused(Kind.LENGTH, Map.of("unit", "mm", "min", "9 mm", "max", "8 mm")));
        assertEquals(
                "width: \"7 mm\" is below min 8 mm",
                refused(Kind.LENGTH, Map.of("unit", "mm", "min", "8 mm", "preset", "7 mm")));
        assertEquals(
                "width: \"9 mm\" is above max 8 mm",
                refused(Kind.LENGTH, Map.of("unit", "mm", "max", "8 mm", "example", "9 mm")));
        assertEquals(
                "width: \"wide\" cannot be read as length", refused(Kind.LENGTH, Map.of("unit", "mm", "min", "wide")));
        assertEquals(
                "width: \"280-180 mm\" cannot be read as length; the smaller number stands first",
                refused(Kind.LENGTH, Map.of("unit", "mm", "usual", "280-180 mm")));
        assertEquals("width: \"kg\" is no unit of length", refused(Kind.LENGTH, Map.of("unit", "kg")));
        assertEquals("width: it has no unit; give it one, such as mm", refused(Kind.LENGTH, Map.of()));
        assertEquals("width: count has no unit, but \"mm\" is given", refused(Kind.COUNT, Map.of("unit", "mm")));
        assertEquals("width: \"2.5\" is not a whole number", refused(Kind.COUNT, Map.of("preset", "2.5")));
        assertEquals("width: flag has no limits", refused(Kind.FLAG, Map.of("min", "1")));
        assertEquals("width: \"maybe\" is neither yes nor no", refused(Kind.FLAG, Map.of("preset", "maybe")));
        assertEquals(
                "width: \"stud\" is none of rivet, seam",
                refused(Kind.CHOICE, Map.of("preset", "stud"), "rivet", "seam"));
        assertEquals("width: a choice, and nothing else, has options", refused(Kind.CHOICE, Map.of()));
        assertEquals("width: a choice, and nothing else, has options", refused(Kind.FLAG, Map.of(), "rivet"));
        assertEquals("width: rows is not one value", refused(Kind.ROWS, Map.of()));
    }

    @Test
    void anAnswerHasItsStepAndDirection() {
        Answer cut = Written.answer(
                "fob.answer", "cut", Kind.LENGTH, Map.of("unit", "mm", "step", "0.5 mm", "round", "up"), true);
        assertEquals("fob.answer.cut", cut.labelKey());
        assertEquals(0.5, cut.step().orElseThrow(), 1e-12);
        assertEquals(Rounding.UP, cut.rounding());
        assertEquals(true, cut.lead());
        assertEquals(Optional.empty(), cut.by());
        Answer count = Written.answer("fob.answer", "holes", Kind.COUNT, Map.of("by", "counting"), false);
        assertEquals(Rounding.NEAREST, count.rounding());
        assertEquals(Optional.of("counting"), count.by());
        assertEquals(true, count.step().isEmpty());
    }

    @Test
    void whatContradictsItselfIsNoAnswer() {
        assertEquals("cut: \"off\" is no way to round", noAnswer(Kind.LENGTH, Map.of("unit", "mm", "round", "off")));
        assertEquals(
                "cut: a step is above nothing, not 0 mm", noAnswer(Kind.LENGTH, Map.of("unit", "mm", "step", "0 mm")));
        assertEquals("cut: no answer is a choice", noAnswer(Kind.CHOICE, Map.of()));
        assertEquals("cut: no answer is a drawing", noAnswer(Kind.DRAWING, Map.of()));
    }

    private static String noAnswer(Kind kind, Map<String, String> attributes) {
        return assertThrows(
                        InvalidDeclaration.class, () -> Written.answer("fob.answer", "cut", kind, attributes, false))
                .getMessage();
    }

    @Test
    void anItemIsAnsweredWithTheFactsThatLinksTake() {
        Answer item = Written.item("fob.answer", "item");
        assertEquals(Kind.ITEM, item.kind());
        assertEquals(
                List.of("length", "area", "cut", "count", "stack", "hands-on"),
                item.columns().stream().map(Answer::key).toList());
    }

    @Test
    void aDeclarationHasAnIdAVersionAndKeysThatStandOnce() {
        Question width = question(Kind.COUNT, Map.of());
        Declaration declaration = Written.declaration(
                "key-fob",
                3,
                List.of(width),
                List.of(Written.item("key-fob.answer", "item")),
                List.of(),
                List.of(),
                List.of());
        assertEquals("key-fob", declaration.id());
        assertEquals(3, declaration.version());
        assertEquals("key-fob.title", declaration.titleKey());
        assertEquals(Optional.of(width), declaration.question("width"));
        assertThrows(
                InvalidDeclaration.class,
                () -> Written.declaration("Key fob", 1, List.of(), List.of(), List.of(), List.of(), List.of()));
        assertThrows(
                InvalidDeclaration.class,
                () -> Written.declaration("key-fob", 0, List.of(), List.of(), List.of(), List.of(), List.of()));
        assertThrows(
                InvalidDeclaration.class,
                () -> Written.declaration(
                        "key-fob", 1, List.of(width, width), List.of(), List.of(), List.of(), List.of()));
        Answer item = Written.item("a", "item");
        assertThrows(
                InvalidDeclaration.class,
                () -> Written.declaration(
                        "key-fob", 1, List.of(), List.of(item, item), List.of(), List.of(), List.of()));
    }
}
