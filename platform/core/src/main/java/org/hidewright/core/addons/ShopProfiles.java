package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.store.FileTrouble;

/** What a workshop has turned on, as a file that another can be set up by. */
public interface ShopProfiles {
    /**
     * Turns on what a file lists, with what that needs, and everything else off that the program can do without. What is not
     * installed comes from the indexes that the file names. All of it is done or nothing.
     *
     * @param only whether it is only told what would be done
     * @throws FileTrouble if the file cannot be read or says something else, if a bundle is nowhere, or the change cannot be made
     */
    AddOnChange apply(Path file, boolean only) throws FileTrouble;

    /**
     * Writes what is turned on now as such a file.
     *
     * @param from folders with indexes, which the file names for whoever has not installed the same
     * @return the add-ons that are on and that none of the indexes has in this version or a newer one, each with its version
     * @throws FileTrouble if it is there already, or cannot be written, or one of the indexes cannot be read
     */
    List<String> write(Path file, List<Path> from) throws FileTrouble;
}
