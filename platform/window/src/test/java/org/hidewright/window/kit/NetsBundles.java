package org.hidewright.window.kit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.Offer.Standing;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;

/** Two bundles, one of the program and one of the maker, which come and go as the real ones do; and the catalogue of them. */
public final class NetsBundles implements AddOns, Catalogue {
    private final Map<String, AddOn> chosen = new TreeMap<>();
    private final Set<String> running = new HashSet<>(List.of("org.example.bags", "org.example.cords"));
    private final Set<String> bad = new HashSet<>();
    /** Came from the index last, and goes when that is taken back; empty where nothing did. */
    private String last = "";

    private final List<String> offered = new ArrayList<>(List.of("org.example.cords"));

    public NetsBundles() {
        put("org.example.bags", "Bags", "Net makers", Origin.PROGRAM, State.ON, "bag");
        put("org.example.cords", "Cords", "", Origin.MAKER, State.ON, "cord");
    }

    private void put(String id, String name, String maker, Origin origin, State state, String calculator) {
        chosen.put(
                id,
                new AddOn(
                        id,
                        name,
                        maker,
                        "1.0.0",
                        origin,
                        state,
                        "",
                        List.of(calculator),
                        List.of(),
                        Path.of(id + ".jar")));
    }

    /** One more of the maker, which runs. */
    public void another(String id, String calculator) {
        put(id, id, "", Origin.MAKER, State.ON, calculator);
    }

    /** One of the maker that brings a table. */
    public void tableOf(String id, String table) {
        chosen.put(
                id,
                new AddOn(
                        id,
                        id,
                        "",
                        "1.0.0",
                        Origin.MAKER,
                        State.ON,
                        "",
                        List.of(),
                        List.of(table),
                        List.of(),
                        true,
                        "",
                        Path.of(id + ".jar"),
                        Map.of()));
    }

    /** One that is texts alone and was copied in. */
    public void textsThatWait(String id) {
        chosen.put(
                id,
                new AddOn(
                        id,
                        id,
                        "",
                        "1.0.0",
                        Origin.MAKER,
                        State.WAITING,
                        "",
                        List.of("net"),
                        List.of(),
                        List.of(),
                        false,
                        "",
                        Path.of(id + ".jar"),
                        Map.of()));
    }

    /** The index has one more, with another cord. */
    public void offersToo(String id) {
        offered.add(id);
    }

    public void startsBadly(String id) {
        bad.add(id);
    }

    private static String name(String id) {
        return id.equals("org.example.cords") ? "Cords" : id;
    }

    private Offer offer(String id) {
        Standing standing = chosen.containsKey(id) ? Standing.HERE : Standing.NEW;
        return new Offer(
                id,
                name(id),
                "Rope walk",
                "1.0.0",
                List.of("cord"),
                List.of("knots"),
                standing,
                standing == Standing.HERE ? "1.0.0" : "");
    }

    private static AddOn with(AddOn addOn, State state, String why) {
        return new AddOn(
                addOn.id(),
                addOn.name(),
                addOn.maker(),
                addOn.version(),
                addOn.origin(),
                state,
                why,
                addOn.calculators(),
                addOn.tables(),
                addOn.file());
    }

    @Override
    public synchronized List<AddOn> all() {
        return List.copyOf(chosen.values());
    }

    @Override
    public synchronized List<AddOn> install(List<Path> given, boolean replace, boolean follow) {
        put("org.example.cords", "Cords", "", Origin.MAKER, State.NEXT_START, "cord");
        return List.of(chosen.get("org.example.cords"));
    }

    @Override
    public List<Carried> carried(List<Path> given) {
        return List.of();
    }

    @Override
    public synchronized AddOn remove(String name) throws FileTrouble {
        if (chosen.get(name).origin() == Origin.PROGRAM) {
            throw new FileTrouble(List.of(Remark.of(AddOnNotices.ADD_ON_CAME_WITH.with(name), CoreTexts.TEXTS)), null);
        }
        return chosen.remove(name);
    }

    @Override
    public synchronized AddOn turn(String name, boolean on) {
        AddOn before = chosen.get(name);
        chosen.put(name, with(before, on ? State.NEXT_START : State.OFF, ""));
        return before;
    }

    /** Bags are made of cords. */
    @Override
    public List<Remark> dependents(String name) {
        return name.equals("org.example.cords")
                ? List.of(Remark.of(AddOnNotices.ADD_ON_NEEDED.with("org.example.bags", name), CoreTexts.TEXTS))
                : List.of();
    }

    @Override
    public synchronized List<Remark> takeEffect() {
        List<Remark> remarks = new ArrayList<>();
        running.removeIf(id -> !chosen.containsKey(id) || chosen.get(id).state() == State.OFF);
        for (AddOn addOn : all()) {
            if (addOn.state() == State.NEXT_START && bad.contains(addOn.id())) {
                chosen.put(addOn.id(), with(addOn, State.FAILED, "a knot in it"));
                remarks.add(
                        Remark.of(AddOnNotices.ADD_ON_NOT_STARTED.with(addOn.name(), "a knot in it"), CoreTexts.TEXTS));
            } else if (addOn.state() == State.NEXT_START) {
                chosen.put(addOn.id(), with(addOn, State.ON, ""));
                running.add(addOn.id());
            }
        }
        return remarks;
    }

    /** One index, wherever it is asked for: it offers cords, and what else a test says. What it brings is there with the next effect. */
    @Override
    public AddOnIndexes indexes() {
        return new AddOnIndexes() {
            @Override
            public Index write(Path folder) {
                throw new UnsupportedOperationException();
            }

            @Override
            public Index read(Path from) throws FileTrouble {
                if (from.endsWith("nowhere.xml")) {
                    throw new FileTrouble(
                            List.of(Remark.of(
                                    AddOnNotices.ADD_ON_INDEX_NOT_THERE.with("nowhere.xml", "."), CoreTexts.TEXTS)),
                            null);
                }
                return new Index(
                        from, offered.stream().map(NetsBundles.this::offer).toList());
            }

            @Override
            public AddOnChange install(Path from, List<String> names, boolean older) {
                synchronized (NetsBundles.this) {
                    String id = names.get(0).split("@")[0];
                    put(id, name(id), "", Origin.MAKER, State.NEXT_START, "cord");
                    last = id;
                    return new AddOnChange(
                            List.of(new Moved(id, "", "1.0.0", List.of("cord"), false)), List.of(), List.of(), false);
                }
            }

            @Override
            public AddOnChange update(Path from, List<String> names) {
                return new AddOnChange(List.of(), List.of(), List.of(), false);
            }

            @Override
            public AddOnChange back() throws FileTrouble {
                synchronized (NetsBundles.this) {
                    if (last.isEmpty()) {
                        throw new FileTrouble(
                                List.of(Remark.of(AddOnNotices.ADD_ON_BACK_NOTHING.with(), CoreTexts.TEXTS)), null);
                    }
                    Moved goes = new Moved(last, "1.0.0", "", List.of("cord"), false);
                    chosen.remove(last);
                    last = "";
                    return new AddOnChange(List.of(goes), List.of(), List.of(), false);
                }
            }
        };
    }

    @Override
    public ShopProfiles profiles() {
        throw new UnsupportedOperationException();
    }

    @Override
    public TrustedMakers makers() {
        throw new UnsupportedOperationException();
    }

    @Override
    public synchronized Optional<Installed> find(String id) {
        return chosen.values().stream()
                .filter(addOn ->
                        running.contains(addOn.id()) && addOn.calculators().contains(id))
                .findFirst()
                .map(addOn -> new Installed(
                        id.equals("bag") ? RecordCalculator.of(new Bag()) : RecordCalculator.of(new Cord()),
                        addOn.id()));
    }

    @Override
    public synchronized List<String> ids() {
        return chosen.values().stream()
                .filter(addOn -> running.contains(addOn.id()))
                .flatMap(addOn -> addOn.calculators().stream())
                .sorted()
                .toList();
    }

    @Override
    public Tables tables() {
        return Nets.catalogue().tables();
    }

    @Override
    public List<Contributor> contributors() {
        return List.of();
    }

    @Override
    public List<Remark> problems() {
        return List.of();
    }
}
