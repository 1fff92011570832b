package org.hidewright.addons;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;

/** Who does not work without a bundle: its manifest needs what that offers, or its texts ask a calculator of it. */
final class Dependents {
    private final Shop shop;
    private final Needs needs;

    Dependents(Shop shop, Needs needs) {
        this.shop = shop;
        this.needs = needs;
    }

    /** Ids of those that work now and would not without it, in alphabetical order. */
    List<String> of(AddOn gone) {
        List<AddOn> on = shop.all().stream().filter(Dependents::isOn).toList();
        Set<String> with = calculators(on);
        Set<String> without =
                calculators(on.stream().filter(addOn -> !isSame(addOn, gone)).toList());
        Set<String> found = new TreeSet<>();
        for (AddOn addOn : on) {
            if (!isSame(addOn, gone) && with.containsAll(addOn.asks()) && !without.containsAll(addOn.asks())) {
                found.add(addOn.id());
            }
        }
        if (gone.origin() == Origin.MAKER) {
            Map<String, List<Listed>> pool = new TreeMap<>();
            shop.installed().forEach((id, here) -> {
                if (here.runs()) {
                    pool.put(id, List.of(here.listed()));
                }
            });
            Map<String, List<Listed>> less = new TreeMap<>(pool);
            less.remove(gone.id());
            less.keySet().stream()
                    .filter(id -> isMet(id, pool, with) && !isMet(id, less, with))
                    .forEach(found::add);
        }
        return List.copyOf(found);
    }

    private static boolean isOn(AddOn addOn) {
        return addOn.state() == State.ON || addOn.state() == State.NEXT_START;
    }

    private static boolean isSame(AddOn one, AddOn other) {
        return one.file().equals(other.file());
    }

    private static Set<String> calculators(List<AddOn> all) {
        Set<String> calculators = new TreeSet<>();
        all.forEach(addOn -> calculators.addAll(addOn.calculators()));
        return calculators;
    }

    private boolean isMet(String id, Map<String, List<Listed>> pool, Set<String> calculators) {
        try {
            return needs.of(List.of(id), pool, calculators).containsKey(id);
        } catch (Needs.Unmet broken) {
            return false;
        }
    }
}
