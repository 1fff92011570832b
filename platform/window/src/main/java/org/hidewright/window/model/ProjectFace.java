package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Drawing;

/**
 * A worked project as it is shown.
 *
 * @param name of the project
 * @param slips in the order of the file
 */
public record ProjectFace(String name, List<SlipFace> slips) {
    /** A slip by its id. */
    public Optional<SlipFace> slip(String id) {
        return slips.stream().filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** What is shown of the whole: the piece that is made, else the first thing that is drawn. */
    public Optional<Drawing> piece() {
        return slips.stream()
                .filter(SlipFace::makes)
                .findFirst()
                .or(() -> slips.stream()
                        .filter(slip -> slip.drawing().isPresent())
                        .findFirst())
                .flatMap(SlipFace::drawing);
    }

    /** How many things are to be looked at, on slips and at questions. */
    public long urgent() {
        return slips.stream()
                .mapToLong(slip ->
                        slip.told().stream().filter(SlipFace.Told::urgent).count()
                                + slip.questions().stream()
                                        .mapToLong(question -> question.wrong().size())
                                        .sum())
                .sum();
    }
}
