/** Writing the packet of a project into a folder, from the command line and from the window alike. */
@Export
@Version("1.0.0")
package org.hidewright.core.packet;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
