package org.hidewright.parts;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;

/** A fastener and the holes it goes through, the side that is seen first. */
public record DrawnFitting(
        @RowId String id,
        @Asked(example = "Rivet") Optional<String> name,
        @Asked(example = "front.rivet; back.rivet") List<String> holes) {}
