package org.hidewright.straps;

/** What has been done to a fold before it is folded, as the table of folds names it. */
enum Prepared {
    DRY,
    CASED,
    SKIVED,
    GROOVED;

    static Prepared by(Preparation preparation) {
        if (preparation instanceof Preparation.Cased) {
            return CASED;
        }
        if (preparation instanceof Preparation.Skived) {
            return SKIVED;
        }
        return preparation instanceof Preparation.Grooved ? GROOVED : DRY;
    }
}
