package org.hidewright.window.model;

import java.util.List;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.item.PartInPlace;

/**
 * A drawing of a slip.
 *
 * @param slip id of the slip it is of
 * @param key of the answer it is
 * @param label what it is called
 * @param drawing in words, as it is drawn
 * @param parts of a piece to make, where they lie on it; none of anything else
 */
public record DrawingFace(String slip, String key, String label, Drawing drawing, List<PartInPlace> parts) {}
