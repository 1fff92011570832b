package org.hidewright.edges;

import static org.hidewright.edges.BurnishingVerdict.DOES;
import static org.hidewright.edges.BurnishingVerdict.TEST_FIRST;
import static org.hidewright.edges.BurnishingVerdict.WILL_NOT;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;

/** How the skin was made into leather, and what that makes of rubbing its edge (common practice). */
public enum Tannage {
    VEGETABLE(DOES, "packs", "burnish-it"),
    CHROME(WILL_NOT, "springs", "paint-or-turn"),
    COMBINATION(TEST_FIRST, "packs-half", "try-or-paint"),
    RETANNED(TEST_FIRST, "packs-half", "try-or-paint"),
    OIL(WILL_NOT, "felts", "turn-or-bind"),
    ALUM(WILL_NOT, "felts", "turn-or-bind"),
    RAWHIDE(WILL_NOT, "swells", "lace-or-leave"),
    BONDED(WILL_NOT, "smears", "paint-or-turn");

    private final BurnishingVerdict burnishing;
    private final String reason;
    private final String instead;

    Tannage(BurnishingVerdict burnishing, String reason, String instead) {
        this.burnishing = burnishing;
        this.reason = reason;
        this.instead = instead;
    }

    BurnishingVerdict burnishing() {
        return burnishing;
    }

    /** What the fibre does under the slicker. */
    Phrase reason() {
        return Phrase.of("burnish-" + reason);
    }

    /** What to do with the edge. */
    Phrase instead() {
        return Phrase.of("edge-" + instead);
    }

    boolean holdsChrome() {
        return this == CHROME || this == COMBINATION || this == RETANNED;
    }

    static List<String> phrases() {
        return Arrays.stream(values())
                .flatMap(tannage ->
                        Stream.of(tannage.reason().key(), tannage.instead().key()))
                .distinct()
                .toList();
    }
}
