package org.hidewright.straps;

/** Where in a section a distance is counted from. */
enum From {
    START,
    /** The middle; positive distances run towards the end. */
    MIDDLE,
    END
}
