package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.document.Bars;
import org.hidewright.core.jobcard.RangeWords;

/**
 * An answer as it is shown on a slip.
 *
 * @param key as declared
 * @param label what it is called
 * @param number ready to print; a text where it is no number
 * @param unit symbol, empty for a plain number
 * @param beside a second way to read it, such as the fraction of an inch; may be empty
 * @param lead whether it is one of the largest things on the slip
 * @param met what it comes to over the ranges; empty where it does not move
 * @param pending whether it moved before, and what it comes to now is still being worked out
 * @param shares what moves it, as bars, where more than one input does; while that is pending as it was before
 * @param hangs the questions of other slips that take it
 */
public record AnswerFace(
        String key,
        String label,
        String number,
        String unit,
        String beside,
        boolean lead,
        Optional<RangeWords.Met> met,
        boolean pending,
        Optional<Bars> shares,
        List<String> hangs) {
    /** Number and unit in one piece. */
    public String inline() {
        return unit.isEmpty() ? number : number + "\u00A0" + unit;
    }
}
