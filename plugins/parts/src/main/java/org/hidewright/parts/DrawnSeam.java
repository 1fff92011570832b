package org.hidewright.parts;

import java.util.List;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;

/** Stitch lines that are sewn through each other, the side that is seen first. */
public record DrawnSeam(
        @RowId String id,
        @Asked(example = "front.rim; back.rim") List<String> lines) {}
