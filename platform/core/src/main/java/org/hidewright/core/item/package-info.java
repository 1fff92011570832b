/** Items to make, as the host sees them: what links can take from them, what is wrong with them, and their patterns. */
@Export
@Version("1.0.0")
package org.hidewright.core.item;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
