/** Writes drawings as SVG, in millimetres, with named groups, and reads the lines of what others have drawn. */
package org.hidewright.documents.svg;
