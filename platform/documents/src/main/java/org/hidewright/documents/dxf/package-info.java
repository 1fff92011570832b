/** Writes drawings as DXF, in millimetres, with named layers, and reads the lines of what others have drawn. */
package org.hidewright.documents.dxf;
