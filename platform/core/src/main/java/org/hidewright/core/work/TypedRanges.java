package org.hidewright.core.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Typed;
import org.hidewright.core.work.Entry.Answered;

/** What was typed as a range on one slip, by the path under which its value is picked. */
final class TypedRanges {
    private static final String STOCK = "workshop:";

    private final Map<String, Typed> byPath = new LinkedHashMap<>();

    private TypedRanges() {}

    static Map<String, Typed> of(Map<String, Answered> entries) {
        TypedRanges ranges = new TypedRanges();
        ranges.collect(entries, "");
        return ranges.byPath;
    }

    /** The path of one item of several. */
    static String item(String path, int index) {
        return path + "[" + (index + 1) + "]";
    }

    static String width(String path) {
        return path + ".width";
    }

    static String height(String path) {
        return path + ".height";
    }

    /** The path of what lies in a cell of the workshop, the same for every question that takes it. */
    static String stocked(Entry.Stocked stocked) {
        return STOCK + stocked.cell();
    }

    /** What is typed as a range under a path: an input of the slip, or of the workshop. */
    static RangedInput input(String slip, String path, Typed typed) {
        return cell(path)
                .map(cell -> new RangedInput("", cell, typed))
                .orElseGet(() -> new RangedInput(slip, path, typed));
    }

    /** Where in the workshop a path leads to; empty for what was typed on the slip. */
    static Optional<String> cell(String path) {
        return path.startsWith(STOCK) ? Optional.of(path.substring(STOCK.length())) : Optional.empty();
    }

    private void collect(Map<String, Answered> entries, String path) {
        entries.forEach((key, answered) -> collect(answered.entry(), path.isEmpty() ? key : path + "." + key));
    }

    private void collect(Entry entry, String path) {
        if (entry instanceof Entry.Quantity quantity) {
            add(path, quantity.typed());
        } else if (entry instanceof Entry.TwoSides sides) {
            add(width(path), sides.typed().width());
            add(height(path), sides.typed().height());
        } else if (entry instanceof Entry.Several several) {
            List<Entry> items = several.items();
            for (int i = 0; i < items.size(); i++) {
                collect(items.get(i), item(path, i));
            }
        } else if (entry instanceof Entry.Stocked stocked) {
            collect(stocked.entry(), stocked(stocked));
        } else if (entry instanceof Entry.Group group) {
            collect(group.answers(), path);
        } else if (entry instanceof Entry.OneOf oneOf) {
            collect(oneOf.answers(), path + "." + oneOf.variant());
        } else if (entry instanceof Entry.Table table) {
            table.rows().forEach(row -> collect(row.entry(), path + "[" + row.id() + "]"));
        }
    }

    private void add(String path, Typed typed) {
        if (!typed.range().isExact()) {
            byPath.put(path, typed);
        }
    }
}
