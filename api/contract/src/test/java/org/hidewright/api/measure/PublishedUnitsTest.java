package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Units against published definitions, worked examples and the weights leather is sold by. */
class PublishedUnitsTest {
    private static final double EXACT = 1e-12;

    private static Map<String, DoubleSupplier> worked() {
        Map<String, DoubleSupplier> worked = new TreeMap<>();
        worked.put("U.01", () -> Shop.mm("1 oz"));
        worked.put("U.02", () -> Shop.mm("1 iron"));
        worked.put("U.03", () -> Shop.mm("8 oz"));
        worked.put("U.04", () -> in("8 oz", Units.INCH));
        worked.put("U.05", () -> in("8 oz", Units.IRON));
        worked.put("U.06", () -> in("12 irons", Units.OUNCE));
        worked.put("U.07", () -> Shop.length("2-3 oz").range().low());
        worked.put("U.08", () -> Shop.length("2-3 oz").range().high());
        worked.put("U.09", () -> in("1.5 mm", Units.OUNCE));
        worked.put("U.10", () -> in("3.0 mm", Units.IRON));
        worked.put("U.11", () -> length("0.4 mm").per(length("1 oz")) - 1);
        worked.put("U.12", () -> area("1 ft^2").in(Units.DM2));
        worked.put("U.13", () -> area("1 m^2").in(Units.FT2));
        worked.put("U.14", () -> area("22 ft^2").in(Units.M2));
        worked.put("U.15", () -> 9.50 * area("1 m²").per(area("1 sq ft")));
        worked.put("U.16", () -> 9.50 * area("1 dm²").per(area("1 sq ft")));
        worked.put("U.19", () -> mass("1 oz").grams() / cm3(area("1 ft2"), length("1/64 in")));
        worked.put(
                "U.20",
                () -> cm3(area("10 dm^2"), length("8 oz"))
                        * Shop.typed("0.95 g/cm^3", Dimension.DENSITY).range().nominal());
        return worked;
    }

    private static Length length(String text) {
        return Length.ofMm(Shop.mm(text));
    }

    private static double in(String text, Unit unit) {
        return length(text).in(unit);
    }

    private static Area area(String text) {
        return Area.ofMm2(Shop.typed(text, Dimension.AREA).range().nominal());
    }

    private static Mass mass(String text) {
        return Mass.ofGrams(Shop.typed(text, Dimension.MASS).range().nominal());
    }

    private static double cm3(Area area, Length thickness) {
        return area.in(Units.CM2) * thickness.in(Units.CM);
    }

    static List<Map<String, String>> workedExamples() {
        return PublishedTable.rows("worked-examples-units.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("workedExamples")
    void workedExamplesComeOut(Map<String, String> row) {
        double expected = Double.parseDouble(row.get("expected_value"));
        double relative = row.get("tolerance").contains("1e-12") ? EXACT : 1e-9;
        double answer = worked().get(row.get("id")).getAsDouble();
        assertEquals(expected, answer, Math.abs(expected) * relative);
    }

    @Test
    void everyRowOfTheWorkedExamplesIsWorked() {
        Set<String> rows = new TreeSet<>();
        workedExamples().forEach(row -> rows.add(row.get("id")));
        assertEquals(worked().keySet(), rows);
    }

    static Stream<Map<String, String>> definitions() {
        // Left out: habits that are no unit here (trade rounding, mass per area), and units of other trades (lignes,
        // pouce, hand), which nothing reads yet.
        return PublishedTable.rows("unit-definitions.csv").stream()
                .filter(row -> row.get("status").equals("checked"))
                .filter(row -> !row.get("unit").startsWith("ligne"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("definitions")
    void unitsHaveTheirPublishedSize(Map<String, String> row) {
        Dimension dimension = row.get("quantity").equals("area") ? Dimension.AREA : Dimension.LENGTH;
        String name = row.get("unit").replace(" (oz)", "");
        double size = Shop.typed("1 " + name, dimension).range().nominal();
        double expected = Shop.typed(row.get("value") + " " + row.get("value_unit"), dimension)
                .range()
                .nominal();
        assertEquals(expected, size, size * 1e-14);
    }

    @Test
    void eightDefinitionsAreChecked() {
        assertEquals(8, definitions().count());
    }

    static List<Map<String, String>> weightsAsSold() {
        return PublishedTable.rows("ounce-ranges.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("weightsAsSold")
    void weightsAsSoldHaveTheirExactLimits(Map<String, String> row) {
        Range range = Shop.length(row.get("label")).range();
        assertEquals(number(row, "mm_low_exact"), range.low(), 0);
        assertEquals(number(row, "mm_high_exact"), range.high(), 0);
        assertEquals(number(row, "iron_low"), Length.ofMm(range.low()).in(Units.IRON), 1e-13);
        assertEquals(number(row, "iron_high"), Length.ofMm(range.high()).in(Units.IRON), 1e-13);
        assertEquals(range, Shop.length(row.get("inch_range") + " in").range());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("weightsAsSold")
    void theLabelOfFourTenthsIsUnderOnePercentTooThick(Map<String, String> row) {
        Range range = Shop.length(row.get("label")).range();
        assertEquals(number(row, "mm_low_trade"), range.low() * (1 + 0.0078740157480315), 1e-12);
        assertEquals(number(row, "mm_high_trade"), range.high() * (1 + 0.0078740157480315), 1e-12);
    }

    static List<Map<String, String>> areas() {
        return PublishedTable.rows("areas.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("areas")
    void areasOfPanelsAndHidesConvert(Map<String, String> row) {
        Area area = area(row.get("typed_ft2"));
        assertEquals(number(row, "dm2"), area.in(Units.DM2), number(row, "dm2") * EXACT);
        assertEquals(number(row, "m2"), area.in(Units.M2), number(row, "m2") * EXACT);
        assertEquals(number(row, "in2"), area.in(Units.IN2), number(row, "in2") * EXACT);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
