package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;
import org.hidewright.straps.StripCount.StripCutter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripCountTest {
    private static StripCount.Strips strips(
            double length, double across, double trim, double width, StripCutter cutter, double cut, double lap) {
        Optional<Length> wanted = cut > 0 ? Optional.of(mm(cut)) : Optional.empty();
        return answers(
                new StripCount(),
                new StripCount.Panel(Size.of(mm(length), mm(across)), mm(trim), mm(width), cutter, wanted, 1, mm(lap)));
    }

    @ParameterizedTest(name = "{0} across, {1} trimmed, {2} wide, gap {3}: {4} strips, {5} left")
    @CsvSource({
        "400, 5, 38, 0, 10, 15", "400, 0, 12.5, 0, 32, 0", "400, 0, 40, 0, 10, 0", "399.9, 0, 40, 0, 9, 39.9",
        "100, 0, 24, 1, 4, 1", "99, 0, 24, 1, 4, 0", "98.9, 0, 24, 1, 3, 24.9", "0.3, 0, 0.1, 0, 3, 0",
        "1200, 10, 1190, 5, 1, 0"
    })
    void aStrapCutterWastesNothingAndAKnifeAGapBetweenStrips(
            double across, double trim, double width, double gap, int count, double left) {
        StripCutter cutter = gap > 0 ? new StripCutter.Knife(mm(gap)) : new StripCutter.StrapCutter();
        StripCount.Strips strips = strips(1000, across, trim, width, cutter, 0, 40);
        assertEquals(count, strips.count());
        assertEquals(left, strips.leftoverWidth().mm(), 1e-9);
        assertEquals(count * 1000.0, strips.totalLength().mm(), 1e-9);
        assertEquals(Optional.empty(), strips.strapsInAll());
    }

    @ParameterizedTest(name = "{0} mm straps from {1} mm strips: {3} strips each, {4} in all")
    @CsvSource({
        "1000, 1000, 40, 1, 10",
        "500, 1000, 40, 1, 20",
        "501, 1000, 40, 1, 10",
        "1200, 1000, 40, 2, 5",
        "1960, 1000, 40, 2, 5",
        "1961, 1000, 40, 3, 3",
        "2920, 1000, 40, 3, 3"
    })
    void strapsLongerThanAStripAreJoinedWithALap(double cut, double length, double lap, int each, int all) {
        StripCount.Strips strips = strips(length, 400, 5, 38, new StripCutter.StrapCutter(), cut, lap);
        assertEquals(Optional.of(each), strips.stripsForOneStrap());
        assertEquals(Optional.of(each - 1), strips.joinsInOneStrap());
        assertEquals(Optional.of(all), strips.strapsInAll());
    }

    @Test
    void aKnifeWithoutAGapCutsAsAStrapCutterDoes() {
        assertEquals(
                strips(900, 310, 3, 21, new StripCutter.StrapCutter(), 0, 40),
                strips(900, 310, 3, 21, new StripCutter.Knife(Length.ZERO), 0, 40));
    }
}
