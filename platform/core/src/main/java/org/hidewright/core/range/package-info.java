/**
 * What becomes of answers where inputs are known only within limits: first-order uncertainty (JCGM 100:2008) and what was
 * met at ends, corners and in a seeded sample. Pure; knows nothing of slips.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.range;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
