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

    private static final long SEED = 0x1EA7E5L;
    private static final double SQRT_3 = Math.sqrt(3);

    private final List<Range> inputs;
    private final Model<R> model;
    private final boolean nominalAnswered;
    private final Map<String, Object> nominal;
    private final Map<String, Met> met = new LinkedHashMap<>();
    private final Map<String, Set<Object>> others = new LinkedHashMap<>();
    private final Map<String, List<Switch>> switches = new LinkedHashMap<>();
    private final List<RefusedPart<R>> refused = new ArrayList<>();
    private final List<Part> answered = new ArrayList<>();
    /** What is told where every input is nominal, and so is told anyway. */
    private final Map<Object, R> toldAnyway;

    private final Map<Object, Raised<R>> raised = new LinkedHashMap<>();
    private final Map<Object, Raised<R>> ended = new LinkedHashMap<>();
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

    /** Of a model that refuses where every input is nominal there is nothing to compare with. */
    private RangeStudy(List<Range> inputs, Model<R> model, Trial<R> atNominal) {
        this.inputs = List.copyOf(inputs);
        this.model = model;
        this.nominalAnswered = atNominal instanceof Trial.Answered<R>;
        this.nominal = nominalAnswered ? answers(atNominal) : Map.of();
        this.toldAnyway = told(atNominal);
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
     * Studies a model. Where it refuses at the nominal values, only in which {@linkplain #answered() parts} it does not is
     * looked for.
     *
     * @param inputs limits and nominal value of each
     * @return empty where the model refuses at the nominal values and wherever one input moves from there
     */
    public static <R> Optional<RangeStudy<R>> of(List<Range> inputs, Model<R> model) {
        double[] middle = inputs.stream().mapToDouble(Range::nominal).toArray();
        Trial<R> atNominal = model.at(middle);
        RangeStudy<R> study = new RangeStudy<>(inputs, model, atNominal);
        if (!study.nominalAnswered) {
            for (int input = 0; input < inputs.size(); input++) {
                study.aloneFromRefused(input);
            }
            return study.answered.isEmpty() ? Optional.empty() : Optional.of(study);
        }
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

    private double[] placed(int input, double value) {
        double[] place = middle();
        place[input] = value;
        return place;
    }

    private Trial<R> at(int input, double value) {
        return at(placed(input, value));
    }

    private Trial<R> at(double[] place) {
        Trial<R> trial = model.at(place.clone());
        tried++;
        if (trial instanceof Trial.Refused<R>) {
            refusals++;
        } else if (nominalAnswered) {
            meet(answers(trial));
            told(trial).forEach((key, what) -> {
                if (!toldAnyway.containsKey(key)) {
                    raised.putIfAbsent(key, new Raised<>(what, List.of()));
                }
            });
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

    /** From end to end of one input. */
    private List<Double> steps(int input) {
        Range range = inputs.get(input);
        List<Double> places = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            places.add(range.low() + step * (range.high() - range.low()) / STEPS);
        }
        places.add(range.high());
        return places;
    }

    private void aloneFromRefused(int input) {
        List<Double> places = steps(input);
        List<Trial<R>> trials = new ArrayList<>();
        places.forEach(place -> trials.add(at(input, place)));
        parts(input, places, trials, trial -> trial instanceof Trial.Answered<R>, (part, trial) -> answered.add(part));
    }

    /** One input from end to end, the others nominal. */
    private void alone(int input) {
        List<Double> places = steps(input);
        List<Trial<R>> trials = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double here = places.get(step);
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
        keys.removeAll(toldAnyway.keySet());
        for (Object key : keys) {
            parts(input, places, trials, trial -> told(trial).containsKey(key), (part, trial) -> {
                Raised<R> known = raised.get(key);
                List<Part> parts = new ArrayList<>(known.parts());
                parts.add(part);
                raised.put(
                        key, new Raised<>(known.parts().isEmpty() ? told(trial).get(key) : known.what(), parts));
            });
        }
        toldAnyway.forEach((key, what) -> {
            if (trials.stream()
                    .anyMatch(trial ->
                            trial instanceof Trial.Answered<R> && !told(trial).containsKey(key))) {
                List<Part> parts =
                        new ArrayList<>(ended.containsKey(key) ? ended.get(key).parts() : List.of());
                parts(input, places, trials, trial -> told(trial).containsKey(key), (part, trial) -> parts.add(part));
                ended.put(key, new Raised<>(what, parts));
            }
        });
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
                double to = step == trials.size() ? places.get(step - 1) : edge(input, places, step, holds);
                found.accept(
                        new Part(input, from, to), from < inputs.get(input).nominal() ? first : trials.get(step - 1));
            } else if (here && !before) {
                from = edge(input, places, step, holds.negate());
                first = trials.get(step);
            }
        }
    }

    private double edge(int input, List<Double> places, int step, Predicate<Trial<R>> below) {
        return Edge.between(places.get(step - 1), places.get(step), value -> below.test(at(input, value)));
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
        List<Object> beyond = new ArrayList<>(List.of(above));
        double at = Edge.between(from, to, value -> {
            Map<String, Object> answers = answers(at(input, value));
            Object here = answers == null ? null : answers.get(place);
            if (here != null && !below.equals(here)) {
                beyond.set(0, here);
            }
            return below.equals(here);
        });
        return new Switch(input, at, below, beyond.get(0));
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

    /**
     * Parts of the range of single inputs in which there are answers, of a model that refuses at the nominal values; empty of
     * every other.
     */
    public List<Part> answered() {
        return List.copyOf(answered);
    }

    /** What is told at the nominal values and not all over the range of a single input, with the parts in which it is. */
    public List<Raised<R>> ended() {
        return List.copyOf(ended.values());
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
