/**
 * Writers of documents: pages as PDF, rows of cells as CSV.
 *
 * <p>The writers are Declarative Services components, made when first asked for; until then no PDF library is loaded.
 */
@Export
@Version("1.0.0")
package org.hidewright.documents;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
