package org.hidewright.core.item;

import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Part;

/**
 * A part where it lies on the picture of its item.
 *
 * @param drawing of the part alone, where it lies
 */
public record PartInPlace(Part part, Drawing drawing) {}
