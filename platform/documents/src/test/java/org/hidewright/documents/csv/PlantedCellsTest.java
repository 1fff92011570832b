package org.hidewright.documents.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Thousands of hostile cells from a fixed seed, read back by a reader that shares no code with the writer. */
class PlantedCellsTest {
    private static final long SEED = 20260314;
    private static final int TABLES = 4000;
    private static final String[] BITS = {
        "=",
        "+",
        "-",
        "@",
        "\uff1d",
        "\uff0b",
        "\uff0d",
        "\uff20",
        "\t",
        "\r",
        "\n",
        " ",
        "\u00a0",
        "\ufeff",
        "\"",
        "'",
        ",",
        ";",
        "|",
        "\"\"",
        "1",
        "2.5",
        "-2.5",
        "e3",
        "cmd|' /C calc'!A0",
        "HYPERLINK(\"x\")",
        "strap",
        "ß",
        "π",
        "\\"
    };

    /** What no cell may look like to any reader: a sign, however hidden, that does not belong to a plain number. */
    private static final Pattern FORMULA =
            Pattern.compile("(?s)[\\s\\p{Z}\\p{Cc}\\p{Cf}\"]*[=+\\-@\uff1d\uff0b\uff0d\uff20].*");

    private static final Pattern NUMBER =
            Pattern.compile("[\\s\\p{Z}\\p{Cf}\"]*[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?[\\s\\p{Z}\"]*");

    private final Random random = new Random(SEED);

    private List<List<String>> table() {
        return IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(r -> IntStream.range(0, 1 + random.nextInt(4))
                        .mapToObj(c -> cell())
                        .collect(Collectors.toList()))
                .collect(Collectors.toList());
    }

    private String cell() {
        return IntStream.range(0, random.nextInt(6))
                .mapToObj(i -> BITS[random.nextInt(BITS.length)])
                .collect(Collectors.joining());
    }

    @Test
    void noCellIsAFormulaToAReaderOfCommas() {
        int planted = 0;
        for (int i = 0; i < TABLES; i++) {
            List<List<String>> rows = table();
            List<List<String>> read = Rfc4180Reader.read(new SafeCsvWriter().write(rows));
            assertEquals(rows.size(), read.size());
            for (int r = 0; r < rows.size(); r++) {
                assertEquals(rows.get(r).size(), read.get(r).size(), "cells of " + rows.get(r));
                for (int c = 0; c < rows.get(r).size(); c++) {
                    String was = rows.get(r).get(c);
                    String is = read.get(r).get(c);
                    planted += isFormula(was) ? 1 : 0;
                    assertFalse(isFormula(is), () -> "a formula came through: " + is);
                    assertEquals(was.replace("'", ""), is.replace("'", ""), "nothing but apostrophes may be added");
                }
            }
        }
        assertTrue(planted > TABLES / 2, "the generator must plant formulas, it planted " + planted);
    }

    @Test
    void noPartIsAFormulaToAReaderOfAnotherSeparatorThatForgetsQuotes() {
        for (int i = 0; i < TABLES; i++) {
            List<List<String>> rows = table();
            for (List<String> row : Rfc4180Reader.read(new SafeCsvWriter().write(rows))) {
                for (String cell : row) {
                    for (String part : cell.split("[;|\t\r\n]", -1)) {
                        assertFalse(isFormula(part), () -> "a formula came through: " + part + " in " + cell);
                    }
                }
            }
        }
    }

    @Test
    void plainNumbersStayNumbers() {
        for (int i = 0; i < TABLES; i++) {
            String number = Double.toString((random.nextDouble() - 0.5) * 1e4);
            assertEquals(number + "\r\n", new SafeCsvWriter().write(List.of(List.of(number))));
        }
    }

    private static boolean isFormula(String text) {
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
    }

    /** A reader of its own: quoted and bare fields, commas, CR LF. */
    private static final class Rfc4180Reader {
        static List<List<String>> read(String text) {
            List<List<String>> rows = new ArrayList<>();
            List<String> row = new ArrayList<>();
            StringBuilder field = new StringBuilder();
            boolean quoted = false;
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (quoted) {
                    if (c != '"') {
                        field.append(c);
                    } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                        field.append(c);
                        i++;
                    } else {
                        quoted = false;
                    }
                } else if (c == '"') {
                    quoted = true;
                } else if (c == ',' || c == '\n') {
                    row.add(field.toString());
                    field.setLength(0);
                    if (c == '\n') {
                        rows.add(row);
                        row = new ArrayList<>();
                    }
                } else if (c != '\r') {
                    field.append(c);
                }
            }
            return rows;
        }
    }
}
