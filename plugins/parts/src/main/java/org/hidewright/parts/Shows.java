package org.hidewright.parts;

import java.util.List;
import org.hidewright.api.item.Face;

/** Which faces of a part are seen on the finished piece. */
public enum Shows {
    GRAIN(Face.GRAIN),
    FLESH(Face.FLESH),
    BOTH(Face.GRAIN, Face.FLESH),
    NEITHER;

    private final List<Face> faces;

    Shows(Face... faces) {
        this.faces = List.of(faces);
    }

    List<Face> faces() {
        return faces;
    }
}
