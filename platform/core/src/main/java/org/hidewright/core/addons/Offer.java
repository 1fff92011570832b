package org.hidewright.core.addons;

import java.util.List;

/**
 * A bundle that an index offers.
 *
 * @param id its symbolic name, by which commands know it
 * @param name what its author calls it
 * @param maker who made it, as its author says; empty where that says nothing
 * @param version its version, whole
 * @param calculators ids of the calculators it declares
 * @param tables ids of the tables of the workshop it declares
 * @param standing how it stands to what is here
 * @param installed the version that is installed; empty where none is
 */
public record Offer(
        String id,
        String name,
        String maker,
        String version,
        List<String> calculators,
        List<String> tables,
        Standing standing,
        String installed) {

    /** How an offer stands to what is here. */
    public enum Standing {
        /** There is none of that name. */
        NEW,
        /** This very version is installed. */
        HERE,
        /** An older one is installed. */
        NEWER,
        /** A newer one is installed. */
        OLDER,
        /** The program has one of that name, which no other replaces. */
        OF_PROGRAM
    }
}
