/** What the commands ask of whoever shows a project in a window. */
@Export
@Version("1.0.0")
package org.hidewright.core.window;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
