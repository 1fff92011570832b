package org.hidewright.launcher;

import java.io.File;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The folder the program lies in. Its {@code bundles} folder holds one folder for each start level, named by the level
 * and a word for the reader: {@code 10-libraries}, {@code 40-calculators}. A folder that is missing is an empty one.
 */
final class ProgramHome {

    private final File folder;

    ProgramHome(File folder) {
        this.folder = folder;
    }

    File folder() {
        return folder;
    }

    File bundleFolders() {
        return new File(folder, "bundles");
    }

    /**
     * Every jar of every bundle folder, lowest start level first, by name within a level.
     *
     * @throws IllegalStateException when the name of a bundle folder does not begin with a start level
     */
    List<BundleFile> bundles() {
        List<BundleFile> found = new ArrayList<>();
        for (File level : inside(bundleFolders())) {
            if (level.isDirectory()) {
                int number = levelOf(level);
                for (File jar : jarsIn(level)) {
                    found.add(new BundleFile(number, jar));
                }
            }
        }
        found.sort(null);
        return found;
    }

    /** The libraries of the class path: Felix, the launcher, and what the system bundle offers on their behalf. */
    File libraries() {
        return new File(folder, "lib");
    }

    /** What the libraries are called, as their files tell without being opened: a name, a hyphen, a version. */
    List<String> libraryNames() {
        List<String> names = new ArrayList<>();
        for (File library : jarsIn(libraries())) {
            String name = library.getName();
            int end = name.indexOf('-');
            while (end >= 0 && !Character.isDigit(name.charAt(end + 1))) {
                end = name.indexOf('-', end + 1);
            }
            if (end > 0) {
                names.add(name.substring(0, end));
            }
        }
        return names;
    }

    static List<File> jarsIn(File folder) {
        List<File> jars = new ArrayList<>();
        for (File file : inside(folder)) {
            if (file.getName().endsWith(".jar")) {
                jars.add(file);
            }
        }
        return jars;
    }

    private static File[] inside(File folder) {
        File[] found = folder.listFiles();
        if (found == null) {
            return new File[0];
        }
        Arrays.sort(found);
        return found;
    }

    private static int levelOf(File folder) {
        String name = folder.getName();
        int level = 0;
        try {
            level = Integer.parseInt(name.substring(0, Math.max(0, name.indexOf('-'))));
        } catch (NumberFormatException notANumber) {
            // told below, with the level that is not above zero
        }
        if (level <= 0) {
            throw new IllegalStateException(Messages.text("folder.no-level", folder));
        }
        return level;
    }
}
