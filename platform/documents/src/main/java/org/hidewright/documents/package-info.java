/**
 * Writers of documents: pages as PDF, rows of cells as CSV.
 *
 * <p>The writers are Declarative Services components, made when first asked for; until then no PDF library is loaded.
 */
package org.hidewright.documents;
