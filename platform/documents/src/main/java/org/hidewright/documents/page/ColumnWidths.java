package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hidewright.api.document.Table;

/** How wide the columns of a table are, and which of them stand beside each other. */
final class ColumnWidths {
    /** Between two columns. */
    static final double GAP = 5;
    /** Where the page is too narrow for the longest words, they may be broken down to this width. */
    private static final double NARROWEST = 22;

    private final double room;
    private final double[] natural;
    private final double[] least;

    ColumnWidths(Wrapping wrapping, Table table, double room) {
        this.room = room;
        int count = table.columns().size();
        natural = new double[count];
        least = new double[count];
        for (int c = 0; c < count; c++) {
            String title = table.columns().get(c).title();
            natural[c] = wrapping.natural(title, Style.COLUMN);
            least[c] = wrapping.longestWord(title, Style.COLUMN);
            for (List<String> row : table.rows()) {
                natural[c] = Math.max(natural[c], wrapping.natural(row.get(c), Style.CELL));
                least[c] = Math.max(least[c], wrapping.longestWord(row.get(c), Style.CELL));
            }
        }
        if (IntStream.range(0, count).mapToDouble(c -> least[c]).sum() + GAP * (count - 1) > room) {
            for (int c = 0; c < count; c++) {
                least[c] = Math.min(least[c], NARROWEST);
            }
        }
    }

    /** Columns that stand beside each other, each part beginning with the first column. */
    List<List<Integer>> parts() {
        List<List<Integer>> parts = new ArrayList<>();
        List<Integer> part = new ArrayList<>(List.of(0));
        double used = least[0];
        for (int c = 1; c < least.length; c++) {
            if (part.size() > 1 && used + GAP + least[c] > room) {
                parts.add(part);
                part = new ArrayList<>(List.of(0));
                used = least[0];
            }
            part.add(c);
            used += GAP + least[c];
        }
        parts.add(part);
        return parts;
    }

    /** Their widths: each as wide as its text where there is room, else the room shared by what each could use. */
    List<Double> of(List<Integer> part) {
        double free = room - GAP * (part.size() - 1);
        double wanted = part.stream().mapToDouble(c -> natural[c]).sum();
        double needed = part.stream().mapToDouble(c -> least[c]).sum();
        if (wanted <= free) {
            return part.stream().map(c -> natural[c]).toList();
        }
        double share = wanted > needed ? (free - needed) / (wanted - needed) : 0;
        return part.stream()
                .map(c -> least[c] + share * (natural[c] - least[c]))
                .toList();
    }
}
