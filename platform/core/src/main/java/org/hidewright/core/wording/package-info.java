/** Values, notices and labels put into words: language, units, decimal mark, rounding at the edge. */
@Export
@Version("1.0.0")
package org.hidewright.core.wording;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
