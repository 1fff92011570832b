package com.example.feldbuch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.example.feldbuch.BookStrap.Book;
import com.example.feldbuch.BookStrap.Strap;
import com.example.feldbuch.BookStrap.Way;
import java.util.List;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BookStrapTest {
    private static Outcome<Strap> worked(Sheet sheet, Way way, double overlap) {
        return new BookStrap()
                .calculate(new Book(sheet, Length.ofMm(14), way, Length.ofMm(2), Length.ofMm(overlap)), Working.NONE);
    }

    private static Strap strap(Sheet sheet, Way way) {
        return worked(sheet, way, 40).answers().orElseThrow();
    }

    @Test
    void itGoesOnceRoundTheMiddleOfTheLeather() {
        // sides of 105 + 2 and 14 + 2 mm between the middles, corners of radius 1 mm: 2 (105 + 14) + 2 pi 1, and 40
        assertEquals(
                2 * (105 + 14) + 2 * Math.PI + 40,
                strap(Sheet.A6, Way.ACROSS).cutLength().mm(),
                1e-9);
        assertEquals(148, strap(Sheet.A6, Way.ALONG).side().mm());
    }

    @ParameterizedTest
    @EnumSource
    void everySheetHasTheRatioOfItsStandard(Sheet sheet) {
        // ISO 216: the sides are as 1 to the root of 2, each rounded to a whole millimetre
        double across = strap(sheet, Way.ACROSS).side().mm();
        double along = strap(sheet, Way.ALONG).side().mm();
        assertEquals(across * Math.sqrt(2), along, 0.5 + 0.5 * Math.sqrt(2));
    }

    @Test
    void theAreaOfA4IsASixteenthOfASquareMetre() {
        Strap a4 = strap(Sheet.A4, Way.ALONG);
        assertEquals(
                1e6 / 16, a4.side().mm() * strap(Sheet.A4, Way.ACROSS).side().mm(), 300);
        // B5 stands between A4 and A5: its sides are their geometric means
        assertEquals(Math.sqrt(210.0 * 148), strap(Sheet.B5, Way.ACROSS).side().mm(), 0.5);
    }

    @Test
    void aShortLapIsTold() {
        assertEquals(List.of(), worked(Sheet.A6, Way.ACROSS, 25).notices());
        assertEquals(
                List.of(BookStrap.SHORT_LAP.at("overlap", Length.ofMm(24.9), Length.ofMm(25))),
                worked(Sheet.A6, Way.ACROSS, 24.9).notices());
    }
}
