/** Working slips out: what was typed is read, links are followed in dependency order, only what changed is done again. */
@Export
@Version("1.0.0")
package org.hidewright.core.work;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
