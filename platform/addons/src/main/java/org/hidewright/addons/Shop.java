package org.hidewright.addons;

import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.addons.FolderChange.Wanted;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.store.FileTrouble;

/**
 * What is installed in a workshop and turned on in it, and how that is changed: the jars that come are looked over, nothing of the
 * program is touched, and the whole is one change.
 */
final class Shop {
    private final Path settings;
    private final AddOns addOns;
    private final ToldByLauncher launcher;
    private final Soundness sound;
    private final FolderChange change;
    private final Choices choices;
    private final Agreed agreed;

    Shop(Path settings, AddOns addOns, ToldByLauncher launcher) {
        this.settings = settings;
        this.addOns = addOns;
        this.launcher = launcher;
        this.sound = new Soundness(launcher.look(), () -> program().keySet());
        this.change = new FolderChange(settings, launcher.finish());
        this.choices = new Choices(settings.resolve("addons.txt"));
        this.agreed = new Agreed(settings);
    }

    Soundness sound() {
        return sound;
    }

    /** Versions of the bundles that came with the program, by their names; empty where one cannot be turned off. */
    Map<String, String> program() {
        Map<String, String> program = new TreeMap<>();
        launcher.platform().forEach(id -> program.put(id, ""));
        addOns.all().stream()
                .filter(addOn -> addOn.origin() == Origin.PROGRAM)
                .forEach(addOn -> program.put(addOn.id(), addOn.version()));
        return program;
    }

    List<AddOn> all() {
        return addOns.all();
    }

    private Stream<AddOn> ofProgram() {
        return addOns.all().stream().filter(addOn -> addOn.origin() == Origin.PROGRAM);
    }

    /** Ids of the calculators that the program has, also while their bundles are turned off. */
    Set<String> programCalculators() {
        return ofProgram()
                .flatMap(addOn -> addOn.calculators().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The bundles of the program that texts draw with or ask, and what those ask in turn.
     *
     * @param listed whose texts
     * @param on bundles of the program that are wanted too
     */
    Set<String> programNeeded(Collection<Listed> listed, Set<String> on) {
        Set<String> needed = new TreeSet<>(on);
        Set<String> asked = new TreeSet<>();
        listed.forEach(one -> asked.addAll(one.asks()));
        int before;
        do {
            before = needed.size();
            ofProgram().filter(addOn -> needed.contains(addOn.id())).forEach(addOn -> asked.addAll(addOn.asks()));
            ofProgram()
                    .filter(addOn -> addOn.calculators().stream().anyMatch(asked::contains))
                    .forEach(addOn -> needed.add(addOn.id()));
        } while (needed.size() > before);
        return needed;
    }

    /** What the maker has installed, by id; of two jars of one name the one that is used. */
    Map<String, Installed> installed() {
        Map<String, Installed> installed = new TreeMap<>();
        for (AddOn addOn : addOns.all()) {
            if (addOn.origin() == Origin.MAKER && !addOn.id().isEmpty()) {
                try {
                    Listed listed = Listed.of(
                            Candidate.installed(addOn.file()),
                            addOn.file().toUri().toString());
                    installed.merge(
                            addOn.id(),
                            new Installed(addOn, listed),
                            (one, other) -> other.runs() && !one.runs() ? other : one);
                } catch (FileTrouble unreadable) {
                    continue; // it does not start either, and says so
                }
            }
        }
        return installed;
    }

    /**
     * A bundle that the maker has installed.
     *
     * @param listed as an index would list it
     */
    record Installed(AddOn addOn, Listed listed) {
        /** Whether it runs, or will with the next start. */
        boolean runs() {
            return addOn.state() == State.ON || addOn.state() == State.NEXT_START || addOn.state() == State.LEFT_OUT;
        }
    }

    /**
     * What is to come.
     *
     * @param candidate the bundle
     * @param needed whether only another needs it
     */
    record Coming(Candidate candidate, boolean needed) {}

    /**
     * Makes a change, all of it or nothing.
     *
     * @param turned whether a bundle is on from then on, by the ids of those that are turned
     * @param started ids of bundles here that may start from then on, since it is said what they may do
     * @param only whether it is only told what would be done
     */
    AddOnChange make(List<Coming> coming, Map<String, Boolean> turned, Set<String> started, boolean only)
            throws FileTrouble {
        List<AddOn> all = addOns.all();
        Map<String, byte[]> come = new LinkedHashMap<>();
        Set<String> go = new TreeSet<>();
        List<Moved> moved = new ArrayList<>();
        Map<byte[], String> named = new LinkedHashMap<>();
        boolean strange = false;
        for (Coming one : coming) {
            List<AddOn> there = givingWay(one.candidate().id(), all);
            come.put(
                    place(one.candidate().id(), all).getFileName().toString(),
                    one.candidate().jar());
            there.forEach(addOn -> go.add(addOn.file().getFileName().toString()));
            moved.add(new Moved(
                    one.candidate().id(),
                    there.stream()
                            .map(AddOn::version)
                            .filter(version -> !version.isEmpty())
                            .findFirst()
                            .orElse(""),
                    one.candidate().described().version(),
                    one.candidate().described().components().calculators(),
                    one.needed()));
            // also what is signed: it goes on when who signed it is named no more, and nobody else is
            named.put(one.candidate().jar(), one.candidate().id());
            strange |= one.candidate().described().code()
                    && isStrange(one.candidate().from());
        }
        for (AddOn addOn : all) {
            if (addOn.state() == State.WAITING && started.contains(addOn.id())) {
                named.put(Candidate.installed(addOn.file()).jar(), addOn.id());
                strange |= addOn.code();
            }
        }
        go.removeAll(come.keySet());
        moved.sort(Comparator.comparing(Moved::id));
        AddOnChange told = new AddOnChange(moved, turnedTo(turned, true), turnedTo(turned, false), strange);
        if (!only) {
            if (!named.isEmpty()) {
                agreed.add(named);
            }
            make(new Wanted(come, List.copyOf(go), choices.turned(turned)));
        }
        return told;
    }

    private static List<String> turnedTo(Map<String, Boolean> turned, boolean on) {
        return turned.keySet().stream()
                .filter(id -> turned.get(id) == on)
                .sorted()
                .toList();
    }

    /** What is packed here out of a folder, nobody has signed. */
    private boolean isStrange(Path from) {
        return Files.isDirectory(from)
                || !launcher.consent().apply(from.toFile()).isEmpty();
    }

    /** Where a bundle will lie. */
    Path place(String id, List<AddOn> all) {
        return new AddOnsFolder(settings)
                .place(id, givingWay(id, all).stream().map(AddOn::file).toList());
    }

    private void make(Wanted wanted) throws FileTrouble {
        if (!wanted.isNothing()) {
            change.make(wanted);
        }
    }

    /** What has the name, and what should have been it and cannot be read. */
    static List<AddOn> givingWay(String id, List<AddOn> all) {
        return all.stream()
                .filter(there -> there.origin() == Origin.MAKER)
                .filter(there -> there.id().equals(id)
                        || there.id().isEmpty() && there.name().equals(id + ".jar"))
                .toList();
    }

    /** Ids of what is turned off. */
    Set<String> off() {
        return choices.off();
    }

    /** Puts back what was there before the last change; empty where none was made, or it is all as it was. */
    Optional<AddOnChange> back() throws FileTrouble {
        Optional<Wanted> before = change.before();
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Map<String, byte[]> come = new LinkedHashMap<>(before.get().come());
        Map<String, Moved> moved = new TreeMap<>();
        for (Path jar : new AddOnsFolder(settings).jars()) {
            String name = jar.getFileName().toString();
            Candidate there = Candidate.kept(jar);
            if (Arrays.equals(come.get(name), there.jar())) {
                come.remove(name);
            } else if (come.containsKey(name) || before.get().go().contains(name)) {
                moved.put(there.id(), moved(there, true));
            }
        }
        for (String jar : come.keySet()) {
            Candidate again = Candidate.kept(change.heldBefore(jar));
            moved.merge(
                    again.id(),
                    moved(again, false),
                    (gone, comes) -> new Moved(gone.id(), gone.before(), comes.now(), comes.calculators(), false));
        }
        Set<String> off = choices.off();
        Optional<byte[]> said =
                before.get().choices().filter(bytes -> !Choices.off(bytes).equals(off));
        Set<String> offBefore = said.map(Choices::off).orElse(off);
        Wanted wanted = new Wanted(come, before.get().go(), said);
        if (wanted.isNothing()) {
            return Optional.empty();
        }
        change.make(wanted);
        return Optional.of(
                new AddOnChange(List.copyOf(moved.values()), without(off, offBefore), without(offBefore, off), false));
    }

    private static Moved moved(Candidate jar, boolean goes) {
        String version = jar.described().version();
        return new Moved(
                jar.id(),
                goes ? version : "",
                goes ? "" : version,
                jar.described().components().calculators(),
                false);
    }

    private static List<String> without(Set<String> all, Set<String> others) {
        return all.stream().filter(id -> !others.contains(id)).sorted().toList();
    }

    /** Where a file lies that an index lists, below the folder of the index. */
    static Optional<Path> below(Path folder, String url) {
        try {
            Path base = folder.toAbsolutePath().normalize();
            Path jar = Path.of(base.toUri().resolve(url)).normalize();
            return jar.startsWith(base) && Files.exists(base) ? Optional.of(jar) : Optional.empty();
        } catch (IllegalArgumentException | FileSystemNotFoundException elsewhere) {
            return Optional.empty();
        }
    }
}
