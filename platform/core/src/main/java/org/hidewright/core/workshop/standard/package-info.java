/** The tables that every workshop has, whichever bundles are installed. */
@Export
@Version("1.0.0")
package org.hidewright.core.workshop.standard;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
