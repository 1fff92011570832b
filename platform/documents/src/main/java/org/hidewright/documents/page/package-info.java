/**
 * Arranges a document on pages, knowing no file format: blocks become pieces, pieces fill pages, pages hold marks that are
 * drawn on a {@link org.hidewright.documents.page.Canvas}. Lengths are millimetres, y runs down from the top of the sheet.
 */
@Export
@Version("1.0.0")
package org.hidewright.documents.page;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
