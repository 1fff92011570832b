package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a start starts: the bundles of the program and the add-ons installed, less those that are turned off or left out.
 * What becomes of each that can be turned off is noted by the path of its jar: {@link #ON}, {@link #OFF},
 * {@link #LEFT_OUT}, {@link #WAITING}, or the sentence that says why it did not start.
 */
final class LineUp {

    /** An argument that leaves out what the maker has installed, for when that keeps the program from working. */
    static final String WITHOUT = "--without-addons";

    static final String ON = "on";
    static final String OFF = "off";
    static final String LEFT_OUT = "left-out";
    static final String WAITING = "waiting";

    private static final int MOST_LINES = 3;

    private final ProgramHome home;
    private final SettingsFolder settings;
    private final List<BundleFile> files = new ArrayList<>();
    private final Map<String, String> states = new ConcurrentHashMap<>();
    private final List<String> told = new ArrayList<>();

    private LineUp(ProgramHome home, SettingsFolder settings) {
        this.home = home;
        this.settings = settings;
    }

    static LineUp of(ProgramHome home, String[] arguments) {
        LineUp lineUp = new LineUp(home, SettingsFolder.of(arguments));
        String unfinished = new DecidedChange().whenFree(lineUp.settings.folder());
        if (!unfinished.isEmpty()) {
            lineUp.told.add(Messages.text("change.unfinished", lineUp.settings.folder(), unfinished));
        }
        Choices choices = lineUp.choices();
        lineUp.tellNonsense(
                lineUp.settings.trust(), Trust.read(lineUp.settings.trust()).nonsense(), "trust");
        for (BundleFile file : home.bundles()) {
            lineUp.add(file, file.mayBeTurnedOff() && choices.turnedOff(file.jar()) ? OFF : ON);
        }
        boolean without = has(arguments, WITHOUT) || !unfinished.isEmpty();
        for (File jar : ProgramHome.jarsIn(lineUp.settings.addOns())) {
            lineUp.add(new BundleFile(BundleFile.ADD_ON, jar), choices.turnedOff(jar) ? OFF : without ? LEFT_OUT : ON);
        }
        lineUp.files.sort(null);
        return lineUp;
    }

    private static boolean has(String[] arguments, String option) {
        for (int i = 0; i < arguments.length && !arguments[i].equals("--"); i++) {
            if (arguments[i].equals(option)) {
                return true;
            }
        }
        return false;
    }

    private Choices choices() {
        try {
            Choices choices = Choices.read(settings.choices());
            tellNonsense(settings.choices(), choices.nonsense(), "choices");
            return choices;
        } catch (IOException unreadable) {
            told.add(Messages.text("choices.unreadable", settings.choices(), unreadable));
            return Choices.none();
        }
    }

    private void tellNonsense(File file, List<Integer> nonsense, String of) {
        for (int line : nonsense.subList(0, Math.min(nonsense.size(), MOST_LINES))) {
            told.add(Messages.text(of + ".nonsense", file, line));
        }
        if (nonsense.size() > MOST_LINES) {
            told.add(Messages.text("choices.more-nonsense", file, nonsense.size() - MOST_LINES));
        }
    }

    private void add(BundleFile file, String state) {
        if (file.mayBeTurnedOff()) {
            states.put(file.jar().getPath(), state);
        }
        if (state.equals(ON)) {
            files.add(file);
        }
    }

    ProgramHome home() {
        return home;
    }

    SettingsFolder settings() {
        return settings;
    }

    /** The bundles to start, lowest start level first. */
    List<BundleFile> files() {
        return files;
    }

    /** The jars of the bundles that are turned off. */
    List<File> turnedOff() {
        List<File> jars = new ArrayList<>();
        for (Map.Entry<String, String> state : states.entrySet()) {
            if (state.getValue().equals(OFF)) {
                jars.add(new File(state.getKey()));
            }
        }
        return jars;
    }

    /** What to tell before anything is started. */
    List<String> told() {
        return told;
    }

    /** Notes what became of a bundle: a sentence, or {@link #WAITING}. */
    void failed(BundleFile file, String sentence) {
        if (file.mayBeTurnedOff()) {
            states.put(file.jar().getPath(), sentence);
        }
    }

    Map<String, String> states() {
        return new HashMap<>(states);
    }
}
