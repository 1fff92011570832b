package org.hidewright.documents.page;

/** The two weights of the one typeface. */
public enum Face {
    REGULAR,
    SEMIBOLD
}
