/** Writes drawings as SVG, in millimetres, with named groups. */
package org.hidewright.documents.svg;
