package org.hidewright.core.range;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.hidewright.api.measure.Range;

/**
 * Tries a model over the ranges of its inputs: each input alone from end to end, all corners of a few inputs, and a seeded
 * sample. The same model and ranges give the same study.
 *
 * @param <R> what tells why a part is refused
 */
public final class RangeStudy<R> {
    /** Up to so many inputs every corner is tried. */
    public static final int MOST_WITH_CORNERS = 8;

    /** Enough to tell a standard deviation to about 4 %. */
    public static final int SAMPLE = 400;

    /** Steps along each input alone. */
    static final int STEPS = 16;

    /** An edge or a switch is found to within this share of a step. */
    private static final double FOUND = 1e-7;

    private static final long SEED = 0x1EA7E5L;
    private static final double SQRT_3 = Math.sqrt(3);

    private final List<Range> inputs;
    private final Model<R> model;
    private final Map<String, Object> nominal;
    private final Map<String, Met> met = new LinkedHashMap<>();
    private final Map<String, Set<Object>> others = new LinkedHashMap<>();
    private final Map<String, List<Switch>> switches = new LinkedHashMap<>();
    private final List<RefusedPart<R>> refused = new ArrayList<>();
    /** What is told where every input is nominal, and so is told anyway. */
    private final Set<Object> toldAnyway;

    private final Map<Object, Raised<R>> raised = new LinkedHashMap<>();
    private boolean placesChange;
    private int tried;
    private int refusals;

    /** What was met at one place; the sample is summed up beside its nominal value, which keeps its last digits. */
    private static final class Met {
        private final double nominal;
        private final double[] contributions;
        private double low;
        private double high;
        private int sampled;
        private double sum;
        private double squares;

        Met(double nominal, int inputs) {
            this.nominal = nominal;
            this.low = nominal;
            this.high = nominal;
            this.contributions = new double[inputs];
        }

        void widen(double value) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }

        void sample(double value) {
            double off = value - nominal;
            sampled++;
            sum += off;
            squares += off * off;
        }

        Spread spread() {
            double mean = sampled > 0 ? sum / sampled : 0;
            double variance = sampled > 1 ? Math.max(0, squares - sum * mean) / (sampled - 1) : 0;
            return new Spread(nominal, FirstOrder.of(contributions), low, high, Math.sqrt(variance), nominal + mean);
        }
    }

    private RangeStudy(List<Range> inputs, Model<R> model, Trial.Answered<R> atNominal) {
        this.inputs = List.copyOf(inputs);
        this.model = model;
        this.nominal = atNominal.answers();
        this.toldAnyway = atNominal.told().keySet();
        nominal.forEach((place, value) -> {
            if (value instanceof Double number) {
                met.put(place, new Met(number, inputs.size()));
            } else {
                others.put(place, new LinkedHashSet<>());
                switches.put(place, new ArrayList<>());
            }
        });
    }

    /**
     * Studies a model.
     *
     * @param inputs limits and nominal value of each
     * @return empty where the model refuses at the nominal values
     */
    public static <R> Optional<RangeStudy<R>> of(List<Range> inputs, Model<R> model) {
        double[] middle = inputs.stream().mapToDouble(Range::nominal).toArray();
        if (!(model.at(middle) instanceof Trial.Answered<R> answered)) {
            return Optional.empty();
        }
        RangeStudy<R> study = new RangeStudy<>(inputs, model, answered);
        for (int input = 0; input < inputs.size(); input++) {
            study.contribution(input);
            study.alone(input);
        }
        study.corners();
        study.sample();
        return Optional.of(study);
    }

    private double[] middle() {
        return inputs.stream().mapToDouble(Range::nominal).toArray();
    }

    private Trial<R> at(int input, double value) {
        double[] place = middle();
        place[input] = value;
        return at(place);
    }

    private Trial<R> at(double[] place) {
        Trial<R> trial = model.at(place.clone());
        tried++;
        if (trial instanceof Trial.Answered<R> answered) {
            meet(answered.answers());
            answered.told().forEach((key, what) -> {
                if (!toldAnyway.contains(key)) {
                    raised.putIfAbsent(key, new Raised<>(what, List.of()));
                }
            });
        } else {
            refusals++;
        }
        return trial;
    }

    private void meet(Map<String, Object> answers) {
        placesChange |= !answers.keySet().equals(nominal.keySet());
        answers.forEach((place, value) -> {
            if (value instanceof Double number && met.containsKey(place)) {
                met.get(place).widen(number);
            } else if (others.containsKey(place) && !value.equals(nominal.get(place))) {
                others.get(place).add(value);
            }
        });
    }

    /** From one standard uncertainty below to one above; where one of them is refused, from the nominal value. */
    private void contribution(int input) {
        Range range = inputs.get(input);
        double uncertainty = range.halfWidth() / SQRT_3;
        Map<String, Object> below = answers(at(input, range.nominal() - uncertainty));
        Map<String, Object> above = answers(at(input, range.nominal() + uncertainty));
        boolean both = below != null && above != null;
        met.forEach((place, known) -> {
            double from = number(below, place, known.nominal);
            double to = number(above, place, known.nominal);
            known.contributions[input] = FirstOrder.contribution(from, to) * (both ? 1 : 2);
        });
    }

    private static double number(Map<String, Object> answers, String place, double otherwise) {
        return answers != null && answers.get(place) instanceof Double number ? number : otherwise;
    }

    private static <R> Map<String, Object> answers(Trial<R> trial) {
        return trial instanceof Trial.Answered<R> answered ? answered.answers() : null;
    }

    /** One input from end to end, the others nominal. */
    private void alone(int input) {
        Range range = inputs.get(input);
        List<Double> places = new ArrayList<>();
        List<Trial<R>> trials = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double here = step == STEPS ? range.high() : range.low() + step * (range.high() - range.low()) / STEPS;
            places.add(here);
            trials.add(at(input, here));
            if (step > 0
                    && trials.get(step - 1) instanceof Trial.Answered<R> one
                    && trials.get(step) instanceof Trial.Answered<R> other) {
                switched(input, places.get(step - 1), one.answers(), here, other.answers());
            }
        }
        parts(input, places, trials, trial -> trial instanceof Trial.Refused<R>, (part, trial) -> {
            refused.add(new RefusedPart<>(part, ((Trial.Refused<R>) trial).why()));
        });
        Set<Object> keys = new LinkedHashSet<>();
        trials.forEach(trial -> keys.addAll(told(trial).keySet()));
        keys.removeAll(toldAnyway);
        for (Object key : keys) {
            parts(input, places, trials, trial -> told(trial).containsKey(key), (part, trial) -> {
                Raised<R> known = raised.get(key);
                List<Part> parts = new ArrayList<>(known.parts());
                parts.add(part);
                raised.put(
                        key, new Raised<>(known.parts().isEmpty() ? told(trial).get(key) : known.what(), parts));
            });
        }
    }

    private static <R> Map<Object, R> told(Trial<R> trial) {
        return trial instanceof Trial.Answered<R> answered ? answered.told() : Map.of();
    }

    /** The parts in which something holds, each with the trial of it that is farthest from the nominal value. */
    private void parts(
            int input,
            List<Double> places,
            List<Trial<R>> trials,
            Predicate<Trial<R>> holds,
            BiConsumer<Part, Trial<R>> found) {
        double from = places.get(0);
        Trial<R> first = trials.get(0);
        for (int step = 1; step <= trials.size(); step++) {
            boolean before = holds.test(trials.get(step - 1));
            boolean here = step < trials.size() && holds.test(trials.get(step));
            if (before && !here) {
                double to = step == trials.size() ? places.get(step - 1) : edge(input, places, step, true, holds);
                found.accept(
                        new Part(input, from, to), from < inputs.get(input).nominal() ? first : trials.get(step - 1));
            } else if (here && !before) {
                from = edge(input, places, step, false, holds);
                first = trials.get(step);
            }
        }
    }

    /** Where something that holds below and not above, or the other way round, ends or begins between two steps. */
    private double edge(int input, List<Double> places, int step, boolean below, Predicate<Trial<R>> holds) {
        double low = places.get(step - 1);
        double high = places.get(step);
        double enough = enough(low, high);
        while (high - low > enough) {
            double middle = low + (high - low) / 2;
            if (holds.test(at(input, middle)) == below) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (high - low) / 2;
    }

    /** How near two places between which something changes have to be; of neighbouring numbers none lies between. */
    private static double enough(double low, double high) {
        return Math.max(FOUND * (high - low), 2 * Math.ulp(Math.max(Math.abs(low), Math.abs(high))));
    }

    private void switched(int input, double from, Map<String, Object> one, double to, Map<String, Object> other) {
        switches.forEach((place, found) -> {
            Object below = one.get(place);
            Object above = other.get(place);
            if (below != null && above != null && !below.equals(above)) {
                found.add(between(input, place, from, below, to, above));
            }
        });
    }

    private Switch between(int input, String place, double from, Object below, double to, Object above) {
        double low = from;
        double high = to;
        Object beyond = above;
        double enough = enough(from, to);
        while (high - low > enough) {
            double middle = low + (high - low) / 2;
            Map<String, Object> answers = answers(at(input, middle));
            Object here = answers == null ? null : answers.get(place);
            if (below.equals(here)) {
                low = middle;
            } else {
                high = middle;
                beyond = here == null ? beyond : here;
            }
        }
        return new Switch(input, low + (high - low) / 2, below, beyond);
    }

    private void corners() {
        int count = inputs.size();
        if (count < 2 || count > MOST_WITH_CORNERS) {
            return;
        }
        for (int corner = 0; corner < 1 << count; corner++) {
            double[] place = new double[count];
            for (int i = 0; i < count; i++) {
                Range range = inputs.get(i);
                place[i] = (corner >> i & 1) == 0 ? range.low() : range.high();
            }
            at(place);
        }
    }

    private void sample() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < SAMPLE && !inputs.isEmpty(); i++) {
            double[] place = inputs.stream()
                    .mapToDouble(range -> range.low() + random.nextDouble() * (range.high() - range.low()))
                    .toArray();
            Map<String, Object> answers = answers(at(place));
            if (answers != null) {
                met.forEach((key, known) -> {
                    if (answers.get(key) instanceof Double number) {
                        known.sample(number);
                    }
                });
            }
        }
    }

    /** Of each measured answer, by its place. */
    public Map<String, Spread> spreads() {
        Map<String, Spread> spreads = new LinkedHashMap<>();
        met.forEach((place, known) -> spreads.put(place, known.spread()));
        return spreads;
    }

    /** Of each answer that is one of several, by its place. */
    public Map<String, Choices> choices() {
        Map<String, Choices> choices = new LinkedHashMap<>();
        others.forEach((place, met) -> choices.put(place, new Choices(nominal.get(place), met, switches.get(place))));
        return choices;
    }

    /** Parts of the range of single inputs that are refused. */
    public List<RefusedPart<R>> refused() {
        return List.copyOf(refused);
    }

    /** What is told only in parts of the ranges. */
    public List<Raised<R>> raised() {
        return List.copyOf(raised.values());
    }

    /** Whether rows or optional answers come and go within the ranges. */
    public boolean placesChange() {
        return placesChange;
    }

    /** How many places were tried. */
    public int tried() {
        return tried;
    }

    /** How many of them were refused. */
    public int refusals() {
        return refusals;
    }

    @Override
    public String toString() {
        return spreads() + " of " + inputs + " at " + Arrays.toString(middle());
    }
}
