package org.hidewright.straps;

import static org.hidewright.straps.Straps.mm;

import java.util.List;

/** Keepers for tests: layers of 3 mm, 38 mm wide. */
final class Keepers {
    private Keepers() {}

    static KeeperLength.Loop keeper(int layers, double ease, double radius) {
        return keeper(layers, ease, radius, new KeeperLength.KeeperJoint.Butted());
    }

    static KeeperLength.Loop keeper(int layers, double ease, double radius, KeeperLength.KeeperJoint joint) {
        List<KeeperLength.KeeperLayer> rows =
                layers == 0 ? List.of() : List.of(new KeeperLength.KeeperLayer("layers", mm(3), layers));
        return new KeeperLength.Loop(
                rows,
                mm(38),
                mm(radius),
                mm(ease),
                KeeperLength.KeeperPlace.BELT_AT_TURN_BACK,
                mm(2),
                joint,
                mm(12),
                0.5);
    }
}
