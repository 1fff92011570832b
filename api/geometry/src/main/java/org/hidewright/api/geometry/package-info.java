/**
 * Curves of a flat piece of leather: their lengths, spots along them, lines beside them, rounded corners, what is cut
 * away, and what is wrong with them.
 *
 * <p>A {@link Curve} is a chain of the {@link org.hidewright.api.drawing.Segment segments} of a drawing: lines, arcs and
 * cubic Bézier curves. Everything here is a pure calculation on immutable values. Lengths are millimetres, angles radians,
 * x to the right and y up; a positive turn goes counter-clockwise, and <b>left</b> is meant as one goes along the curve.
 *
 * <p>Curves stay curves: a line beside a line is a line, beside an arc an arc, and stays one when it is trimmed. The line
 * beside a cubic is no cubic; it is followed by cubics to a millionth of a millimetre.
 */
@Export
@Version("1.0.0")
package org.hidewright.api.geometry;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
