package org.hidewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.wording.LongText;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedSlip;

/**
 * What was taken where nothing was typed, one line a question: its key as it would be typed, its label, the value, and where
 * it is from.
 */
final class TakenLines {
    private final SlipWording words;
    private final List<AskedLine> holders = new ArrayList<>();

    private TakenLines(SlipWording words) {
        this.words = words;
    }

    /**
     * The lines.
     *
     * @param origin where the value of a line is from; empty for one that is left out
     */
    static List<List<String>> of(WorkedSlip slip, SlipWording words, Function<AskedLine, Optional<String>> origin) {
        TakenLines lines = new TakenLines(words);
        List<List<String>> cells = new ArrayList<>();
        for (AskedLine line : slip.asked()) {
            lines.holders.subList(line.depth(), lines.holders.size()).clear();
            if (line.question().kind() != Kind.GROUP) {
                origin.apply(line)
                        .ifPresent(from -> line.value().ifPresent(value -> cells.add(lines.line(line, value, from))));
            }
            lines.holders.add(line);
        }
        return cells;
    }

    private List<String> line(AskedLine line, Object value, String from) {
        String text = words.text(line.question(), value);
        boolean typed = line.question().itemKind() == Kind.TEXT;
        return List.of(path(line), words.label(line.question()), typed ? LongText.cutNumbers(text) : text, from);
    }

    /** The keys of all that hold a question, and its own; a row by its id, a variant by its key. */
    private String path(AskedLine line) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < holders.size(); i++) {
            AskedLine inner = i + 1 < holders.size() ? holders.get(i + 1) : line;
            path.append(holders.get(i).question().key());
            if (holders.get(i).question().kind() == Kind.ROWS) {
                path.append('[').append(inner.row()).append(']');
            }
            variant(holders.get(i), inner.row())
                    .ifPresent(key -> path.append('.').append(key));
            path.append('.');
        }
        return path.append(line.question().key()).toString();
    }

    /** The variant that was chosen for a question, or for one of its rows. */
    private static Optional<String> variant(AskedLine holder, String row) {
        Object value = holder.value().orElse(null);
        List<?> chosen = value instanceof List<?> rows ? rows : value == null ? List.of() : List.of(value);
        return chosen.stream()
                .filter(Chosen.class::isInstance)
                .map(Chosen.class::cast)
                .filter(one -> value == one || one.values().rowId().equals(row))
                .map(Chosen::variant)
                .findFirst();
    }
}
