package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hidewright.addons.FolderChange.Wanted;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.BundleContext;
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
    /** As the launcher has it too. */
    private static final String WAITING = "waiting";
    /** As at the start of the program. */
    private static final int START_SECONDS = 10;

    private final Path settings;
    private final ToldByLauncher launcher;
    private final Needs needs;
    private final Agreed agreed;
    private final Map<String, String> states;
    private final Set<String> platform;
    private final AddOnsFolder folder;
    private final FolderChange change;
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
                new RunningBundles(context, Integer.getInteger("hidewright.start-limit", START_SECONDS)),
                Framework.needs(context, Path.of(context.getProperty("hidewright.settings"), "addons")));
    }

    /**
     * Add-ons of a folder of settings.
     *
     * @param launcher what the launcher tells of its start
     * @param running the bundles that run
     * @param needs finds what bundles need
     */
    InstalledAddOns(Path settings, ToldByLauncher launcher, RunningBundles running, Needs needs) {
        this.settings = settings;
        this.launcher = launcher;
        this.needs = needs;
        this.agreed = new Agreed(settings);
        this.states = new TreeMap<>(launcher.states());
        this.platform = launcher.platform();
        this.folder = new AddOnsFolder(settings);
        this.change = new FolderChange(settings, launcher.finish());
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
            case WAITING -> State.WAITING;
            default -> State.FAILED;
        };
        String why = became == State.FAILED ? state : "";
        try (Entries entries = Entries.ofJar(jar)) {
            return Described.read(jar, entries).addOn(origin, became, why, jar);
        } catch (IOException | FileTrouble noBundle) {
            return new AddOn("", fileName(jar), "", "", origin, became, why, List.of(), List.of(), jar);
        }
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
        return !fresh || List.of("on", "off", WAITING).contains(states.getOrDefault(jar.toString(), "on"));
    }

    private void start(Path jar, List<Remark> remarks) {
        started.put(jar, changed(jar));
        Optional<Phrase> unsound = folder.holds(jar) ? unsound(jar) : Optional.empty();
        if (unsound.isPresent()) {
            states.put(jar.toString(), inWords(unsound.get()));
            remarks.add(notStarted(jar, unsound.get()));
            return;
        }
        if (folder.holds(jar) && !launcher.consent().apply(jar.toFile()).isEmpty()) {
            if (!WAITING.equals(states.put(jar.toString(), WAITING))) { // told once
                Notice waits = addOn(jar, WAITING).code()
                        ? AddOnNotices.ADD_ON_WAITS.with(fileName(jar))
                        : AddOnNotices.ADD_ON_TEXTS_WAIT.with(fileName(jar));
                remarks.add(Remark.of(waits, CoreTexts.TEXTS));
            }
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
        running.stop(jar)
                .map(why -> Remark.of(AddOnNotices.ADD_ON_NOT_STOPPED.with(fileName(jar), why), CoreTexts.TEXTS))
                .ifPresent(remarks::add);
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
        return new JarInstall(shop()).install(given, replace, follow);
    }

    @Override
    public List<Carried> carried(List<Path> given) throws FileTrouble {
        List<Carried> carried = new ArrayList<>();
        for (Candidate candidate : Candidate.of(given, sound, false)) {
            try {
                carried.add(CarriedTexts.of(candidate));
            } catch (IOException e) {
                throw Trouble.notRead(candidate.from(), e);
            }
        }
        return carried;
    }

    private Shop shop() {
        return new Shop(settings, this, launcher);
    }

    @Override
    public AddOn remove(String name) throws FileTrouble {
        AddOn found = find(name, addOn -> addOn.origin() == Origin.MAKER);
        if (found.origin() == Origin.PROGRAM) {
            throw Trouble.of(AddOnNotices.ADD_ON_CAME_WITH.with(found.id()));
        }
        if (!Files.exists(found.file())) {
            throw Trouble.notChanged(
                    found.file(), new NoSuchFileException(found.file().toString()));
        }
        Map<String, Boolean> on =
                found.state() == State.OFF ? Map.of(found.id(), true) : Map.of(); // or it comes back off
        change.make(new Wanted(Map.of(), List.of(fileName(found.file())), choices.turned(on)));
        return found;
    }

    @Override
    public AddOn turn(String name, boolean on) throws FileTrouble {
        AddOn found = find(name, addOn -> !addOn.id().isEmpty());
        if (found.id().isEmpty()) {
            throw Trouble.of(AddOnNotices.ADD_ON_NAMELESS.with(found.name()));
        }
        if (on && found.state() == State.WAITING) {
            agreed.add(Map.of(Candidate.installed(found.file()).jar(), found.id()));
        }
        choices.turn(found.id(), on);
        return found;
    }

    @Override
    public List<Remark> dependents(String name) throws FileTrouble {
        AddOn gone = find(name, addOn -> addOn.origin() == Origin.MAKER);
        return new Dependents(shop(), needs)
                .of(gone).stream()
                        .map(id -> Remark.of(AddOnNotices.ADD_ON_NEEDED.with(id, gone.id()), CoreTexts.TEXTS))
                        .toList();
    }

    @Override
    public AddOnIndexes indexes() {
        return new IndexedAddOns(shop(), needs);
    }

    @Override
    public ShopProfiles profiles() {
        return new FileProfiles(shop(), needs);
    }

    @Override
    public TrustedMakers makers() {
        return new NamedMakers(settings);
    }

    /**
     * The bundle of this name.
     *
     * @param rather which one is meant where there are several
     */
    private AddOn find(String name, Predicate<AddOn> rather) throws FileTrouble {
        List<AddOn> all = all();
        List<AddOn> named = all.stream().filter(addOn -> isCalled(name, addOn)).toList();
        List<AddOn> ending =
                all.stream().filter(addOn -> addOn.id().endsWith("." + name)).toList();
        if (named.isEmpty() && ending.stream().map(AddOn::id).distinct().count() == 1) {
            named = ending;
        }
        List<AddOn> called = named;
        Optional<AddOn> meant = named.stream()
                .filter(rather)
                .findFirst()
                .or(() -> called.stream().findFirst());
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
