package org.hidewright.distribution;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Quantity;

/** When each refusal of a shipped template is due, worked out here once more from what was typed. */
final class Refusals {
    private static final Map<String, Predicate<Typed>> DUE = new HashMap<>();

    static {
        DUE.put("card-sleeve-step-too-large", in -> in.mm("step") > in.mm("card-height") / 2);
        DUE.put("card-sleeve-step-too-small", in -> in.mm("step") - in.mm("pitch") < 5);
        DUE.put("too-wide-for-ring", in -> in.mm("ring-inside") - in.mm("width") < 1);
        DUE.put("watch-strap-close-holes", in -> in.mm("hole-spacing") / in.mm("hole") < 3);
        DUE.put("watch-strap-tapered-away", in -> in.mm("lug-width") - in.mm("taper") < 6.5);
        DUE.put("watch-strap-narrow-holes", in -> (in.mm("lug-width") - in.mm("taper") - 0.5) / in.mm("hole") < 4);
        DUE.put("watch-strap-thick-turn", in -> in.mm("turn-thickness") > in.mm("thickness"));
        DUE.put("watch-strap-short", in -> {
            double round = in.mm("wrist") + in.mm("ease") + Math.PI * (in.mm("thickness") + in.mm("lining-thickness"));
            double rest = round - in.mm("case-span");
            double worn = rest - Math.max(60, 0.4 * rest) - in.mm("buckle-frame");
            return worn - in.number("holes-each-side") * in.mm("hole-spacing") < 30;
        });
    }

    private Refusals() {}

    /** What was typed, by its key. */
    private record Typed(Values values) {
        double mm(String key) {
            return ((Quantity<?>) values.get(key).orElseThrow()).base();
        }

        double number(String key) {
            return ((Number) values.get(key).orElseThrow()).doubleValue();
        }
    }

    /** Whether a refusal is known and due. */
    static boolean isSo(String key, Values typed) {
        return DUE.containsKey(key) && DUE.get(key).test(new Typed(typed));
    }
}
