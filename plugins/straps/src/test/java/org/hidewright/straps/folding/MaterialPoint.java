package org.hidewright.straps.folding;

/**
 * One point of the leather, on its grain face, as it lies in the folded strap seen from the side.
 *
 * @param flat its place on the flat strap, millimetres from the start
 * @param x of the grain face, millimetres
 * @param y of the grain face, millimetres
 * @param heading direction of the strap there, radians; the flesh lies to the right of it
 * @param outside how far one has gone along the outside face of its section to come here, millimetres
 */
record MaterialPoint(double flat, double x, double y, double heading, double outside) {}
