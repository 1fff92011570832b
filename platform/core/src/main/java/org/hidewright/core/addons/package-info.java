/**
 * The bundles a maker can turn on and off: those that came with the program, and add-ons of anybody’s. Whoever runs the
 * program on a machine keeps them.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.addons;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
