package org.hidewright.window.model;

import java.util.List;
import java.util.stream.IntStream;

/**
 * An answer that is a table.
 *
 * @param key as declared
 * @param label what it is called
 * @param head labels of its columns
 * @param rows a text for each cell
 */
public record TableFace(String key, String label, List<String> head, List<List<String>> rows) {
    /** The cells of a row that hold something, each behind the label of its column. */
    public List<String> row(int index) {
        List<String> row = rows.get(index);
        return IntStream.range(0, row.size())
                .filter(i -> !row.get(i).isEmpty())
                .mapToObj(i -> head.get(i).isEmpty() ? row.get(i) : head.get(i) + " " + row.get(i))
                .toList();
    }
}
