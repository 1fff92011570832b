package org.hidewright.window.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A worked project as it is shown.
 *
 * @param name of the project
 * @param inches whether lengths are shown in inches
 * @param slips in the order of the file
 * @param differs where its copies of rows and the workshop differ, and what it has no copy of, in sentences
 */
public record ProjectFace(String name, boolean inches, List<SlipFace> slips, List<String> differs) {
    /** A slip by its id. */
    public Optional<SlipFace> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /**
     * What is drawn of the whole: the piece that is made, or nothing as long as it cannot be; where no slip makes one, the first
     * thing that is drawn.
     */
    public List<DrawingFace> piece() {
        return slips.stream()
                .filter(slip -> !slip.drawings().isEmpty() && (slip.makes() || unmade().isEmpty()))
                .min(Comparator.comparing(slip -> !slip.makes()))
                .map(SlipFace::drawings)
                .orElse(List.of());
    }

    /** The slip that is there to make the piece and cannot as it stands. */
    public Optional<SlipFace> unmade() {
        List<SlipFace> makers = slips.stream().filter(SlipFace::makes).toList();
        return makers.stream().allMatch(slip -> slip.drawings().isEmpty())
                ? makers.stream().findFirst()
                : Optional.empty();
    }

    /** How many things are to be looked at, on slips and at questions. */
    public long urgent() {
        return slips.stream().mapToLong(SlipFace::urgent).sum();
    }
}
