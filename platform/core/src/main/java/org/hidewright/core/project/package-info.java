/** Projects: slips side by side, what was typed on them, links between them, and the file that keeps it all. */
@Export
@Version("1.0.0")
package org.hidewright.core.project;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
