/**
 * Lengths, angles, areas, masses, densities, volumes, durations, money and sizes, the units makers write them in, ranges between two limits, and
 * the one reader of typed text.
 *
 * <p>Every value is an immutable object over a {@code double} in its base unit: millimetre, radian, square millimetre,
 * gram, gram per cubic centimetre, millilitre, second; only money is decimal. A bare {@code double} in this package names its unit in the method.
 */
@Export
@Version("1.1.0")
package org.hidewright.api.measure;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
