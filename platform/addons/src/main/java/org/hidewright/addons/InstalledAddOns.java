package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/**
 * The bundles that the launcher found, which tells by a service what became of each, and the folder of settings that it
 * looks into.
 */
@Component
public final class InstalledAddOns implements AddOns {
    /** As the launcher has it: what came with the program, and what was installed. */
    private static final int PROGRAM_LEVEL = 40;

    private static final int MAKER_LEVEL = 50;
    /** As at the start of the program. */
    private static final int START_SECONDS = 10;

    private final Map<String, String> states;
    private final Set<String> platform;
    private final AddOnsFolder folder;
    private final Choices choices;
    private final RunningBundles running;
    private final Soundness sound;
    /** When each jar was changed last before it was started. */
    private final Map<Path, FileTime> started = new HashMap<>();

    @Activate
    public InstalledAddOns(BundleContext context) {
        this(
                Path.of(context.getProperty("hidewright.settings")),
                ToldByLauncher.to(context),
                new RunningBundles(context, Integer.getInteger("hidewright.start-limit", START_SECONDS)));
    }

    /**
     * Add-ons of a folder of settings.
     *
     * @param launcher what the launcher tells of its start
     * @param running the bundles that run
     */
    InstalledAddOns(Path settings, ToldByLauncher launcher, RunningBundles running) {
        this.states = new TreeMap<>(launcher.states());
        this.platform = launcher.platform();
        this.folder = new AddOnsFolder(settings.resolve("addons"));
        this.choices = new Choices(settings.resolve("addons.txt"));
        this.running = running;
        this.sound = new Soundness(launcher.look(), this::ofProgram);
        states.keySet().forEach(jar -> started.put(Path.of(jar), changed(Path.of(jar))));
    }

    /** Names of the bundles that came with the program, whether they can be turned off or not. */
    private Set<String> ofProgram() {
        Set<String> names = new TreeSet<>(platform);
        all().stream()
                .filter(addOn -> addOn.origin() == Origin.PROGRAM)
                .map(AddOn::id)
                .forEach(names::add);
        return names;
    }

    @Override
    public synchronized List<AddOn> all() {
        List<AddOn> all = new ArrayList<>();
        states.forEach((jar, state) -> all.add(addOn(Path.of(jar), state)));
        all.sort(Comparator.comparing(AddOn::origin)
                .thenComparing(AddOn::id)
                .thenComparing(addOn -> addOn.file().toString()));
        return all;
    }

    private AddOn addOn(Path jar, String state) {
        Origin origin = folder.holds(jar) ? Origin.MAKER : Origin.PROGRAM;
        State became = switch (state) {
            case "on" -> State.ON;
            case "off" -> State.OFF;
            case "left-out" -> State.LEFT_OUT;
            default -> State.FAILED;
        };
        String why = became == State.FAILED ? state : "";
        try (Entries entries = Entries.ofJar(jar)) {
            return addOn(Described.read(jar, entries), origin, became, why, jar);
        } catch (IOException | FileTrouble noBundle) {
            return new AddOn("", fileName(jar), "", "", origin, became, why, List.of(), List.of(), jar);
        }
    }

    private static AddOn addOn(Described described, Origin origin, State state, String why, Path jar) {
        Components components = described.components();
        return new AddOn(
                described.id(),
                described.name(),
                described.maker(),
                described.version(),
                origin,
                state,
                why,
                components.calculators(),
                components.tables(),
                jar);
    }

    @Override
    public synchronized List<Remark> takeEffect() {
        Set<Path> jars = new LinkedHashSet<>(folder.jars());
        states.keySet().stream().map(Path::of).filter(jar -> !folder.holds(jar)).forEach(jars::add);
        List<Remark> remarks = new ArrayList<>();
        for (String known : List.copyOf(states.keySet())) {
            if (!jars.contains(Path.of(known))) {
                stop(Path.of(known), remarks);
                states.remove(known);
            }
        }
        Set<String> off = choices.off();
        for (Path jar : jars) {
            boolean on = !off.contains(addOn(jar, "on").id());
            boolean fresh = changed(jar).equals(started.get(jar));
            if (!on || !fresh) {
                stop(jar, remarks);
            }
            if (!on) {
                states.put(jar.toString(), "off");
            } else if (!running.runs(jar) && mayStart(jar, fresh)) {
                start(jar, remarks);
            }
        }
        return List.copyOf(remarks);
    }

    /** What failed, or was left out, is not called again before the next start, unless its jar is another one now. */
    private boolean mayStart(Path jar, boolean fresh) {
        return !fresh || List.of("on", "off").contains(states.getOrDefault(jar.toString(), "on"));
    }

    private void start(Path jar, List<Remark> remarks) {
        started.put(jar, changed(jar));
        Optional<Phrase> unsound = folder.holds(jar) ? unsound(jar) : Optional.empty();
        if (unsound.isPresent()) {
            states.put(jar.toString(), inWords(unsound.get()));
            remarks.add(notStarted(jar, unsound.get()));
            return;
        }
        Optional<String> failed = running.start(jar, folder.holds(jar) ? MAKER_LEVEL : PROGRAM_LEVEL);
        states.put(jar.toString(), failed.orElse("on"));
        failed.ifPresent(why -> remarks.add(notStarted(jar, why)));
    }

    private Optional<Phrase> unsound(Path jar) {
        Optional<Phrase> packing = sound.packing(jar);
        if (packing.isPresent()) {
            return packing;
        }
        try (Entries entries = Entries.ofJar(jar)) {
            return sound.host(Described.read(jar, entries));
        } catch (IOException | FileTrouble noBundle) {
            return Optional.empty(); // the framework says so
        }
    }

    /** As the launcher’s sentences, which stand beside it. */
    private static String inWords(Phrase fault) {
        return CoreTexts.TEXTS.filled(
                "phrase." + fault.key(),
                Locale.ENGLISH,
                fault.args().stream().map(String::valueOf).toArray(String[]::new));
    }

    private void stop(Path jar, List<Remark> remarks) {
        try {
            running.stop(jar);
        } catch (BundleException e) {
            remarks.add(notStarted(jar, String.valueOf(e.getMessage())));
        }
    }

    private static Remark notStarted(Path jar, Object why) {
        return Remark.of(AddOnNotices.ADD_ON_NOT_STARTED.with(fileName(jar), why), CoreTexts.TEXTS);
    }

    private static FileTime changed(Path jar) {
        try {
            return Files.getLastModifiedTime(jar);
        } catch (IOException gone) {
            return FileTime.fromMillis(0);
        }
    }

    private static String fileName(Path jar) {
        return String.valueOf(jar.getFileName());
    }

    @Override
    public List<AddOn> install(List<Path> given, boolean replace, boolean follow) throws FileTrouble {
        List<Candidate> candidates = Candidate.of(given, sound, follow);
        Map<String, Candidate> byId = new TreeMap<>();
        for (Candidate candidate : candidates) {
            Candidate same = byId.putIfAbsent(candidate.id(), candidate);
            if (same != null) {
                throw Trouble.of(AddOnNotices.ADD_ON_TWICE.with(
                        same.from().toString(), candidate.from().toString(), candidate.id()));
            }
        }
        List<AddOn> all = all();
        Map<Path, byte[]> fresh = new LinkedHashMap<>();
        List<Path> giveWay = new ArrayList<>();
        List<AddOn> installed = new ArrayList<>();
        for (Candidate candidate : candidates) {
            mustNotBeOfProgram(candidate, all);
            Soundness.mustBeNone(candidate.from(), sound.host(candidate.described()));
            List<AddOn> there =
                    all.stream().filter(addOn -> givesWay(addOn, candidate)).toList();
            if (isThere(candidate, there)) {
                installed.add(there.get(0));
            } else {
                mustMakeRoom(candidate, there, replace);
                there.forEach(addOn -> giveWay.add(addOn.file()));
                Path place = folder.place(candidate, giveWay);
                fresh.put(place, candidate.jar());
                installed.add(addOn(candidate.described(), Origin.MAKER, became(candidate, all), "", place));
            }
        }
        folder.put(fresh, giveWay);
        return installed;
    }

    /** What has its name, and what should have been it and cannot be read. */
    private static boolean givesWay(AddOn there, Candidate candidate) {
        return there.origin() == Origin.MAKER
                && (there.id().equals(candidate.id())
                        || there.id().isEmpty() && there.name().equals(candidate.id() + ".jar"));
    }

    /** A choice outlives the bundle it was made for. */
    private static State became(Candidate candidate, List<AddOn> all) {
        return all.stream().anyMatch(there -> there.id().equals(candidate.id()) && there.state() == State.OFF)
                ? State.OFF
                : State.NEXT_START;
    }

    private void mustNotBeOfProgram(Candidate candidate, List<AddOn> all) throws FileTrouble {
        if (platform.contains(candidate.id())
                || all.stream()
                        .anyMatch(addOn ->
                                addOn.origin() == Origin.PROGRAM && addOn.id().equals(candidate.id()))) {
            throw Trouble.of(
                    AddOnNotices.ADD_ON_OF_PROGRAM.with(candidate.from().toString(), candidate.id()));
        }
    }

    private static boolean isThere(Candidate candidate, List<AddOn> there) throws FileTrouble {
        if (there.size() != 1) {
            return false;
        }
        Path jar = there.get(0).file();
        try {
            return Arrays.equals(candidate.jar(), Files.readAllBytes(jar));
        } catch (IOException e) {
            throw Trouble.notRead(jar, e);
        }
    }

    private static void mustMakeRoom(Candidate candidate, List<AddOn> there, boolean replace) throws FileTrouble {
        Optional<AddOn> whole =
                there.stream().filter(addOn -> !addOn.id().isEmpty()).findFirst();
        if (whole.isPresent() && !replace) {
            throw Trouble.of(AddOnNotices.ADD_ON_INSTALLED.with(
                    whole.get().id(),
                    whole.get().version(),
                    candidate.from().toString(),
                    candidate.described().version()));
        }
    }

    @Override
    public AddOn remove(String name) throws FileTrouble {
        AddOn found = find(name, addOn -> addOn.origin() == Origin.MAKER);
        if (found.origin() == Origin.PROGRAM) {
            throw Trouble.of(AddOnNotices.ADD_ON_CAME_WITH.with(found.id()));
        }
        folder.remove(found.file());
        if (found.state() == State.OFF) {
            choices.turn(found.id(), true); // or it would be off when it is installed again
        }
        return found;
    }

    @Override
    public AddOn turn(String name, boolean on) throws FileTrouble {
        AddOn found = find(name, addOn -> !addOn.id().isEmpty());
        if (found.id().isEmpty()) {
            throw Trouble.of(AddOnNotices.ADD_ON_NAMELESS.with(found.name()));
        }
        choices.turn(found.id(), on);
        return found;
    }

    /**
     * The bundle of this name.
     *
     * @param rather which one is meant where there are several
     */
    private AddOn find(String name, Predicate<AddOn> rather) throws FileTrouble {
        List<AddOn> all = all();
        List<AddOn> named = all.stream().filter(addOn -> isCalled(name, addOn)).toList();
        Optional<AddOn> meant = named.stream()
                .filter(rather)
                .findFirst()
                .or(() -> named.stream().findFirst());
        if (meant.isPresent()) {
            return meant.get();
        }
        if (platform.contains(name)) {
            throw Trouble.of(AddOnNotices.ADD_ON_OF_PLATFORM.with(name));
        }
        List<String> names = all.stream()
                .map(addOn -> addOn.id().isEmpty() ? addOn.name() : addOn.id())
                .distinct()
                .toList();
        if (names.isEmpty()) {
            throw Trouble.of(AddOnNotices.ADD_ON_NONE.with(name));
        }
        throw Trouble.of(Nearest.to(name, names)
                .map(near -> AddOnNotices.ADD_ON_UNKNOWN_NEAREST.with(name, near))
                .orElseGet(() -> AddOnNotices.ADD_ON_UNKNOWN.with(name, String.join(", ", names))));
    }

    private static boolean isCalled(String name, AddOn addOn) {
        String file = fileName(addOn.file());
        return name.equals(addOn.id()) || name.equals(file) || (name + ".jar").equals(file);
    }
}
