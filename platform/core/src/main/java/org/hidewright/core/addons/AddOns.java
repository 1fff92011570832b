package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;

/**
 * The bundles that can be turned on and off. What is changed here holds from the next start on, or once {@link #takeEffect}
 * is called; nothing of a bundle runs before that.
 */
public interface AddOns {
    /** Those that are here, and how they stand: what came with the program first, then by id. */
    List<AddOn> all();

    /**
     * Installs bundles, all of them or none. Whoever has them installed says before they start what a bundle may do.
     *
     * @param given jars, folders of jars, and folders that are an unpacked bundle
     * @param replace whether a bundle that is installed already gives way
     * @param follow whether templates of unpacked bundles are read from their folders from now on, for their author
     * @return what was installed; a bundle that is there already, byte by byte, is among it
     * @throws FileTrouble if one of them is no bundle, has the name of another, or cannot be written; the remarks say which
     */
    List<AddOn> install(List<Path> given, boolean replace, boolean follow) throws FileTrouble;

    /**
     * What bundles carry as texts, for their author to look over; nothing is installed.
     *
     * @param given jars, folders of jars, and folders that are an unpacked bundle
     * @throws FileTrouble if one of them is no bundle; the remarks say which
     */
    List<Carried> carried(List<Path> given) throws FileTrouble;

    /**
     * Takes away what the maker has installed.
     *
     * @param name its id, or the name of its file
     * @return what was taken away
     * @throws FileTrouble if there is none of that name, it came with the program, or its file cannot be removed
     */
    AddOn remove(String name) throws FileTrouble;

    /**
     * Turns a bundle on or off. One that waits is told to start by being turned on.
     *
     * @param name its id, or the name of its file
     * @return the bundle as it was; one that was so already stays so
     * @throws FileTrouble if there is none of that name, it is of the platform, or the choice cannot be written
     */
    AddOn turn(String name, boolean on) throws FileTrouble;

    /**
     * Tells who works now, and would not without a bundle: it needs what that offers, or its texts ask a calculator of it.
     *
     * @param name its id, or the name of its file
     * @return a word for each
     * @throws FileTrouble if there is none of that name
     */
    List<Remark> dependents(String name) throws FileTrouble;

    /**
     * Brings what runs in line with what was installed, removed and chosen, without a new start. May take as long as a bundle
     * takes to start.
     *
     * @return what did not start, and why
     */
    List<Remark> takeEffect();

    /** Indexes that bundles are installed from. */
    AddOnIndexes indexes();

    /** What a workshop has turned on, as files. */
    ShopProfiles profiles();

    /** Whose signature an add-on has to carry. */
    TrustedMakers makers();
}
