package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Several sheets with their parts worked as one, so that each part may move to any of them. */
final class Together {
    private final Form[] forms;
    private final ClosePairs pairs;
    private final Effort effort;
    private final SplittableRandom random;
    private final List<Ground> grounds = new ArrayList<>();
    private final List<Double> areas = new ArrayList<>();
    private final List<Stack> stacks = new ArrayList<>();
    private final List<Integer> parts = new ArrayList<>();
    private Row row;
    private Crowd crowd;
    private Seeker seeker;

    Together(Form[] forms, ClosePairs pairs, Effort effort, SplittableRandom random) {
        this.effort = effort;
        this.forms = forms;
        this.pairs = pairs;
        this.random = random;
    }

    void add(Ground ground, double area, Stack stack) {
        grounds.add(ground);
        areas.add(area);
        stacks.add(stack);
        parts.addAll(stack.parts());
    }

    long tries() {
        return seeker.tries();
    }

    /**
     * Puts further parts among those that are there and separates all.
     *
     * @return whether that was done before it was given up
     */
    boolean separate(List<Integer> joining, Halt halt) {
        parts.addAll(joining);
        double apart = 0;
        for (Form form : forms) {
            apart = Math.max(apart, 2 * form.diameter);
        }
        row = new Row(grounds, areas.stream().mapToDouble(Double::doubleValue).toArray(), apart);
        crowd = new Crowd(row, parts.stream().map(part -> forms[part]).toArray(Form[]::new), pairs);
        lay();
        seeker = new Seeker(crowd, random);
        Separation separation = new Separation(crowd, seeker, random, () -> halt.spent(seeker.tries()) >= 1);
        Exchange exchange = new Exchange(crowd, random);
        double rest = separation.run(effort.strikes(), effort.stall());
        for (int attempt = 1; attempt < effort.attempts() && rest > 0 && halt.spent(seeker.tries()) < 1; attempt++) {
            exchange.run();
            crowd.levelWeights();
            rest = separation.run(effort.strikes(), effort.stall());
        }
        return rest == 0;
    }

    private void lay() {
        int index = 0;
        for (int place = 0; place < stacks.size(); place++) {
            Places places = stacks.get(place).places();
            for (int at = 0; at < places.x.length; at++) {
                crowd.lay(index++, places.angle[at], places.x[at] + row.shift(place), places.y[at]);
            }
        }
        for (; index < crowd.parts; index++) {
            Ground field = row.field(random);
            crowd.lay(
                    index,
                    crowd.form[index].angles.any(random),
                    field.minX() + random.nextDouble() * (field.maxX() - field.minX()),
                    field.minY() + random.nextDouble() * (field.maxY() - field.minY()));
        }
        crowd.measureAll();
    }

    /** What lies on a sheet now, by the order in which sheets were added. */
    Optional<Stack> stack(int place, int sheet, FullSize full) {
        List<Integer> here = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (int index = 0; index < crowd.parts; index++) {
            if (row.sheet(crowd.x[index]) == place) {
                here.add(parts.get(index));
                indices.add(index);
            }
        }
        Places places = new Places(here.size());
        for (int at = 0; at < places.x.length; at++) {
            int index = indices.get(at);
            places.angle[at] = crowd.turned[index].angle;
            places.x[at] = crowd.x[index] - row.shift(place);
            places.y[at] = crowd.y[index];
        }
        return full.stack(sheet, here, places, random);
    }
}
