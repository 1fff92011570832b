package org.hidewright.api.measure;

/** A number read from a text, and the stretch it stands in. */
record Count(double value, int start, int end) {}
