/** JSON text read with the place of everything in it, and changed without touching what was not changed. */
@Export
@Version("1.0.0")
package org.hidewright.core.json;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
