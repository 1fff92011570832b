/**
 * The workshop: which tables there are, the file that holds their rows, the rows a project works with, and how its copies
 * differ from the file.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.workshop;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
