/** The platform’s core: what its rooms share. */
@Export
@Version("1.0.0")
package org.hidewright.core;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
