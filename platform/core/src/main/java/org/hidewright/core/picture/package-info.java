/** Small drawings of what a question measures. */
@Export
@Version("1.0.0")
package org.hidewright.core.picture;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
