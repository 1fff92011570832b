package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.project.Link;

/** What a question could be linked to: every answer of another slip that fits it and does not hang on its own slip. */
public final class Linkable {
    private final WorkedProject worked;
    private final int slip;
    private final Question question;
    private final Map<Integer, Boolean> hangs = new HashMap<>();
    private final List<Link> links = new ArrayList<>();

    private Linkable(WorkedProject worked, int slip, Question question) {
        this.worked = worked;
        this.slip = slip;
        this.question = question;
    }

    /**
     * The links that would hold, in the order of the slips and of their answers; cells of tables row by row.
     *
     * @param slip id of the slip that asks
     */
    public static List<Link> to(WorkedProject worked, String slip, Question question) {
        Integer at = worked.project().index().get(slip);
        if (at == null || structured(question.kind())) {
            return List.of();
        }
        Linkable linkable = new Linkable(worked, at, question);
        worked.slips().forEach((id, from) -> linkable.from(id, from));
        return List.copyOf(linkable.links);
    }

    private static boolean structured(Kind kind) {
        return kind == Kind.GROUP || kind == Kind.VARIANTS || kind == Kind.ROWS;
    }

    private void from(String id, WorkedSlip from) {
        boolean onlyTries = from.slip().whatIf().isPresent()
                && worked.project().slips().get(slip).whatIf().isEmpty();
        if (onlyTries
                || from.answers().isEmpty()
                || hangs(worked.project().index().get(id))) {
            return;
        }
        Values answers = from.answers().get();
        for (Answer answer :
                from.installed().orElseThrow().calculator().declaration().answers()) {
            answers.get(answer.key()).ifPresent(value -> {
                if (answer.columns().isEmpty() || question.kind() == Kind.ITEM) {
                    add(new Link(id, answer.key(), "", ""), answer, value);
                } else {
                    cells(id, answer, value);
                }
            });
        }
    }

    private void cells(String id, Answer table, Object value) {
        List<Values> rows = value instanceof Item item ? ItemFacts.rows(item) : ItemFacts.rowsOf(value);
        if (question.kind() == Kind.LIST && value instanceof Values) {
            return; // a group gives single values
        }
        if (question.kind() == Kind.LIST) {
            for (Answer column : table.columns()) {
                List<Object> all = rows.stream()
                        .flatMap(row -> row.get(column.key()).stream())
                        .toList();
                add(new Link(id, table.key(), "", column.key()), column, all);
            }
            return;
        }
        for (Values row : rows) {
            for (Answer column : table.columns()) {
                row.get(column.key())
                        .ifPresent(cell -> add(new Link(id, table.key(), row.rowId(), column.key()), column, cell));
            }
        }
    }

    private void add(Link link, Answer answer, Object value) {
        if (LinkFit.fits(question, answer, value)) {
            links.add(link);
        }
    }

    /** Whether a slip takes, however far round, from the one that asks, or is that one. */
    private boolean hangs(int other) {
        if (other == slip) {
            return true;
        }
        Boolean known = hangs.putIfAbsent(other, false); // a circle elsewhere ends here
        if (known != null) {
            return known;
        }
        for (int source : worked.graph().sources(other)) {
            if (hangs(source)) {
                hangs.put(other, true);
                return true;
            }
        }
        return false;
    }
}
