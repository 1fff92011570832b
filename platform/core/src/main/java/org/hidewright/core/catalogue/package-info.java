/** What is installed: calculators by id, which bundle brought each, and what is wrong with those that cannot be used. */
@Export
@Version("1.0.0")
package org.hidewright.core.catalogue;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
