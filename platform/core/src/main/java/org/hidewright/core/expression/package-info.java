/**
 * Expressions with units, as templates without Java are written in: {@code 2 * (held.width + ease) + 3/8 in}.
 *
 * <p>They are small and safe: read, checked for dimensions and names before anything is typed, and worked in a time that
 * their length bounds. There are no loops, no powers and no names of their own.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.expression;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
