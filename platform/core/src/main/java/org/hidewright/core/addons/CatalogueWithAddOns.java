package org.hidewright.core.addons;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.catalogue.Away;
import org.hidewright.core.catalogue.Away.Why;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;

/** What is installed, and what would be if it were turned on; the bundles are looked through only when something is missing. */
public record CatalogueWithAddOns(Catalogue catalogue, Supplier<AddOns> addOns) implements Catalogue {
    private static final Map<State, Why> AWAY =
            Map.of(State.OFF, Why.OFF, State.FAILED, Why.FAILED, State.WAITING, Why.WAITING);

    @Override
    public Optional<Away> away(String id) {
        return addOns.get().all().stream()
                .filter(addOn ->
                        AWAY.containsKey(addOn.state()) && addOn.calculators().contains(id))
                .map(addOn -> new Away(addOn.id(), AWAY.get(addOn.state())))
                .findFirst();
    }

    @Override
    public Optional<Installed> find(String id) {
        return catalogue.find(id);
    }

    @Override
    public List<String> ids() {
        return catalogue.ids();
    }

    @Override
    public Tables tables() {
        return catalogue.tables();
    }

    @Override
    public List<Contributor> contributors() {
        return catalogue.contributors();
    }

    @Override
    public List<Remark> problems() {
        return catalogue.problems();
    }
}
