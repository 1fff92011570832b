/**
 * Bends, wraps and folded straps as plain numbers: millimetres, radians, shares of a thickness. No text, no units, no
 * drawing.
 */
package org.hidewright.straps.geometry;
