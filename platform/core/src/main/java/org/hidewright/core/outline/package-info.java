/** Outlines that somebody has drawn elsewhere: what is read of a drawing, and the hide with its flaws that is made of it. */
@Export
@Version("1.0.0")
package org.hidewright.core.outline;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
