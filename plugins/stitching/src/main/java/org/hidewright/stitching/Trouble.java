package org.hidewright.stitching;

import org.hidewright.api.calculator.Notice;

/** Something in what was typed that leaves no line of stitches. */
final class Trouble extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Notice notice;

    Trouble(Notice notice) {
        super(notice.toString());
        this.notice = notice;
    }

    Notice notice() {
        return notice;
    }
}
