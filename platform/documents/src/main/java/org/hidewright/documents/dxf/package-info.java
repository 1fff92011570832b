/** Writes drawings as DXF, in millimetres, with named layers. */
package org.hidewright.documents.dxf;
