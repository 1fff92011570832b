package org.hidewright.api.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one reader of typed text: fields, files and commands all read through it, so that a text reads alike everywhere.
 *
 * <p>The grammar, in EBNF (ISO/IEC 14977); spaces may stand between any two parts:
 *
 * <pre>{@code
 * list     = quantity, { ";", quantity } ;
 * size     = quantity, ( "x" | "×" | "*" ), quantity ;
 * quantity = side, [ ( "-" | "to" | "bis" ), side | ( "±" | "+-" | "+/-" ), ( side | number, "%" ) ] ;
 * side     = number, [ unit ] | sign, number
 *          | number, "ft", number, "in" | number, "lb", number, "oz" | number, "h", number, "min" ;
 * number   = [ "-" | "+" ], ( decimal | fraction | vulgar | mixed ) ;
 * decimal  = ( digits, [ mark, [ digits ] ] | mark, digits ), [ ( "e" | "E" ), [ "-" | "+" ], digits ] ;
 * mark     = "." | "," ;
 * fraction = digits, "/", digits ;
 * vulgar   = "½" | "¼" | "¾" | "⅛" | … ;
 * mixed    = digits, [ "-" ], ( fraction | vulgar ) ;
 * sign     = "€" | "$" | "£" ;
 * unit     = any symbol or spelling in Units, letters of either case, a point after an abbreviation allowed ;
 * }</pre>
 *
 * <p>What the grammar leaves open is decided so:
 * <ul>
 * <li>Point and comma are both decimal marks. Marks or spaces between thousands are refused, and so is a comma before
 * exactly three digits ({@code 1,200}), which could be either; {@code 1.200} and {@code 0,794} are read.
 * <li>A whole number above zero, a hyphen and a proper fraction, with no space, are a mixed number, as the trade writes
 *     it: {@code 1-1/2 in} is one and a half, {@code 1-1/2-2 in} runs up to two. As a range it would be reversed.
 *     {@code 0-1/2} and {@code 1-3/2} are ranges.
 * <li>Within a quantity one unit holds for both numbers: {@code 2-3 oz}, {@code 31 mm ± 0.5}. Each may have its own:
 *     {@code 1/16 in - 2 mm}. A percentage after ± is a share of the number before it, save where a plain number is
 *     asked.
 * <li>In sizes and lists a number without a unit takes the next unit written after it: {@code 3; 4; 5 mm} are all
 *     millimetres, and {@link Typed#echo()} says so. A number with a unit only before it is refused, unless that is
 *     the assumed unit too, since {@code 8.5 in x 11} may mean either.
 * <li>{@code oz} is the leather ounce where a length is asked, the avoirdupois ounce where a mass is asked, the US fluid
 *     ounce where a volume is asked.
 * <li>A currency is written by its ISO 4217 code, after the number, or by one of three signs, before or after it; {@code $}
 *     is the US dollar.
 * <li>Typographic dashes, minus signs, spaces, quotation marks and primes, and full-width signs read as their plain
 *     forms.
 * <li>Numbers beyond 1e15 base units or with an exponent beyond 30 either way are refused, and so are texts of more
 *     than 200 characters (a list may have 10 000, each part 200).
 * </ul>
 *
 * <p>No text leads to an exception; a null text, or an assumed unit of another dimension, is a fault of the caller and
 * throws. Stateless, usable on any thread.
 */
public final class TypedText {
    /** The longest text of one quantity or size, in {@code char}s. */
    static final int LONGEST = 200;
    /** The longest list, in {@code char}s. */
    static final int LONGEST_LIST = 10_000;
    /** How many troubles one suggestion may put right, one after the other. */
    private static final int MOST_CORRECTIONS = 4;

    private TypedText() {}

    /**
     * Reads one quantity: {@code 2-3 oz}, {@code 31 +- 0.5 mm}, {@code 1 1/2 in}.
     *
     * @param assumed the unit of a bare number; without one a bare number is unreadable, save for {@link
     *     Dimension#NUMBER}
     * @throws IllegalArgumentException if the assumed unit measures something else
     */
    public static Reading<Typed> quantity(String text, Dimension dimension, Optional<Unit> assumed) {
        assumed.ifPresent(unit -> Quantity.checked(unit, dimension));
        return read(text, typed -> {
            Cursor cursor = cursorOver(typed, LONGEST);
            Amount amount = new AmountReader(cursor, dimension).read();
            refuseRest(cursor, amount);
            Typed part = new Understanding(cursor, dimension, assumed)
                    .of(List.of(amount))
                    .get(0);
            return Typed.of(typed, part.spelling(), part.range(), part.unit(), part.unitTyped());
        });
    }

    /**
     * Reads a size: {@code 8.5 x 11 in}, {@code 210×297 mm}. Either side may be a range.
     *
     * @param assumed the unit of bare numbers; without one they are unreadable
     * @throws IllegalArgumentException if the assumed unit is not one of length
     */
    public static Reading<TypedSize> size(String text, Optional<Unit> assumed) {
        assumed.ifPresent(unit -> Quantity.checked(unit, Dimension.LENGTH));
        return read(text, typed -> {
            Cursor cursor = cursorOver(typed, LONGEST);
            AmountReader reader = new AmountReader(cursor, Dimension.LENGTH);
            Amount width = reader.read();
            int cross = cursor.at();
            if (cursor.atEnd()) {
                throw new Unclear(Trouble.ONE_SIDE, cross, null);
            }
            if (!cursor.crossAt(cross)) {
                refuseRest(cursor, width);
            }
            cursor.moveTo(cursor.afterSpaces(cross + 1));
            reader.refuseMissingNumber(cross);
            Amount height = reader.read();
            if (cursor.crossAt(cursor.at())) {
                throw new Unclear(Trouble.THREE_SIDES, cursor.at(), null, cursor.wordFrom(cursor.at()));
            }
            refuseRest(cursor, height);
            List<Typed> sides = new Understanding(cursor, Dimension.LENGTH, assumed).of(List.of(width, height));
            return TypedSize.of(typed, sides.get(0), sides.get(1));
        });
    }

    /**
     * Reads a list whose parts are separated by {@code ;}: {@code 3 mm; 4 mm}. Each part may be a range.
     *
     * @param assumed the unit of bare numbers; without one they are unreadable, save for {@link Dimension#NUMBER}
     * @throws IllegalArgumentException if the assumed unit measures something else
     */
    public static Reading<List<Typed>> list(String text, Dimension dimension, Optional<Unit> assumed) {
        assumed.ifPresent(unit -> Quantity.checked(unit, dimension));
        return read(text, typed -> {
            Cursor whole = cursorOver(typed, LONGEST_LIST);
            List<Amount> amounts = new ArrayList<>();
            for (Cursor part : new Parts(typed).cursors()) {
                Amount amount = new AmountReader(part, dimension).read();
                refuseRest(part, amount);
                amounts.add(amount);
            }
            return List.copyOf(new Understanding(whole, dimension, assumed).of(amounts));
        });
    }

    private static Cursor cursorOver(String text, int longest) throws Unclear {
        if (text.length() > longest) {
            throw new Unclear(Trouble.TOO_LONG, longest, null, String.valueOf(longest));
        }
        Cursor cursor = new Cursor(text, Glyphs.plain(text), 0, text.length());
        cursor.skipSpaces();
        if (cursor.atEnd()) {
            throw new Unclear(Trouble.EMPTY, 0, null);
        }
        return cursor;
    }

    private static void refuseRest(Cursor cursor, Amount read) throws Unclear {
        if (cursor.atEnd()) {
            return;
        }
        int rest = cursor.at();
        if (cursor.crossAt(rest) || cursor.peek() == ';') {
            throw new Unclear(Trouble.SEVERAL, rest, null, cursor.typed(rest, rest + 1));
        }
        String suggestion = null;
        if (cursor.peek() == ',') {
            suggestion = cursor.replaced(rest, rest + 1, ";");
        } else if (!cursor.digitFollows()) {
            suggestion = cursor.withoutRest(read.end());
        }
        throw new Unclear(Trouble.LEFT_OVER, rest, suggestion, cursor.wordFrom(rest));
    }

    private interface Reader<T> {
        T read(String text) throws Unclear;
    }

    private static <T> Reading<T> read(String text, Reader<T> reader) {
        try {
            return Understood.of(reader.read(text));
        } catch (Unclear trouble) {
            return trouble.in(text, readable(trouble.suggestion(), reader));
        }
    }

    /** A suggestion that reads, with further troubles put right; none if they cannot be. */
    private static <T> Optional<String> readable(Optional<String> first, Reader<T> reader) {
        Optional<String> suggestion = first;
        for (int i = 0; i < MOST_CORRECTIONS && suggestion.isPresent(); i++) {
            try {
                reader.read(suggestion.get());
                return suggestion;
            } catch (Unclear further) {
                suggestion = further.suggestion();
            }
        }
        return Optional.empty();
    }
}
