package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.Wording;

/** What is cut for an item, part by part, as large as it is cut, with what is punched into it. */
final class CutList {
    private final Wording wording;
    private final Function<Length, String> lengths;

    /** @param lengths how wide and how high something is, in words: as the answers of its slip say of the same length */
    CutList(Wording wording, Function<Length, String> lengths) {
        this.wording = wording;
        this.lengths = lengths;
    }

    /** None where there are no parts. */
    List<Block> of(Item item) {
        List<Part> parts = item.parts();
        if (parts.isEmpty()) {
            return List.of();
        }
        boolean turnedOver = parts.stream().anyMatch(part -> part.mirrored() > 0);
        boolean larger = parts.stream().anyMatch(part -> part.allowance() > 0);
        boolean inside = parts.stream().anyMatch(part -> !inside(part).isEmpty());
        Table.Builder table = Table.builder().caption(wording.host("cut-list.title"));
        table.column(wording.host("patterns.part"))
                .column(wording.host("patterns.leather"))
                .numbers(wording.host(turnedOver ? "patterns.cut-as-drawn" : "cut-list.pieces"));
        if (turnedOver) {
            table.numbers(wording.host("patterns.cut-turned-over"));
        }
        table.numbers(wording.host("cut-list.size"));
        if (larger) {
            table.numbers(wording.host("patterns.size"));
        }
        if (inside) {
            table.column(wording.host("cut-list.inside"));
        }
        for (Part part : parts) {
            List<String> row = new ArrayList<>(List.of(part.name(), leather(part), Integer.toString(part.count())));
            if (turnedOver) {
                row.add(Integer.toString(part.mirrored()));
            }
            row.add(size(part.outline(), part.allowance()));
            if (larger) {
                row.add(size(part.outline(), 0));
            }
            if (inside) {
                row.add(inside(part));
            }
            table.row(row.toArray(String[]::new));
        }
        return List.of(table.build());
    }

    /** Width and height of what lies within an outline, and so much more on every side. */
    String size(Path outline, double beside) {
        Box box = outline.bounds();
        return wording.host(
                "patterns.by",
                lengths.apply(Length.ofMm(box.width() + 2 * beside)),
                lengths.apply(Length.ofMm(box.height() + 2 * beside)));
    }

    /** Which leather, and how thick; empty where the part says neither. */
    String leather(Part part) {
        String thickness = part.thickness().isPresent()
                ? wording.drawn(Length.ofMm(part.thickness().getAsDouble()))
                : "";
        return part.leather().isEmpty() || thickness.isEmpty()
                ? part.leather() + thickness
                : wording.host("patterns.leather-thickness", part.leather(), thickness);
    }

    /** Holes by the punch that makes them, then windows. */
    private String inside(Part part) {
        Map<String, Integer> inside = new LinkedHashMap<>();
        for (Hole hole : part.holes()) {
            inside.merge(wording.host("cut-list.hole", wording.drawn(Length.ofMm(hole.diameter()))), 1, Integer::sum);
        }
        for (Path window : part.cutOuts()) {
            inside.merge(cutOut(window), 1, Integer::sum);
        }
        List<String> said = new ArrayList<>();
        inside.forEach((what, times) -> said.add(wording.host("cut-list.times", times, what)));
        return String.join("; ", said);
    }

    private String cutOut(Path window) {
        return Keyhole.in(window)
                .map(found -> wording.host(
                        "cut-list.keyhole",
                        wording.drawn(Length.ofMm(found.diameter())),
                        wording.drawn(Length.ofMm(found.reach()))))
                .orElseGet(() -> wording.host("cut-list.window", size(window, 0)));
    }
}
