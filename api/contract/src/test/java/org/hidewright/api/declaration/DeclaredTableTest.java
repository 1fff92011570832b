package org.hidewright.api.declaration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DeclaredTableTest {
    public record Net(
            @Asked(example = "Beetle net") String name,

            @Asked(unit = "mm", min = "100 mm", example = "300 mm")
            Length ring,

            @Asked(unit = "mm", example = "2; 3") List<Length> meshes,
            @Asked Optional<String> note) {}

    @Tabulates("nets")
    static final class Nets implements WorkshopTable<Net> {}

    static final class Nameless implements WorkshopTable<Net> {}

    @Tabulates("Nets")
    static final class WrongId implements WorkshopTable<Net> {}

    @Tabulates("nets")
    @SuppressWarnings("rawtypes")
    static final class NoRecord implements WorkshopTable {}

    public record Nested(@Asked Net inside) {}

    @Tabulates("nested")
    static final class OfGroups implements WorkshopTable<Nested> {}

    public record WithId(@Asked String id) {}

    @Tabulates("with-id")
    static final class OfIds implements WorkshopTable<WithId> {}

    @Test
    void aRecordMakesColumnsWithUnitsLimitsAndTexts() {
        DeclaredTable nets = DeclaredTable.of(new Nets());
        assertEquals("nets", nets.id());
        assertEquals(
                List.of("name", "ring", "meshes", "note"),
                nets.columns().stream().map(Question::key).toList());
        Question ring = nets.columns().get(1);
        assertEquals(Units.MM, ring.unit().orElseThrow());
        assertEquals(100, ring.min().orElseThrow(), 0);
        assertEquals("nets.ring", ring.labelKey());
        assertTrue(nets.columns().get(3).optional());
        assertEquals(Kind.LIST, nets.columns().get(2).kind());
        assertEquals("nets.title", nets.titleKey());
        assertEquals("nets.purpose", nets.purposeKey());
        assertEquals(Optional.of("Nets"), nets.texts().find("nets.title", Locale.ENGLISH));
    }

    @Test
    void aTableMayBeWrittenDown() {
        Question ring = Written.column("nets", "ring", Kind.LENGTH, Map.of("unit", "mm", "max", "60 cm"), List.of());
        Question pieces = Written.column("nets", "pieces", Kind.COUNT, Map.of("preset", "1"), List.of());
        DeclaredTable nets = DeclaredTable.written("nets", List.of(ring, pieces), (key, language) -> Optional.of(key));
        assertEquals("nets.ring", nets.columns().get(0).labelKey());
        assertTrue(ring.optional(), "a row may leave it open");
        assertFalse(pieces.optional(), "one with a preset never is");
        assertEquals(Optional.of("nets.title"), nets.texts().find(nets.titleKey(), Locale.ENGLISH));
        Question from = Written.column("nets", "from", Kind.TEXT, Map.of(), List.of());
        for (List<Question> columns : List.of(List.of(from), List.of(ring, ring))) {
            assertThrows(
                    InvalidDeclaration.class, () -> DeclaredTable.written("nets", columns, (key, language) -> null));
        }
        assertThrows(InvalidDeclaration.class, () -> DeclaredTable.written("Nets", List.of(), (key, language) -> null));
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of(new Nameless(), "annotate it with @Tabulates"),
                Arguments.of(new WrongId(), "the id \"Nets\" must be lower-case words"),
                Arguments.of(new NoRecord(), "implement WorkshopTable<Row> directly"),
                Arguments.of(new OfGroups(), "a column holds single values"),
                Arguments.of(new OfIds(), "every row has an id, may have a currency"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void whatIsNoTableIsRefusedWithTheReason(WorkshopTable<?> table, String reason) {
        InvalidDeclaration invalid = assertThrows(InvalidDeclaration.class, () -> DeclaredTable.of(table));
        assertTrue(invalid.getMessage().contains(reason), invalid.getMessage());
    }
}
