package org.hidewright.layout;

import org.hidewright.api.geometry.Curve;

/** A flaw or region of a hide, and its outline as it is read. */
record DrawnFlaw(Flaw flaw, Curve outline) {}
