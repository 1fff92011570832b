package com.example.feldbuch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The table {@code sheets.csv} of this bundle, read once. */
final class Sheets {
    /** The sides of a sheet, millimetres. */
    record Sides(double shortMm, double longMm) {}

    private static final Map<Sheet, Sides> BY_NAME = read();

    private Sheets() {}

    static Sides sides(Sheet sheet) {
        return BY_NAME.get(sheet);
    }

    private static Map<Sheet, Sides> read() {
        Map<Sheet, Sides> table = new EnumMap<>(Sheet.class);
        for (String line : lines()) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(",", -1);
                table.put(
                        Sheet.valueOf(cells[0]), new Sides(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])));
            }
        }
        return table;
    }

    private static List<String> lines() {
        try (InputStream table = Sheets.class.getResourceAsStream("sheets.csv")) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
