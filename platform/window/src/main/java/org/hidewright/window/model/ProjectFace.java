package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;

/**
 * A worked project as it is shown.
 *
 * @param name of the project
 * @param inches whether lengths are shown in inches
 * @param slips in the order of the file
 */
public record ProjectFace(String name, boolean inches, List<SlipFace> slips) {
    /** A slip by its id. */
    public Optional<SlipFace> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** What is drawn of the whole: the piece that is made, else the first thing that is drawn. */
    public List<DrawingFace> piece() {
        return slips.stream()
                .filter(slip -> slip.makes() && !slip.drawings().isEmpty())
                .findFirst()
                .or(() -> slips.stream()
                        .filter(slip -> !slip.drawings().isEmpty())
                        .findFirst())
                .map(SlipFace::drawings)
                .orElse(List.of());
    }

    /** How many things are to be looked at, on slips and at questions. */
    public long urgent() {
        return slips.stream().mapToLong(SlipFace::urgent).sum();
    }
}
