package org.hidewright.core.begin;

import java.util.List;
import org.hidewright.core.catalogue.Installed;

/**
 * A calculator that can follow from the piece.
 *
 * @param calculator the calculator
 * @param in whether the project has a slip of it
 * @param asks keys of the questions that only the maker can answer; none where it follows without a word
 */
public record Follower(Installed calculator, boolean in, List<String> asks) {
    public Follower {
        asks = List.copyOf(asks);
    }
}
