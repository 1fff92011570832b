package org.hidewright.straps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.FeaturePlaces.Pierced;
import org.hidewright.straps.geometry.Pile;
import org.hidewright.straps.geometry.Stack;

/** What rivets, posts and stitches do to the layers they go through: they press them on each other. */
final class Fittings {
    static final NoticeKind LAYERS_APART = NoticeKind.note("fitting-draws-together");

    private final Stack stack;
    private final Map<Feature, List<List<Pierced>>> places = new LinkedHashMap<>();

    Fittings(Stack stack, FeaturePlaces places) {
        this.stack = stack;
        places.pierced().stream()
                .filter(place -> place.feature() instanceof Feature.Hole)
                .forEach(place -> at(place.feature(), 0).add(place));
        for (FeaturePlaces.Row row : places.rows()) {
            at(row.row(), 0).add(row.start());
            at(row.row(), 1).add(row.end());
        }
        this.places.values().forEach(ends -> ends.removeIf(layers -> layers.size() < 2));
    }

    private List<Pierced> at(Feature feature, int end) {
        List<List<Pierced>> ends = places.computeIfAbsent(feature, any -> new ArrayList<>());
        while (ends.size() <= end) {
            ends.add(new ArrayList<>());
        }
        return ends.get(end);
    }

    /** The thickest place of the strap with everything drawn together that a fitting or stitches go through. */
    Pile thickest() {
        return places.values().stream()
                .flatMap(List::stream)
                .map(layers -> stack.pile(stack.drawnTogether(layers(layers))))
                .reduce(stack.thickest(), Pile::thicker);
    }

    /** A note for each fitting whose layers lie apart where it goes through them. */
    Stream<Notice> layersApart() {
        return places.entrySet().stream().flatMap(fitting -> {
            double apart = fitting.getValue().stream()
                    .mapToDouble(layers -> stack.apartMm(layers(layers)))
                    .max()
                    .orElse(0);
            return apart > 0 ? Stream.of(note(fitting.getKey(), apart)) : Stream.empty();
        });
    }

    private static Notice note(Feature feature, double apart) {
        return LAYERS_APART.at(
                FeaturePlaces.place(feature),
                feature.id(),
                String.join(", ", feature.alsoThrough().orElse(List.of())),
                feature.section(),
                Length.ofMm(apart));
    }

    private static List<Stack.Layer> layers(List<Pierced> pierced) {
        return pierced.stream()
                .map(place -> new Stack.Layer(place.piece(), -place.piece().thickness(), 0, place.alongMm()))
                .toList();
    }
}
