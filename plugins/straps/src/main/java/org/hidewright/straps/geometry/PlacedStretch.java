package org.hidewright.straps.geometry;

/** A stretch and the pose of its grain face where it starts. */
public record PlacedStretch(Stretch stretch, Pose start) {
    public Pose at(double share) {
        return stretch.at(start, share);
    }

    public Pose end() {
        return stretch.at(start, 1);
    }
}
