package org.hidewright.core.item;

import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with an item; each is told with the number of its mark on the drawing. */
final class ItemNotices {
    static final NoticeKind CROSSES = NoticeKind.check("item-crosses");
    static final NoticeKind HOLE_OUTSIDE = NoticeKind.check("item-hole-outside");
    static final NoticeKind HOLES_MEET = NoticeKind.check("item-holes-meet");
    static final NoticeKind HOLE_NEAR_EDGE = NoticeKind.check("item-hole-near-edge");
    static final NoticeKind HOLE_NEAR_FOLD = NoticeKind.check("item-hole-near-fold");
    static final NoticeKind HOLES_NEAR = NoticeKind.check("item-holes-near");
    static final NoticeKind STITCH_NEAR_EDGE = NoticeKind.check("item-stitch-near-edge");
    static final NoticeKind STITCH_OFF_PART = NoticeKind.check("item-stitch-off-part");
    static final NoticeKind STITCHES_NEAR = NoticeKind.check("item-stitches-near");
    static final NoticeKind STITCH_THROUGH_FITTING = NoticeKind.check("item-stitch-through-fitting");
    static final NoticeKind LITTLE_LEFT = NoticeKind.check("item-little-left");
    static final NoticeKind FOLD_TIGHT = NoticeKind.check("item-fold-tight");
    static final NoticeKind ENDS_SOON = NoticeKind.check("item-ends-soon");
    static final NoticeKind COUNTS_DIFFER = NoticeKind.check("item-counts-differ");
    static final NoticeKind MORE = NoticeKind.note("item-more-checks");

    private ItemNotices() {}
}
