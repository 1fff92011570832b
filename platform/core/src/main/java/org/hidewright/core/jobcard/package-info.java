/** The job card of a worked project: as a document for paper, as JSON, and as rows for a spreadsheet. */
@Export
@Version("1.0.0")
package org.hidewright.core.jobcard;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
