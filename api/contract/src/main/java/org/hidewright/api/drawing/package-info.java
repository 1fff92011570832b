/**
 * Drawings in millimetres that know nothing of a window, a page or a file format.
 *
 * <p>A {@link Drawing} is a list of shapes on an endless flat sheet: x runs to the right, <b>y runs up</b>, as on a bench
 * drawing; angles are radians, positive turns go counter-clockwise. Lengths are {@code double} millimetres. Curves are
 * kept as what they are: an arc stays an arc until the last writer. How a line looks is decided by whoever draws it, from
 * its {@link Role} alone; a drawing holds no colours and no line widths.
 *
 * <p>Texts in a drawing are final: values already formatted, or phrases already in the reader's language.
 *
 * <p>Every type here is an immutable value, made through its factories; two drawings of equal shapes are equal.
 */
@Export
@Version("1.2.0")
package org.hidewright.api.drawing;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
