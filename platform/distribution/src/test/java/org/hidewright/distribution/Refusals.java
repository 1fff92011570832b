package org.hidewright.distribution;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Quantity;

/** When each refusal of a shipped template is due, worked out here once more from what was typed. */
final class Refusals {
    private static final Map<String, Predicate<Typed>> DUE = new HashMap<>();

    static {
        DUE.put("card-sleeve card-sleeve-step-too-large", in -> in.mm("step") > in.mm("card-height") / 2);
        DUE.put("card-sleeve card-sleeve-step-too-small", in -> in.mm("step") - in.mm("pitch") < 5);
        DUE.put("key-fob too-wide-for-ring", in -> in.mm("ring-inside") - in.mm("width") < 1);
        DUE.put(
                "key-fob no-room-for-rivet",
                in -> in.word("closed-by").equals("rivet")
                        && (in.mm("rivet-hole") > in.mm("width") / 2
                                || in.mm("length") - in.mm("rivet-hole") < Math.max(9, 3 * in.mm("rivet-hole"))));
        DUE.put("watch-strap watch-strap-close-holes", in -> in.mm("hole-spacing") / in.mm("hole") < 3);
        DUE.put("watch-strap watch-strap-tapered-away", in -> in.mm("lug-width") - in.mm("taper") < 6.5);
        DUE.put(
                "watch-strap watch-strap-narrow-holes",
                in -> (in.mm("lug-width") - in.mm("taper") - 0.5) / in.mm("hole") < 4);
        DUE.put("watch-strap watch-strap-thick-turn", in -> in.mm("turn-thickness") > in.mm("thickness"));
        DUE.put("watch-strap watch-strap-short", in -> {
            double round = in.mm("wrist") + in.mm("ease") + Math.PI * (in.mm("thickness") + in.mm("lining-thickness"));
            double rest = round - in.mm("case-span");
            double worn = rest - Math.max(60, 0.4 * rest) - in.mm("buckle-frame");
            return worn - in.number("holes-each-side") * in.mm("hole-spacing") < 30;
        });
    }

    static {
        DUE.put(
                "flat-pouch stands-out-too-far",
                in -> in.in("closing").in("open").mm("stands-out")
                        > in.in("held").mm("height") / 2);
        DUE.put(
                "flat-pouch no-room",
                in -> noRoomOnPouch(in)
                        || closureComesToTheSeam(
                                in,
                                in.in("held").mm("width")
                                        + in.in("held").mm("thickness")
                                        + in.mm("ease")
                                        + 2 * margin(in),
                                margin(in)
                                        + in.in("held").mm("thickness") / 2
                                        + in.in("held").mm("height")
                                        + 2));
        DUE.put("lidded-pouch stands-out-too-far", DUE.get("flat-pouch stands-out-too-far"));
        DUE.put(
                "lidded-pouch no-room",
                in -> noRoomOnPouch(in)
                        || noRoomForRing(in)
                        || notTwoStitchesAlongTheBottom(in)
                        || lowerThanItsCorners(in)
                        || closureComesToTheSeam(
                                in,
                                in.in("held").mm("width")
                                        + in.mm("ease")
                                        + 2 * in.mm("gusset-thickness")
                                        + 4 * margin(in),
                                2 * margin(in)
                                        + in.mm("gusset-thickness")
                                        + in.in("held").mm("height")
                                        + 1));
        DUE.put(
                "folding-wallet step-too-large",
                in -> in.mm("step") > in.in("cards").mm("height") / 2);
        DUE.put("folding-wallet step-too-small", in -> in.mm("step") - in.mm("pitch") < 5);
        DUE.put(
                "book-cover sleeves-meet",
                in -> in.number("sleeve") * in.in("held").mm("width")
                        > in.in("held").mm("width") + in.mm("ease") / 2 - 2);
        DUE.put( // not one stitch from the edge to the mouth of a sleeve
                "book-cover no-room", in -> in.number("sleeve") * in.in("held").mm("width") < in.mm("pitch"));
        DUE.put("sheath no-room", Refusals::noRoomOnSheath);
        DUE.put("waist-belt belt-size-too-small", in -> smallestHoleAtTheBuckle(in, in.mm("size")));
        DUE.put("dog-collar belt-size-too-small", in -> smallestHoleAtTheBuckle(in, in.mm("neck") + in.mm("ease")));
    }

    /** The smallest hole, from the place where the prong rests, would lie in the turn round the bar or in the slot for the prong. */
    private static boolean smallestHoleAtTheBuckle(Typed in, double size) {
        double smallest = size - in.number("holes-each-side") * in.mm("spacing") - in.mm("frame");
        double slot = Math.max(20, in.mm("bar") + 4 * in.mm("thickness"));
        double turn = Math.PI / 2 * (in.mm("bar") / 2 + in.mm("thickness"));
        return smallest <= slot / 2 + in.mm("hole") / 2 + turn;
    }

    /** Leather so thick that welts reach the middle, or a loop that comes down lower than the sheath is long. */
    private static boolean noRoomOnSheath(Typed in) {
        double margin = Math.max(4, 1.5 * in.mm("thickness"));
        double blade = in.in("held").mm("width") + in.mm("ease");
        double high = margin + 4 + in.in("held").mm("height");
        double loop = in.has("belt") ? in.mm("belt") + 6 + 8 : 0;
        double wide = blade + 2 * (margin + 4);
        double radius = Math.min(wide, high) / 2;
        double row = high - loop;
        boolean overTheRoundEnd = in.has("belt")
                && in.word("tip").equals("round")
                && row < radius
                && Math.hypot(radius - (margin + 6), radius - row) > radius - 3;
        return overTheRoundEnd
                || blade < 10 + in.mm("pitch")
                || loop > high - 3
                || high < margin + 12
                || in.has("belt") && blade < 12;
    }

    /** The seam of a gusset begins in the middle of the bottom, and has a stitch to either side of it. */
    private static boolean notTwoStitchesAlongTheBottom(Typed in) {
        return in.in("held").mm("width") + in.mm("ease") + 2 * in.mm("gusset-thickness") < 2 * in.mm("pitch");
    }

    /** A front that is no higher than its rounded corners, 8 mm more than the flange. */
    private static boolean lowerThanItsCorners(Typed in) {
        Typed closing = in.in("closing");
        double out = closing.is("open") ? closing.in("open").mm("stands-out") : -1;
        return in.in("held").mm("height") + in.mm("gusset-thickness") - out < 12;
    }

    /** A tab for a ring that is wider than the back between its seams, or longer than it. */
    private static boolean noRoomForRing(Typed in) {
        if (!in.has("ring")) {
            return false;
        }
        double margin = Math.max(3.5, 1.75 * in.mm("thickness"));
        double width = in.in("held").mm("width") + in.mm("ease") + 2 * in.mm("gusset-thickness") + 4 * margin;
        double height = 2 * margin + in.in("held").mm("height");
        double ring = in.in("ring").mm("inside");
        return ring < 7 || ring > width - 6 || 5 + Math.max(14, ring / 2) + margin > height - 3 * margin;
    }

    private Refusals() {}

    /** Where a closure, or the stitches round a bottom, come within 3 mm of what there is. */
    private static boolean noRoomOnPouch(Typed in) {
        Typed held = in.in("held");
        double margin = Math.max(3.5, 1.75 * in.mm("thickness"));
        double width = held.mm("width") + held.mm("thickness") + in.mm("ease") + 2 * margin;
        double height = margin + held.mm("thickness") / 2 + held.mm("height");
        Typed closing = in.in("closing");
        if (closing.is("open")) {
            return height - closing.in("open").mm("stands-out") - margin < 12;
        }
        double along = along(closing);
        return across(closing) > width - 6 || down(in, height) + along / 2 > height - 3;
    }

    private static double margin(Typed in) {
        return Math.max(3.5, 1.75 * in.mm("thickness"));
    }

    /** Where a closure is cut into the stitches beside it, or comes within 3 mm of those along the bottom. */
    private static boolean closureComesToTheSeam(Typed in, double width, double height) {
        Typed closing = in.in("closing");
        return !closing.is("open")
                && (across(closing) > width - 2 * margin(in)
                        || down(in, height) + along(closing) / 2 + 3 > height - margin(in));
    }

    private static double down(Typed in, double height) {
        return Math.max(0.3 * height, along(in.in("closing")) / 2 + 3 + 2 * in.mm("thickness"));
    }

    private static double across(Typed closing) {
        if (closing.is("magnet")) {
            return closing.in("magnet").mm("prong");
        } else if (closing.is("snap")) {
            return Math.max(
                    closing.in("snap").mm("cap-hole"), closing.in("snap").mm("stud-hole"));
        }
        return Math.max(closing.in("stud").mm("neck"), closing.in("stud").mm("post"));
    }

    private static double along(Typed closing) {
        if (closing.is("magnet")) {
            return Math.max(
                    Math.max(
                            closing.in("magnet").mm("body"),
                            closing.in("magnet").mm("prong")),
                    closing.in("magnet").mm("apart") + 1.2);
        } else if (closing.is("snap")) {
            return Math.max(closing.in("snap").mm("cap"), 2 * across(closing));
        }
        return 2 * closing.in("stud").mm("slit") + 4 * closing.in("stud").mm("neck");
    }

    /** What was typed, by its key. */
    private record Typed(Values values) {
        Typed in(String key) {
            Object inside = values.get(key).orElseThrow();
            return new Typed(
                    inside instanceof Chosen chosen
                            ? Values.of(Map.of(chosen.variant(), chosen.values()))
                            : (Values) inside);
        }

        boolean has(String key) {
            return values.get(key).isPresent();
        }

        boolean is(String variant) {
            return values.get(variant).isPresent();
        }

        double mm(String key) {
            return ((Quantity<?>) values.get(key).orElseThrow()).base();
        }

        String word(String key) {
            return (String) values.get(key).orElseThrow();
        }

        double number(String key) {
            return ((Number) values.get(key).orElseThrow()).doubleValue();
        }
    }

    /** Whether a refusal is known and due. */
    static boolean isSo(String template, String notice, Values typed) {
        String key = template + " " + notice;
        return DUE.containsKey(key) && DUE.get(key).test(new Typed(typed));
    }
}
