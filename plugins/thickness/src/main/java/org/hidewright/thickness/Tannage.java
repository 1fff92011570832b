package org.hidewright.thickness;

/** How the skin was made into leather. */
public enum Tannage {
    /** Bark and other vegetable tannins alone. */
    VEGETABLE,
    /** Chromium salts alone. */
    CHROME,
    /** Vegetable first, then chrome or synthetic tannins over it. */
    COMBINATION,
    /** Chrome first, then vegetable tannins over it. */
    RETANNED,
    /** Oil or brain: chamois, buckskin. */
    OIL,
    /** Alum and salt: tawed, white. */
    ALUM,
    /** Not tanned at all. */
    RAWHIDE,
    /** Leather fibre bonded with a binder, or no leather at all. */
    BONDED
}
