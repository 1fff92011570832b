package org.hidewright.api.measure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Rows of a table kept beside the tests: lines that begin with # say where it is from, the next one names columns. */
final class PublishedTable {
    private PublishedTable() {}

    static List<Map<String, String>> rows(String name) {
        List<String> lines = lines(name);
        List<String> columns = cells(lines.get(0));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            if (cells.size() != columns.size()) {
                throw new IllegalStateException(name + ": " + cells.size() + " cells in " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                row.put(columns.get(i), cells.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<String> lines(String name) {
        try (InputStream in = PublishedTable.class.getResourceAsStream(name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Cells of a line by RFC 4180, without line breaks inside quotes. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char sign = line.charAt(i);
            if (sign == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (sign == '"') {
                quoted = !quoted;
            } else if (sign == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(sign);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
