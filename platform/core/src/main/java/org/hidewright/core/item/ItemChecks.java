package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.core.wording.ItemWords;

/** Everything that is wrong with an item, each with its place. */
public final class ItemChecks {
    /** Of one item; nobody mends more at a time, and a pattern full of marks shows none. */
    static final int MOST = 40;

    private ItemChecks() {}

    /** The checks of the parts in their order, then those of seams; the first {@value #MOST}. */
    public static List<ItemCheck> of(Item item) {
        List<ItemCheck> all = all(item);
        return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
    }

    /** The same as they are told, numbered as their marks are; how many more there are is told at the end. */
    public static List<Notice> told(Item item, ItemWords words) {
        List<ItemCheck> all = all(item);
        List<Notice> told = new ArrayList<>();
        for (ItemCheck check : all.subList(0, Math.min(MOST, all.size()))) {
            told.add(check.notice(told.size() + 1, words));
        }
        if (all.size() > MOST) {
            told.add(ItemNotices.ITEM_MORE_CHECKS.with(all.size() - MOST));
        }
        return List.copyOf(told);
    }

    private static List<ItemCheck> all(Item item) {
        List<ItemCheck> checks = new ArrayList<>();
        item.parts().forEach(part -> checks.addAll(PartChecks.of(part, heldBy(item, part))));
        item.seams().forEach(seam -> counts(item, seam, checks));
        return checks;
    }

    /** Ids of the holes of a part that a fitting goes through. */
    private static List<String> heldBy(Item item, Part part) {
        return item.fittings().stream()
                .map(Fitting::holes)
                .flatMap(List::stream)
                .filter(on -> on.part().equals(part.id()))
                .map(OnPart::id)
                .toList();
    }

    private static void counts(Item item, Seam seam, List<ItemCheck> checks) {
        OnPart first = seam.lines().get(0);
        int wanted = item.stitchLine(first).orElseThrow().holes().size();
        for (OnPart on : seam.lines()) {
            StitchLine line = item.stitchLine(on).orElseThrow();
            if (line.holes().size() != wanted) {
                checks.add(ItemCheck.of(
                        ItemNotices.ITEM_COUNTS_DIFFER,
                        item.part(on.part()).orElseThrow(),
                        line.line().segments().get(0).start(),
                        seam,
                        ItemCheck.on(item.part(on.part()).orElseThrow(), on.id()),
                        line.holes().size(),
                        ItemCheck.on(item.part(first.part()).orElseThrow(), first.id()),
                        wanted));
            }
        }
    }
}
