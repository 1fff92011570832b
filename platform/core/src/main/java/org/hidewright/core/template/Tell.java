package org.hidewright.core.template;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.core.expression.Expression;

/**
 * Something a template tells where an expression holds.
 *
 * @param kind with the key of its texts
 * @param at the question it is about; empty for the whole
 * @param with what is put into its texts
 * @param together whether what it stops are answers that do not go together, though each of them is usual
 */
record Tell(NoticeKind kind, String at, Expression when, List<Expression> with, boolean together) {
    /** Every name it is reckoned with. */
    Set<String> names() {
        Set<String> names = new HashSet<>(when.names());
        with.forEach(expression -> names.addAll(expression.names()));
        return names;
    }

    Notice notice(Object... args) {
        return at.isEmpty() ? kind.with(args) : kind.at(at, args);
    }
}
