/**
 * Parts of bench work that many pieces share, for templates to put together: panels with their stitch rows, linings, turned
 * edges, bindings, reinforcements, pockets, welts, zip windows, closures, tabs for rings; and the allowances they need.
 *
 * <p>Everything here is a pure calculation. Lengths are millimetres, angles radians, x to the right and y up. What cannot be
 * made is told by a {@link NoRoom}, which a template turns into a refusal of its own; a wrong argument is an
 * {@link IllegalArgumentException}, a bug of the caller.
 */
@Export
@Version("1.0.0")
package org.hidewright.api.benchwork;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
