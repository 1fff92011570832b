/**
 * What is to be made: an {@link Item} of parts with true outlines, the seams that hold them together and the fittings that
 * go through them.
 *
 * <p>A part is drawn flat, grain up, in millimetres, x to the right and y up. Its outline is the <b>finished</b> edge:
 * where leather is left standing to be trimmed after gluing, the part says how much, and margins still count from the
 * finished edge. Everything on a part is on that one drawing.
 *
 * <p>Ids are short words the maker can link to, unique within the item for parts, seams and fittings, and within a part for
 * what is on it. Every type is an immutable value, made through its factories; builders are not for several threads.
 */
@Export
@Version("1.0.0")
package org.hidewright.api.item;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
