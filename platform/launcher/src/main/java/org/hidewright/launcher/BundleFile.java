package org.hidewright.launcher;

import java.io.File;

/** A jar to start and its start level, which its folder names. Ordered as they start. */
final class BundleFile implements Comparable<BundleFile> {

    /** Below this start level lie libraries, of which there may be several versions at once. */
    private static final int NO_LIBRARY = 30;

    /** From this start level on lies what the platform can do without: calculators, add-ons. */
    private static final int CAN_BE_DONE_WITHOUT = 40;

    /** The start level of what a maker has installed. */
    static final int ADD_ON = 50;

    private final int level;
    private final File jar;

    BundleFile(int level, File jar) {
        this.level = level;
        this.jar = jar;
    }

    int level() {
        return level;
    }

    boolean isLibrary() {
        return level < NO_LIBRARY;
    }

    /** Whether the maker may turn it off; it is then also called off the first thread, with a limit of time. */
    boolean mayBeTurnedOff() {
        return level >= CAN_BE_DONE_WITHOUT;
    }

    boolean isAddOn() {
        return level == ADD_ON;
    }

    File jar() {
        return jar;
    }

    /**
     * The location Felix installs from. A reference is read where it lies, so nothing is copied into the cache. Felix
     * decodes the text as a form field, where a plus sign would become a space.
     */
    String location() {
        return "reference:" + jar.toURI().toASCIIString().replace("+", "%2B");
    }

    /** What the maker sees in the folder. */
    String name() {
        return jar.getName();
    }

    @Override
    public int compareTo(BundleFile other) {
        return level != other.level ? Integer.compare(level, other.level) : jar.compareTo(other.jar);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BundleFile file && level == file.level && jar.equals(file.jar);
    }

    @Override
    public int hashCode() {
        return jar.hashCode();
    }
}
