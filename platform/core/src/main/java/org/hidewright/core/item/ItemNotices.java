package org.hidewright.core.item;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with an item; each is told with the number of its mark on the drawing. */
public final class ItemNotices {
    public static final NoticeKind ITEM_CROSSES = NoticeKind.check("item-crosses");
    public static final NoticeKind ITEM_HOLE_OUTSIDE = NoticeKind.check("item-hole-outside");
    public static final NoticeKind ITEM_HOLES_MEET = NoticeKind.check("item-holes-meet");
    public static final NoticeKind ITEM_HOLE_NEAR_EDGE = NoticeKind.check("item-hole-near-edge");
    public static final NoticeKind ITEM_HOLE_NEAR_FOLD = NoticeKind.check("item-hole-near-fold");
    public static final NoticeKind ITEM_HOLES_NEAR = NoticeKind.check("item-holes-near");
    public static final NoticeKind ITEM_STITCH_NEAR_EDGE = NoticeKind.check("item-stitch-near-edge");
    public static final NoticeKind ITEM_STITCH_OFF_PART = NoticeKind.check("item-stitch-off-part");
    public static final NoticeKind ITEM_STITCHES_NEAR = NoticeKind.check("item-stitches-near");
    public static final NoticeKind ITEM_STITCH_THROUGH_FITTING = NoticeKind.check("item-stitch-through-fitting");
    public static final NoticeKind ITEM_LITTLE_LEFT = NoticeKind.check("item-little-left");
    public static final NoticeKind ITEM_FOLD_TIGHT = NoticeKind.check("item-fold-tight");
    public static final NoticeKind ITEM_ENDS_SOON = NoticeKind.check("item-ends-soon");
    public static final NoticeKind ITEM_COUNTS_DIFFER = NoticeKind.check("item-counts-differ");
    public static final NoticeKind ITEM_MORE_CHECKS = NoticeKind.note("item-more-checks");

    private ItemNotices() {}

    public static List<NoticeKind> all() {
        return List.of(
                ITEM_CROSSES,
                ITEM_HOLE_OUTSIDE,
                ITEM_HOLES_MEET,
                ITEM_HOLE_NEAR_EDGE,
                ITEM_HOLE_NEAR_FOLD,
                ITEM_HOLES_NEAR,
                ITEM_STITCH_NEAR_EDGE,
                ITEM_STITCH_OFF_PART,
                ITEM_STITCHES_NEAR,
                ITEM_STITCH_THROUGH_FITTING,
                ITEM_LITTLE_LEFT,
                ITEM_FOLD_TIGHT,
                ITEM_ENDS_SOON,
                ITEM_COUNTS_DIFFER,
                ITEM_MORE_CHECKS);
    }
}
