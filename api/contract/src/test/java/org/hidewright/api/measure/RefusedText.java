package org.hidewright.api.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Texts that must be refused: why, where, naming what, and with which text put right (or none). */
final class RefusedText {
    private static final String LENGTHS = "mm, cm, m, in, ft, yd, oz, iron";
    private static final String CURRENCIES =
            Units.of(Dimension.MONEY).stream().limit(12).map(Unit::symbol).collect(Collectors.joining(", ", "", ", …"));
    private static final List<RefusedText> ALL = new ArrayList<>();

    static {
        one("", "empty", 1, null);
        one("  \u00A0", "empty", 1, null);
        one("x".repeat(201), "too-long", 201, null, "200");
        one("NaN", "not-a-number", 1, null, "NaN");
        one("Infinity mm", "not-a-number", 1, null, "Infinity");
        one("mm 3", "not-a-number", 1, null, "mm");
        one("- mm", "not-a-number", 1, null, "-");
        one("3 - mm", "not-a-number", 5, null, "mm");
        one(";", "not-a-number", 1, null, ";");
        one("supercalifragilisticexpiali", "not-a-number", 1, null, "supercalifragilistic…");
        one("supercalifragilistic", "not-a-number", 1, null, "supercalifragilistic");
        one("3 -", "missing-number", 3, null, "-");
        one("3 to ", "missing-number", 3, null, "to");
        one("3 mm ±", "missing-number", 6, null, "±");
        one("3 - x 4 mm", "missing-number", 3, null, "-");
        one("3 - ; 4 mm", "missing-number", 3, null, "-");
        one("1..5 mm", "two-marks", 1, null, "1..5");
        one("1.2,3 mm", "two-marks", 1, null, "1.2,3");
        one("0.123,456 mm", "two-marks", 1, null, "0.123,456");
        one("1234.567.891 mm", "two-marks", 1, null, "1234.567.891");
        one("1.234.567.8 mm", "two-marks", 1, null, "1.234.567.8");
        one("1,23,456 mm", "two-marks", 1, null, "1,23,456");
        one("1,234 mm", "comma-before-three", 1, "1234 mm", "1,234", "1234", "1.234");
        one("12,500 mm", "comma-before-three", 1, "12500 mm", "12,500", "12500", "12.500");
        one("8/9 oz", "label-as-fraction", 1, "8-9 oz", "8/9", "8-9", "0.889");
        one("2/3oz", "label-as-fraction", 1, "2-3oz", "2/3", "2-3", "0.667");
        one("1,234.5 mm", "grouping", 1, "1234.5 mm", "1,234.5");
        one("1.234,5 mm", "grouping", 1, "1234.5 mm", "1.234,5");
        one("1.234.567 mm", "grouping", 1, "1234567 mm", "1.234.567");
        one("123,456,789.1 mm", "grouping", 1, "123456789.1 mm", "123,456,789.1");
        one("1 234 mm", "grouping", 1, "1234 mm", "1 234");
        one("1 234,5 mm", "grouping", 1, "1234.5 mm", "1 234,5");
        one("1\u202F234\u202F567 mm", "grouping", 1, "1234567 mm", "1\u202F234\u202F567");
        one("1'234 mm", "grouping", 1, "1234 mm", "1'234");
        one("1_234 mm", "grouping", 1, "1234 mm", "1_234");
        one("2-1,234.5 mm", "grouping", 3, "2-1234.5 mm", "1,234.5");
        one("12 34 mm", "two-numbers", 4, null, "12", "34");
        one("1234 567 mm", "two-numbers", 6, null, "1234", "567");
        one("1 2345 mm", "two-numbers", 3, null, "1", "2345");
        one("1.5 1/2 in", "two-numbers", 5, null, "1.5", "1/2");
        one("3 in 4 in", "two-numbers", 6, null, "3 in", "4");
        one("3 ft 4 mm", "two-numbers", 6, null, "3 ft", "4 mm");
        one("½ ½ in", "two-numbers", 3, null, "½", "½");
        one("3/ in", "fraction", 1, null, "3/");
        one("1 3/ in", "fraction", 3, null, "3/");
        one("1.5/2 in", "fraction", 1, null, "1.5/");
        one("1/2/3 in", "fraction", 1, null, "1/2/");
        one("1/0 in", "zero-denominator", 1, null, "1/0");
        one("1-1/0 in", "zero-denominator", 3, null, "1/0");
        one("1 3/2 in", "improper-mixed", 3, null, "1 3/2", "3/2");
        one("1 2/2 in", "improper-mixed", 3, null, "1 2/2", "2/2");
        one("1e31 mm", "too-large", 1, null, "1e31");
        one("1e-31 mm", "too-large", 1, null, "1e-31");
        one("1e999999999999 mm", "too-large", 1, null, "1e999999999999");
        one("1e16 mm", "too-large", 1, null, "1e16");
        one("9".repeat(190) + " mm", "too-large", 1, null, "9".repeat(20) + "…");
        one("31", "no-unit", 1, "31 mm", "31", LENGTHS);
        one("2-3", "no-unit", 1, "2-3 mm", "2-3", LENGTHS);
        one("31 ± 2 %", "no-unit", 1, "31 mm ± 2 %", "31 ± 2 %", LENGTHS);
        one("5' 6", "no-unit", 4, "5' 6 in", "6", "in");
        one("31 mn", "unknown-unit", 4, "31 mm", "mn", LENGTHS);
        one("8.5 imches", "unknown-unit", 5, "8.5 inches", "imches", LENGTHS);
        one("3 onces", "unknown-unit", 3, "3 ounces", "onces", LENGTHS);
        one("3 oucne", "unknown-unit", 3, "3 ounce", "oucne", LENGTHS);
        one("3 ni - 4 in", "unknown-unit", 3, "3 in - 4 in", "ni", LENGTHS);
        one("3 q", "unknown-unit", 3, null, "q", LENGTHS);
        one("3 leather", "unknown-unit", 3, null, "leather", LENGTHS);
        one("31 mm²³", "unknown-unit", 4, null, "mm²³", LENGTHS);
        one("31 xylo", "unknown-unit", 4, null, "xylo", LENGTHS);
        one("31 tons", "unknown-unit", 4, null, "tons", LENGTHS);
        one("1,234.5 mn", "grouping", 1, "1234.5 mm", "1,234.5");
        one("22 sq ft", "wrong-dimension.length", 4, null, "sq ft");
        one("22 ft2", "wrong-dimension.length", 4, null, "ft2");
        one("3 lb", "wrong-dimension.length", 3, null, "lb");
        one("3 %", "wrong-dimension.length", 3, null, "%");
        one("3 mm - 2 %", "wrong-dimension.length", 10, null, "%");
        one("5 ft 18 in", "too-many-small-units", 6, null, "18 in", "12", "in");
        one("5 ft 12 in", "too-many-small-units", 6, null, "12 in", "12", "in");
        one("3-2 oz", "reversed-range", 1, "2-3 oz", "3", "2");
        one("3 oz - 2", "reversed-range", 1, "2 oz - 3", "3", "2");
        one("3 in-2 in", "reversed-range", 1, "2 in-3 in", "3 in", "2 in");
        one("1 in - 2 mm", "reversed-range", 1, "2 mm - 1 in", "1 in", "2 mm");
        one("1 - 1/2 in", "reversed-range", 1, "1/2 - 1 in", "1", "1/2");
        one("1-1/2-1 in", "reversed-range", 1, "1-1-1/2 in", "1-1/2", "1");
        one("1--2 mm", "reversed-range", 1, "-2-1 mm", "1", "-2");
        one("31 ± -0.5 mm", "negative-spread", 6, "31 ± 0.5 mm", "-0.5 mm");
        one("31 ± - 0.5 mm", "negative-spread", 6, "31 ± 0.5 mm", "- 0.5 mm");
        one("31 mm ± -2 %", "negative-spread", 9, "31 mm ± 2 %", "-2 %");
        one("3 x 4 mm", "several", 3, null, "x");
        one("3 mm; 4 mm", "several", 5, null, ";");
        one("8.5inx11in", "several", 6, null, "x");
        one("3 mm leather", "left-over", 6, "3 mm", "leather");
        one("3 mm leather 5", "left-over", 6, null, "leather");
        one("2-3-4 oz", "left-over", 4, null, "-4");
        one("3 #", "left-over", 3, "3 mm", "#");
        one("3 mm, 4 mm", "left-over", 5, null, ",");
        of(Dimension.AREA, "22 oz", "wrong-dimension.area", 4, null, "oz");
        of(Dimension.AREA, "22", "no-unit", 1, "22 mm²", "22", "mm², cm², dm², m², in², ft²");
        of(Dimension.ANGLE, "22 oz", "wrong-dimension.angle", 4, null, "oz");
        of(Dimension.ANGLE, "90", "no-unit", 1, "90 deg", "90", "deg, rad, turn");
        of(Dimension.MASS, "22 mm", "wrong-dimension.mass", 4, null, "mm");
        of(Dimension.MASS, "2 lb 17 oz", "too-many-small-units", 6, null, "17 oz", "16", "oz");
        of(Dimension.DENSITY, "1 g", "wrong-dimension.density", 3, null, "g");
        of(Dimension.VOLUME, "4 mm", "wrong-dimension.volume", 3, null, "mm");
        of(Dimension.DURATION, "4 mm", "wrong-dimension.duration", 3, null, "mm");
        of(Dimension.DURATION, "1 h 60 min", "too-many-small-units", 5, null, "60 min", "60", "min");
        of(Dimension.MONEY, "4 mm", "wrong-dimension.money", 3, null, "mm");
        of(Dimension.MONEY, "4 EURO", "unknown-unit", 3, "4 EUR", "EURO", CURRENCIES);
        of(Dimension.MONEY, "4", "no-unit", 1, "4 EUR", "4", CURRENCIES);
        of(Dimension.MONEY, "€ about 3", "not-a-number", 3, null, "about");
        of(Dimension.NUMBER, "4 mm", "wrong-dimension.number", 3, null, "mm");
        size("", "empty", 1, null);
        size("8.5 in", "one-side", 6, null);
        size("1 x 2 x 3 mm", "three-sides", 7, null, "x");
        size("8.5 x", "missing-number", 5, null, "x");
        size("8.5 x; 11 in", "missing-number", 5, null, "x");
        size("8.5 x - in", "not-a-number", 7, null, "-");
        size("x 11 in", "not-a-number", 1, null, "x");
        size("8.5 x 11", "no-unit", 1, "8.5 x 11 mm", "8.5", LENGTHS);
        size("8.5 in x 11", "unit-before", 10, "8.5 in x 11 in", "11", "in");
        size("8.5 in, 11 in", "left-over", 7, null, ",");
        size("8.5 x 11 in wide", "left-over", 13, "8.5 x 11 in", "wide");
        size("8.5 x 11 in; 3 in", "several", 12, null, ";");
        size("8.5 in; 3 in", "several", 7, null, ";");
        size("9-8 x 11 in", "reversed-range", 1, "8-9 x 11 in", "9", "8");
        list(" ", "empty", 1, null);
        list(";", "empty-part", 1, null, "1");
        list("3 mm;; 4 mm", "empty-part", 6, "3 mm; 4 mm", "2");
        list("3 mm; ", "empty-part", 6, "3 mm", "2");
        list("; 3 mm", "empty-part", 1, "3 mm", "1");
        list("3 mm; 4", "unit-before", 7, "3 mm; 4 mm", "4", "mm");
        list("3; 4", "no-unit", 1, "3; 4 mm", "3", LENGTHS);
        list("3 mm, 4 mm", "left-over", 5, "3 mm; 4 mm", ",");
        list("3 mm; 4 mn", "unknown-unit", 9, "3 mm; 4 mm", "mn", LENGTHS);
        list("3 mm; 4 x 5 mm", "several", 9, null, "x");
        list("3 mm; 5-4 mm", "reversed-range", 7, "3 mm; 4-5 mm", "5", "4");
        list("3 mm leather; 4 mm", "left-over", 6, "3 mm; 4 mm", "leather");
        list("1,2,3 mm", "two-marks", 1, null, "1,2,3");
    }

    final String text;
    final String key;
    final int column;
    final List<String> args;
    final Optional<String> suggestion;
    final Function<String, Reading<?>> reader;

    private RefusedText(
            Function<String, Reading<?>> reader,
            String text,
            String key,
            int column,
            String suggestion,
            String... args) {
        this.reader = reader;
        this.text = text;
        this.key = "reading." + key;
        this.column = column;
        this.args = Arrays.asList(args);
        this.suggestion = Optional.ofNullable(suggestion);
    }

    private static void one(String text, String key, int column, String suggestion, String... args) {
        of(Dimension.LENGTH, text, key, column, suggestion, args);
    }

    private static void of(Dimension asked, String text, String key, int column, String suggestion, String... args) {
        ALL.add(new RefusedText(
                typed -> TypedText.quantity(typed, asked, Shop.NO_UNIT), text, key, column, suggestion, args));
    }

    private static void size(String text, String key, int column, String suggestion, String... args) {
        ALL.add(new RefusedText(typed -> TypedText.size(typed, Shop.NO_UNIT), text, key, column, suggestion, args));
    }

    private static void list(String text, String key, int column, String suggestion, String... args) {
        ALL.add(new RefusedText(
                typed -> TypedText.list(typed, Dimension.LENGTH, Shop.NO_UNIT), text, key, column, suggestion, args));
    }

    static List<RefusedText> all() {
        return ALL;
    }

    @Override
    public String toString() {
        return "“" + text + "”";
    }
}
