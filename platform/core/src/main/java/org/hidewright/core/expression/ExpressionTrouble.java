package org.hidewright.core.expression;

import org.hidewright.api.calculator.Notice;
import org.hidewright.core.json.Place;

/** What is wrong with an expression, and where in its text. */
public final class ExpressionTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Notice notice;
    private final transient Place place;

    ExpressionTrouble(Notice notice, Place place) {
        super(notice.kind().key() + " at " + place);
        this.notice = notice;
        this.place = place;
    }

    public Notice notice() {
        return notice;
    }

    /** In the text of the expression, which begins at 1:1. */
    public Place place() {
        return place;
    }
}
