package org.hidewright.core.store;

/** What a save goes through, in this order. */
enum SaveStep {
    /** The new version is written beside the file. */
    WRITE,
    /** It is forced to the disk. */
    SYNC,
    /** It takes the file's place, and the folder is forced. */
    RENAME
}
