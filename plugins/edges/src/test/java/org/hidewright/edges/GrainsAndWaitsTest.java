package org.hidewright.edges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published grain sizes, and waits of the trade; each row names its own source and whether it was read. */
class GrainsAndWaitsTest {
    @ParameterizedTest(name = "P{0}")
    @CsvFileSource(resources = "grains-p.csv")
    void agreesWithTheListOfPGrades(int number, double micrometres, Double ratio, String source) {
        assertEquals(micrometres, GritScale.P.micrometres(number).orElseThrow());
        assertEquals("P" + number, Ladder.nearestP(micrometres).label());
        if (ratio != null) {
            Grit before = Grit.p(GritScale.P.grades().lowerKey(number));
            assertEquals(ratio, before.over(Grit.p(number)), 5e-5 * ratio);
        }
    }

    @ParameterizedTest(name = "American {0}")
    @CsvFileSource(resources = "grains-american.csv")
    void agreesWithBothListsOfAmericanGrades(
            int number, Double cami, String nearestCami, Double ansi, String nearestAnsi, String source) {
        agrees(GritScale.CAMI, number, cami, nearestCami);
        agrees(GritScale.ANSI, number, ansi, nearestAnsi);
    }

    private static void agrees(GritScale scale, int number, Double micrometres, String nearest) {
        OptionalDouble ours = scale.micrometres(number);
        assertEquals(micrometres == null, ours.isEmpty(), scale + " " + number);
        if (micrometres != null) {
            assertEquals(micrometres, ours.getAsDouble());
            // Where a grain lies midway between two grades, the list and we may name either.
            double theirs = Math.abs(Math.log(micrometres
                    / GritScale.P
                            .micrometres(Integer.parseInt(nearest.substring(1)))
                            .orElseThrow()));
            double here =
                    Math.abs(Math.log(micrometres / Ladder.nearestP(micrometres).micrometres()));
            assertTrue(here <= theirs + 1e-12, scale + " " + number + " is nearest to " + nearest);
            assertTrue(theirs - here < 0.03, scale + " " + number + " is nearest to " + nearest);
        }
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvFileSource(resources = "worked-examples.csv")
    void agreesWithTheWorkedExample(
            String id, String section, String description, String inputs, String closedForm, double expected) {
        double worked = switch (id) {
            case "A.01" -> Grit.p(120).over(Grit.p(220));
            case "A.02" -> Grit.p(220).over(Grit.p(400));
            case "A.03" -> Grit.p(400).over(Grit.p(800));
            case "A.04" -> Grit.p(800).over(Grit.p(1500));
            case "A.05" -> Grit.p(180).over(Grit.p(320));
            case "A.06" -> furthestAfter(240);
            case "A.07" -> furthestAfter(120);
            default -> throw new AssertionError("nothing works " + id);
        };
        assertEquals(expected, worked, 1e-9 * expected);
    }

    private static double furthestAfter(int number) {
        return Double.parseDouble(Ladder.furthestAfter(Grit.p(number).micrometres())
                .orElseThrow()
                .label()
                .substring(1));
    }

    @ParameterizedTest(name = "{4}")
    @CsvFileSource(resources = "waits.csv")
    void agreesWithTheWaitsOfTheTrade(
            Coat coat, String when, double least, double most, String operation, String source) {
        Wait wait = when.equals("last") ? coat.last() : coat.between();
        assertEquals(least, wait.least().in(Units.MINUTE), 1e-9);
        assertEquals(most, wait.most().in(Units.MINUTE), 1e-9);
    }

    @Test
    void grainsToldByTheirSizeHaveIt() {
        assertEquals(30, GritScale.MICRON.micrometres(30).orElseThrow());
        assertEquals("30 µm", GritScale.MICRON.label(30));
        assertEquals("CAMI 400", GritScale.CAMI.label(400));
        assertEquals("ANSI 400", GritScale.ANSI.label(400));
    }

    /** A third of the thickness, none under 1.2 mm, 1.5 mm at the most: common practice. */
    @Test
    void bevelsByThickness() {
        assertTrue(Bevel.of(Length.ofMm(1.19)).isEmpty());
        assertEquals(0.4, Bevel.of(Length.ofMm(1.2)).orElseThrow().mm(), 1e-12);
        assertEquals(1.2, Bevel.of(Length.ofMm(3.6)).orElseThrow().mm(), 1e-12);
        assertEquals(1.5, Bevel.of(Length.ofMm(4.5)).orElseThrow().mm(), 1e-12);
        assertEquals(1.5, Bevel.of(Length.ofMm(12)).orElseThrow().mm(), 1e-12);
    }
}
