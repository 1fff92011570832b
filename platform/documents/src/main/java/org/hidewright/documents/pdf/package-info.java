/** Draws arranged pages into a PDF file; the only package that knows the PDF library. */
package org.hidewright.documents.pdf;
