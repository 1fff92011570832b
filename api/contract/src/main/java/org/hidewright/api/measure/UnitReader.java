package org.hidewright.api.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the unit written after a number. */
final class UnitReader {
    private static final String SIGNS_OF_UNITS = "°%\"'€$£";
    private static final int MOST_NAMED = 12;

    /** Units of the dimension asked come first, so that an ounce is a thickness where a thickness is asked. */
    private static final Map<Dimension, List<Known>> KNOWN = new ConcurrentHashMap<>();

    private final Cursor cursor;
    private final Dimension asked;

    UnitReader(Cursor cursor, Dimension asked) {
        this.cursor = cursor;
        this.asked = asked;
    }

    /**
     * Reads the unit under the cursor, if one stands there, and leaves the cursor after it.
     *
     * @param percentToo whether a percentage may stand in place of the dimension asked
     */
    Optional<Unit> read(boolean percentToo) throws Unclear {
        int start = cursor.at();
        if (!Character.isLetter(cursor.peek()) && SIGNS_OF_UNITS.indexOf(cursor.peek()) < 0
                || cursor.crossAt(start)
                || cursor.afterTo().isPresent()) {
            return Optional.empty();
        }
        Unit best = null;
        int end = start;
        for (Known known : known()) {
            int after = afterSpelling(known.spelling(), start);
            if (after > end) {
                end = after;
                best = known.unit();
            }
        }
        if (best == null) {
            throw unknown(start);
        }
        if (best.dimension() != asked && !(percentToo && best.equals(Units.PERCENT))) {
            throw new Unclear(Trouble.notA(asked), start, null, cursor.typed(start, end));
        }
        cursor.moveTo(end);
        return Optional.of(best);
    }

    private List<Known> known() {
        return KNOWN.computeIfAbsent(asked, UnitReader::inOrderOfLikelihood);
    }

    private static List<Known> inOrderOfLikelihood(Dimension asked) {
        return Stream.concat(Units.of(asked).stream(), Units.all().stream().filter(unit -> unit.dimension() != asked))
                .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream())
                        .filter(spelling -> !spelling.isEmpty())
                        .map(spelling -> new Known(unit, spelling)))
                .collect(Collectors.toUnmodifiableList());
    }

    /** The symbols of a dimension's units, for a message; of many currencies the first. */
    static String known(Dimension dimension) {
        List<Unit> units = Units.of(dimension);
        return units.stream()
                        .map(Unit::symbol)
                        .filter(symbol -> !symbol.isEmpty())
                        .limit(MOST_NAMED)
                        .collect(Collectors.joining(", "))
                + (units.size() > MOST_NAMED ? ", …" : "");
    }

    /** The unit a suggestion names where none was typed: the first of its dimension. */
    static Unit usual(Dimension dimension) {
        return Units.of(dimension).get(0);
    }

    /** The place after a spelling, or -1 if it does not stand there as a word of its own. */
    private int afterSpelling(String spelling, int start) {
        int at = start;
        for (int i = 0; i < spelling.length(); i++) {
            char sign = spelling.charAt(i);
            if (sign == ' ') {
                int next = cursor.afterSpaces(cursor.see(at) == '.' ? at + 1 : at);
                if (next == at) {
                    return -1;
                }
                at = next;
            } else if (Character.toLowerCase(cursor.see(at)) == Character.toLowerCase(sign)) {
                at++;
            } else {
                return -1;
            }
        }
        char last = spelling.charAt(spelling.length() - 1);
        if (!endsWord(last, at)) {
            return -1;
        }
        boolean abbreviated = Character.isLetter(last) && cursor.see(at) == '.' && !Cursor.isDigit(cursor.see(at + 1));
        return abbreviated ? at + 1 : at;
    }

    /** A letter right after belongs to the word, save a cross before the next number: {@code 8.5inx11in}. */
    private boolean endsWord(char last, int after) {
        char next = cursor.see(after);
        if (cursor.crossAt(after) && cursor.numberAt(cursor.afterSpaces(after + 1))) {
            return true;
        }
        boolean power = Cursor.isDigit(last) && Cursor.isDigit(next);
        boolean word = Character.isLetterOrDigit(last) || last == '²' || last == '³';
        return !power
                && !(word && (Character.isLetter(next) || next == '²' || next == '³' || next == '^' || next == '/'));
    }

    private record Known(Unit unit, String spelling) {}

    private Unclear unknown(int start) {
        int end = start;
        while (end == start || !cursor.endsWordAt(end)) {
            end++;
        }
        NearestWord nearest = new NearestWord(cursor.slice(start, end));
        known().stream()
                .filter(known -> known.unit().dimension() == asked)
                .forEach(known -> nearest.offer(known.spelling()));
        String suggestion = null;
        if (nearest.found().isPresent()) {
            suggestion = cursor.replaced(start, end, nearest.found().get());
        }
        return new Unclear(Trouble.UNKNOWN_UNIT, start, suggestion, cursor.wordFrom(start), known(asked));
    }
}
