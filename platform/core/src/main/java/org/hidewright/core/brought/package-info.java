/**
 * Tables of the workshop that a bundle carries as a text: columns that are written down, and rows. The text is a workshop file that
 * says besides what its columns are, and where its sizes come from.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.brought;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
