package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Budget;

/**
 * How parts of two forms lie closely together, kept for forms of which there are several: what is found once serves all their
 * copies. Pairs of parts were put first by Elkeran (European Journal of Operational Research 231, 2013); here they are not joined, but
 * a part is tried beside another one as it would lie in a pair.
 *
 * <p>Shared by all workers of a search. A pair is looked into when it is asked for first, with chance of its own, so that it
 * does not matter who asks.
 */
final class ClosePairs {
    /** With more kinds of forms than so, only copies of one form are paired: the others would take too long. */
    private static final int MOST_KINDS = 16;

    private static final PairSearch.Way[] NONE = {};

    /**
     * One form beside all others.
     *
     * @param ways for each kind of first form the ways in which this one lies beside it, the closest first
     * @param gain the greatest gain of all ways
     */
    record Beside(PairSearch.Way[][] ways, double gain) {}

    private final Map<Form, Integer> kinds = new IdentityHashMap<>();
    private final Form[] forms;
    private final AtomicReferenceArray<PairSearch.Way[]> pairs;
    private final AtomicReferenceArray<Beside> beside;

    /** Pairs of these forms; each that comes more than once is of a kind. */
    ClosePairs(Form[] all) {
        Map<Form, Integer> counts = new IdentityHashMap<>();
        for (Form form : all) {
            counts.merge(form, 1, Integer::sum);
        }
        for (Form form : all) {
            if (counts.get(form) > 1) {
                kinds.putIfAbsent(form, kinds.size());
            }
        }
        forms = new Form[kinds.size()];
        kinds.forEach((form, kind) -> forms[kind] = form);
        pairs = new AtomicReferenceArray<>(forms.length * forms.length);
        beside = new AtomicReferenceArray<>(forms.length);
    }

    /** Looks into all pairs, by all workers of a budget, where a first layout asks for all of them. */
    void prepare(Budget budget) {
        if (amongAllKinds()) {
            int[] each = IntStream.range(0, pairs.length())
                    .filter(pair -> pair / forms.length <= pair % forms.length)
                    .toArray();
            Shared.among(budget, each.length, at -> ways(each[at] / forms.length, each[at] % forms.length));
        }
    }

    /** Whether every kind is paired with every other one. */
    boolean amongAllKinds() {
        return forms.length <= MOST_KINDS;
    }

    /** The number of the kind of a form; -1 when there are no copies of it. */
    int kind(Form form) {
        return kinds.getOrDefault(form, -1);
    }

    /** How parts of a kind lie closely beside those of all kinds. */
    Beside beside(int kind) {
        Beside known = beside.get(kind);
        if (known == null) {
            PairSearch.Way[][] ways = IntStream.range(0, forms.length)
                    .mapToObj(first -> ways(first, kind))
                    .toArray(PairSearch.Way[][]::new);
            double gain = Arrays.stream(ways)
                    .flatMap(Arrays::stream)
                    .mapToDouble(PairSearch.Way::gain)
                    .max()
                    .orElse(0);
            known = new Beside(ways, gain);
            beside.set(kind, known);
        }
        return known;
    }

    private PairSearch.Way[] ways(int first, int second) {
        if (first != second && !amongAllKinds()) {
            return NONE;
        }
        // the same whoever asks first: the pair is always looked into from the same side
        if (first > second) {
            return Arrays.stream(ways(second, first))
                    .map(PairSearch.Way::reversed)
                    .toArray(PairSearch.Way[]::new);
        }
        int at = first * forms.length + second;
        PairSearch.Way[] known = pairs.get(at);
        if (known == null) {
            known = new PairSearch(forms[first], forms[second], new SplittableRandom(at)).run();
            pairs.set(at, known);
        }
        return known;
    }
}
