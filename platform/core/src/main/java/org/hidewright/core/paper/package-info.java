/**
 * What the host asks of whoever writes files: pages as PDF, rows of cells as CSV. The writers are services, made when
 * first asked for.
 */
@Export
@Version("1.0.0")
package org.hidewright.core.paper;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
