package com.example.feldbuch;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** How long to cut the strap that goes once round a field notebook and laps over itself. */
@Component(service = Calculator.class)
@Calculates("book-strap")
public final class BookStrap implements Calculator<BookStrap.Book, BookStrap.Strap> {

    /** Which way round the book it goes. */
    public enum Way {
        ALONG,
        ACROSS
    }

    /** What is asked. */
    public record Book(
            @Asked(preset = "a6") Sheet sheet,

            @Asked(unit = "mm", min = "1 mm", max = "120 mm", usual = "6-35 mm", example = "14 mm")
            Length bookThickness,

            @Asked(preset = "across") Way way,

            @Asked(unit = "mm", min = "0.6 mm", max = "5 mm", usual = "1.2-3 mm", preset = "2 mm")
            Length thickness,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "25-80 mm", preset = "40 mm")
            Length overlap) {}

    /** What is answered. */
    public record Strap(
            @Answered(unit = "mm", step = "1 mm", round = Rounding.UP, by = "once-round", lead = true)
            Length cutLength,

            @Answered(unit = "mm", step = "1 mm", by = "iso-216")
            Length side) {}

    private static final Source PAPER = Source.of("iso-216", Source.Kind.PUBLISHED);
    private static final Source ROUND = Source.of("round-a-box", Source.Kind.DEFINITION);

    static final Formula ONCE_ROUND = Formula.of("once-round", "L = 2 · (s + b) + π · t + o", ROUND);

    static final NoticeKind SHORT_LAP = NoticeKind.check("short-lap");

    /** Below this a stud and the leather beyond its slit do not go on the lap: common practice. */
    private static final Length LEAST_LAP = Length.ofMm(25);

    @Override
    public List<Formula> formulas() {
        return List.of(ONCE_ROUND);
    }

    @Override
    public List<Source> sources() {
        return List.of(PAPER);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(SHORT_LAP);
    }

    @Override
    public Outcome<Strap> calculate(Book book, Working working) {
        Sheets.Sides sides = Sheets.sides(book.sheet());
        Length side = Length.ofMm(book.way() == Way.ALONG ? sides.longMm() : sides.shortMm());
        // Round four corners the middle of the leather goes round a whole circle of half its thickness.
        Length cut = side.plus(book.bookThickness())
                .times(2)
                .plus(book.thickness().times(Math.PI))
                .plus(book.overlap());
        working.step(ONCE_ROUND, cut, "s", side, "b", book.bookThickness(), "t", book.thickness(), "o", book.overlap());
        return Outcome.of(
                new Strap(cut, side),
                book.overlap().compareTo(LEAST_LAP) < 0
                        ? List.of(SHORT_LAP.at("overlap", book.overlap(), LEAST_LAP))
                        : List.of());
    }
}
