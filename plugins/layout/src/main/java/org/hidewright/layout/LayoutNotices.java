package org.hidewright.layout;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What this bundle tells. */
final class LayoutNotices {
    static final NoticeKind NO_SHEETS = NoticeKind.stop("layout-no-sheets");
    static final NoticeKind NO_SUCH_LEATHER = NoticeKind.stop("layout-no-such-leather");
    static final NoticeKind NO_SUCH_PART = NoticeKind.check("layout-no-such-part");
    static final NoticeKind NO_SUCH_REGION = NoticeKind.check("layout-no-such-region");
    static final NoticeKind NO_DIRECTION = NoticeKind.check("layout-no-direction");
    static final NoticeKind ONLY_NOWHERE = NoticeKind.check("layout-only-nowhere");
    static final NoticeKind TOO_MANY_REGIONS = NoticeKind.stop("layout-too-many-regions");
    static final NoticeKind TOO_MANY = NoticeKind.stop("layout-too-many");
    static final NoticeKind UNREADABLE = NoticeKind.stop("layout-unreadable");
    static final NoticeKind NO_SUCH_FLAW = NoticeKind.stop("layout-no-such-flaw");
    static final NoticeKind CROSSES = NoticeKind.stop("layout-crosses");
    static final NoticeKind ALL_RIM = NoticeKind.stop("layout-all-rim");
    static final NoticeKind CURRENCIES = NoticeKind.stop("layout-two-currencies");
    static final NoticeKind OVERLAP = NoticeKind.stop("layout-overlap");
    static final NoticeKind OFF_SHEET = NoticeKind.stop("layout-off-sheet");
    static final NoticeKind OVER_HOLE = NoticeKind.stop("layout-over-hole");
    static final NoticeKind ON_FLAW = NoticeKind.stop("layout-on-flaw");
    static final NoticeKind OFF_REGION = NoticeKind.stop("layout-off-region");
    static final NoticeKind MORE_FAULTS = NoticeKind.stop("layout-more-faults");
    static final NoticeKind FLAW_OUTSIDE = NoticeKind.stop("layout-flaw-outside");
    static final NoticeKind AGAINST_ITSELF = NoticeKind.check("layout-rule-against-itself");
    static final NoticeKind TURNED = NoticeKind.stop("layout-turned");
    static final NoticeKind NO_SUCH_PIECE = NoticeKind.stop("layout-no-such-piece");
    static final NoticeKind NO_SUCH_SHEET = NoticeKind.stop("layout-no-such-sheet");
    static final NoticeKind COUNTED_ONE = NoticeKind.check("layout-counted-one");
    static final NoticeKind NO_PAIRS = NoticeKind.check("layout-no-pairs");
    static final NoticeKind TWO_SHEETS = NoticeKind.check("layout-pair-on-two-sheets");
    static final NoticeKind TWO_THICKNESSES = NoticeKind.check("layout-two-thicknesses");
    static final NoticeKind TOO_LARGE = NoticeKind.check("layout-too-large");
    static final NoticeKind LEFT_OVER = NoticeKind.check("layout-left-over");

    static final List<NoticeKind> ALL = List.of(
            NO_SHEETS,
            NO_SUCH_LEATHER,
            NO_SUCH_PART,
            NO_SUCH_REGION,
            NO_DIRECTION,
            ONLY_NOWHERE,
            TOO_MANY_REGIONS,
            TOO_MANY,
            UNREADABLE,
            NO_SUCH_FLAW,
            CROSSES,
            ALL_RIM,
            CURRENCIES,
            OVERLAP,
            OFF_SHEET,
            OVER_HOLE,
            ON_FLAW,
            OFF_REGION,
            MORE_FAULTS,
            FLAW_OUTSIDE,
            AGAINST_ITSELF,
            TURNED,
            NO_SUCH_PIECE,
            NO_SUCH_SHEET,
            COUNTED_ONE,
            NO_PAIRS,
            TWO_SHEETS,
            TWO_THICKNESSES,
            TOO_LARGE,
            LEFT_OVER);

    private LayoutNotices() {}
}
