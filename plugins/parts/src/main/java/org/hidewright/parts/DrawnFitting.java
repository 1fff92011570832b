package org.hidewright.parts;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;

/** Hardware and the holes it goes through, the side that is seen first; none where leather alone holds it. */
public record DrawnFitting(
        @RowId String id,
        @Asked(example = "Rivet") Optional<String> name,
        @Asked(example = "front.rivet; back.rivet") Optional<List<String>> holes) {}
