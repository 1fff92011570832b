package org.hidewright.straps.geometry;

/** A face of leather. */
public enum Face {
    GRAIN,
    FLESH;

    public Face other() {
        return this == GRAIN ? FLESH : GRAIN;
    }
}
