/** Writes rows of cells as comma separated values. */
package org.hidewright.documents.csv;
