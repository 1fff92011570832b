package org.hidewright.launcher;

import java.io.File;

/** A jar in one of the program’s bundle folders, and the start level its folder names. Ordered as they start. */
final class BundleFile implements Comparable<BundleFile> {

    private final int level;
    private final File jar;

    BundleFile(int level, File jar) {
        this.level = level;
        this.jar = jar;
    }

    int level() {
        return level;
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
