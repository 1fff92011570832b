package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.store.FileTrouble;

/**
 * Indexes of add-ons: a file beside the jars of a folder that says what each is, what it needs and what it should be, byte by
 * byte. Bundles are browsed there, installed with what they need, brought up to date, and the last change is taken back. Each
 * change is made whole or not at all, also when the program is killed in the middle. It holds from the next start on, or once
 * {@link AddOns#takeEffect} is called. Whoever has strangers’ bundles installed says before they start what a bundle may do.
 */
public interface AddOnIndexes {
    /**
     * Makes the index of a folder of jars, or renews it.
     *
     * @return the index, and what stands in it
     * @throws FileTrouble if one of the jars is no bundle, is there twice, or the index cannot be written; it is then as it was
     */
    Index write(Path folder) throws FileTrouble;

    /**
     * What an index offers, and how it stands to what is here.
     *
     * @param from a folder with an index in it, the index itself, or a jar that holds it
     * @throws FileTrouble if there is none, or it cannot be read
     */
    Index read(Path from) throws FileTrouble;

    /**
     * Installs bundles with what they need, all of it or nothing.
     *
     * @param from as {@link #read} takes it
     * @param names ids of bundles, each with the version that is meant behind an at sign where it is not the newest
     * @param older whether a newer version that is installed gives way
     * @throws FileTrouble if one is not offered, is older than what is installed, needs what is nowhere, or its jar is not what
     *     the index says
     */
    AddOnChange install(Path from, List<String> names, boolean older) throws FileTrouble;

    /**
     * Puts newer versions in the place of what is installed, all of them or none.
     *
     * @param from as {@link #read} takes it
     * @param names ids of bundles; all that are installed where none is named
     * @throws FileTrouble as {@link #install}, or if one is not installed
     */
    AddOnChange update(Path from, List<String> names) throws FileTrouble;

    /**
     * Puts back what was there before the last change, whole. That is a change as well, so that doing it twice leaves all as it
     * is.
     *
     * @throws FileTrouble if nothing was changed yet, or it cannot be put back
     */
    AddOnChange back() throws FileTrouble;
}
