package org.hidewright.core.addons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.wording.Remark;

/**
 * An id of a calculator that two bundles bring: what came with the program keeps it, and of two others the one whose name comes
 * first in the alphabet.
 *
 * @param id of the calculator
 * @param keeps the bundle whose calculator is used
 * @param left the bundle whose calculator is left out
 */
public record TakenId(String id, String keeps, String left) {
    /** A bundle with what it brings. */
    private record Bringer(String id, boolean program, List<String> calculators) {}

    /** Those among bundles that are on, or will be. */
    public static List<TakenId> in(List<AddOn> all) {
        return among(bringers(all));
    }

    /**
     * Those there will be after a change that one of the bundles it touched has a part in.
     *
     * @param all the bundles before it
     */
    public static List<TakenId> after(List<AddOn> all, AddOnChange change) {
        Map<String, Bringer> byId = new TreeMap<>();
        bringers(all.stream()
                        .filter(addOn -> !change.off().contains(addOn.id()))
                        .toList())
                .forEach(bringer -> byId.put(bringer.id(), bringer));
        all.stream()
                .filter(addOn -> change.on().contains(addOn.id()))
                .forEach(addOn -> byId.put(addOn.id(), bringer(addOn)));
        Set<String> touched = new TreeSet<>(change.on());
        for (Moved moved : change.moved()) {
            touched.add(moved.id());
            if (moved.now().isEmpty()) {
                byId.remove(moved.id());
            } else {
                byId.put(moved.id(), new Bringer(moved.id(), false, moved.calculators()));
            }
        }
        return among(List.copyOf(byId.values())).stream()
                .filter(taken -> touched.contains(taken.keeps()) || touched.contains(taken.left()))
                .toList();
    }

    private static List<Bringer> bringers(List<AddOn> all) {
        return all.stream()
                .filter(addOn -> addOn.state() == State.ON || addOn.state() == State.NEXT_START)
                .map(TakenId::bringer)
                .toList();
    }

    private static Bringer bringer(AddOn addOn) {
        return new Bringer(addOn.id(), addOn.origin() == Origin.PROGRAM, addOn.calculators());
    }

    private static List<TakenId> among(List<Bringer> all) {
        Map<String, String> kept = new TreeMap<>();
        List<TakenId> taken = new ArrayList<>();
        all.stream()
                .sorted(Comparator.comparing((Bringer bringer) -> !bringer.program())
                        .thenComparing(Bringer::id))
                .forEach(bringer -> bringer.calculators().forEach(id -> {
                    String keeps = kept.putIfAbsent(id, bringer.id());
                    if (keeps != null && !keeps.equals(bringer.id())) {
                        taken.add(new TakenId(id, keeps, bringer.id()));
                    }
                }));
        return List.copyOf(taken);
    }

    /** As a maker is told it. */
    public Remark remark() {
        return Remark.of(CatalogueNotices.ID_TAKEN.with(left, id, keeps), CoreTexts.TEXTS);
    }
}
