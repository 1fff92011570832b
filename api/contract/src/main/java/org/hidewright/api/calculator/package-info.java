/**
 * Calculators: the questions they ask, the answers they give, how they were worked out and where the numbers came from.
 *
 * <p>A bundle implements {@link Calculator}, annotates it with {@link Calculates}, its question record with
 * {@link Asked} and its answer record with {@link Answered}, and publishes it as a service. Everything else here is a
 * value or is handed in by the host. Nothing in this package opens a window or a file.
 */
@Export
@Version("1.3.0")
package org.hidewright.api.calculator;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
