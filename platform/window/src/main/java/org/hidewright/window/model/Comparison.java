package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Two slips of a kind, line by line.
 *
 * @param left title of the one
 * @param right title of the other
 * @param answers what they come to
 * @param questions what they were asked, where either was answered
 */
public record Comparison(String left, String right, List<Line> answers, List<Line> questions) {
    /**
     * One thing of both.
     *
     * @param label what it is called
     * @param depth 0 for what stands by itself, more inside groups and variants
     * @param left of the one; empty where it has none, as a group has whose questions follow
     * @param right of the other
     */
    public record Line(String label, int depth, String left, String right) {
        /** Whether the two are not the same. */
        public boolean differs() {
            return !left.equals(right);
        }

        private boolean isBare() {
            return left.isEmpty() && right.isEmpty();
        }
    }

    /** Two slips beside each other. */
    public static Comparison of(SlipFace left, SlipFace right) {
        return new Comparison(
                left.title(),
                right.title(),
                both(answers(left), answers(right)),
                both(questions(left), questions(right)));
    }

    private static Map<String, Line> answers(SlipFace slip) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (AnswerFace face : slip.answers()) {
            String met = face.met()
                    .map(range -> " (" + range.least() + "–" + range.most() + ")")
                    .orElse("");
            lines.put(face.key(), new Line(face.label(), 0, face.inline() + met, ""));
        }
        for (TableFace table : slip.tables()) {
            lines.put(table.key(), new Line(table.label(), 0, "", ""));
            for (int row = 0; row < table.rows().size(); row++) {
                List<String> cells = table.row(row);
                lines.put(
                        table.key() + " " + row, new Line(cells.get(0), 1, cells(cells.subList(1, cells.size())), ""));
            }
        }
        return lines;
    }

    private static Map<String, Line> questions(SlipFace slip) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (QuestionFace face : slip.questions()) {
            lines.put(
                    face.path().toString(),
                    new Line(face.label(), face.depth(), face.holdsOthers() ? "" : face.read(), ""));
            face.rows()
                    .forEach(row -> lines.put(
                            row.path().toString(), new Line(row.id(), face.depth() + 1, cells(row.cells()), "")));
        }
        return lines;
    }

    private static String cells(List<String> cells) {
        return cells.stream().filter(cell -> !cell.isEmpty()).collect(Collectors.joining(" · "));
    }

    /** What only the other has stands where it stands there. */
    private static List<Line> both(Map<String, Line> left, Map<String, Line> right) {
        List<String> keys = new ArrayList<>(left.keySet());
        int at = 0;
        for (String key : right.keySet()) {
            if (!left.containsKey(key)) {
                keys.add(at, key);
            }
            at = keys.indexOf(key) + 1;
        }
        return withoutBare(keys.stream()
                .map(key -> {
                    Line one = left.getOrDefault(key, right.get(key));
                    String here = left.containsKey(key) ? one.left() : "";
                    String there = right.containsKey(key) ? right.get(key).left() : "";
                    return new Line(one.label(), one.depth(), here, there);
                })
                .toList());
    }

    /** What neither has goes, and so does a group in which nothing is left. */
    private static List<Line> withoutBare(List<Line> all) {
        LinkedList<Line> kept = new LinkedList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            Line line = all.get(i);
            if (!line.isBare() || !kept.isEmpty() && kept.getFirst().depth() > line.depth()) {
                kept.addFirst(line);
            }
        }
        return List.copyOf(kept);
    }

    /** How many things differ. */
    public long differences() {
        return answers.stream().filter(Line::differs).count()
                + questions.stream().filter(Line::differs).count();
    }
}
