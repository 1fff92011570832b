package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Lays single parts on sheets where there is room for them beside those that lie there, which stay. */
final class FreeRoom {
    private static final int DRAWS = 300;

    private final FullSize full;
    private final Form[] forms;
    private final ClosePairs pairs;
    private final double[] areas;
    private final SplittableRandom random;
    private long tries;

    FreeRoom(FullSize full, ClosePairs pairs, double[] areas, SplittableRandom random) {
        this.full = full;
        this.forms = full.forms();
        this.pairs = pairs;
        this.areas = areas;
        this.random = random;
    }

    long tries() {
        return tries;
    }

    /**
     * Lays a part on a sheet.
     *
     * @param onto what lies on each sheet; gains the part where there is room
     * @return whether there was
     */
    boolean lay(int part, int sheet, Stack[] onto) {
        if (onto[sheet].area() + forms[part].area > areas[sheet]) {
            return false;
        }
        List<Integer> parts = new ArrayList<>(onto[sheet].parts());
        parts.add(part);
        Crowd crowd = crowd(sheet, parts, onto[sheet]);
        LeftmostPlace leftmost = new LeftmostPlace(crowd, random);
        boolean found = leftmost.settle(parts.size() - 1, Double.MAX_VALUE, DRAWS);
        tries += leftmost.tries();
        Optional<Stack> gained = found ? full.stack(sheet, parts, crowd.places(), random) : Optional.empty();
        gained.ifPresent(stack -> onto[sheet] = stack);
        return gained.isPresent();
    }

    /** The parts of a stack where they lie, and further ones out of the way. */
    Crowd crowd(int sheet, List<Integer> parts, Stack from) {
        Ground ground = full.ground(sheet);
        Crowd crowd = new Crowd(ground, parts.stream().map(part -> forms[part]).toArray(Form[]::new), pairs);
        for (int index = 0; index < parts.size(); index++) {
            int at = from.parts().indexOf(parts.get(index));
            if (at >= 0) {
                crowd.lay(index, from.places().angle[at], from.places().x[at], from.places().y[at]);
            } else {
                double off = crowd.form[index].diameter;
                crowd.lay(index, crowd.form[index].turning.from(0), ground.minX() - 2 * off, ground.minY() - 2 * off);
            }
        }
        return crowd;
    }
}
