package org.hidewright.core.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.core.CoreTexts;

/**
 * The words of an item in the maker’s language: its parts, leathers, fittings, steps and tools, as far as the texts of the
 * calculator that answered it have them by the ids of the item ({@code item.part.front}, {@code item.step.skive}, and for
 * edges, lines, folds, holes and seams {@code item.on.rim}). What has no such text is said as the item says it, and so is all that a maker typed.
 */
public final class ItemWords {
    private final Texts texts;
    /** Common words of what lies on parts are the host’s, for bundles that say nothing of them. */
    private final Texts onParts;

    public ItemWords(Texts texts) {
        this.texts = texts;
        this.onParts = (key, language) -> texts.find(key, language).or(() -> CoreTexts.TEXTS.find(key, language));
    }

    /** The same item, said in the language. */
    public Item said(Item item, Wording wording) {
        Item.Builder said = Item.builder();
        item.parts().forEach(part -> said.part(said(part, wording)));
        item.seams().forEach(said::seam);
        item.fittings()
                .forEach(fitting ->
                        said.fitting(Fitting.of(fitting.id(), wording.said(nameOf(fitting)), fitting.holes())));
        item.operations().forEach(step -> said.operation(said(step, wording)));
        return said.build();
    }

    /** All that can be said of an item in another language. */
    public List<Said> of(Item item) {
        List<Said> all = new ArrayList<>();
        for (Part part : item.parts()) {
            all.add(nameOf(part));
            ids(part).forEach(id -> all.add(nameOn(id)));
            if (!part.leather().isBlank()) {
                all.add(byName("leather", part.leather()));
            }
        }
        item.seams().forEach(seam -> all.add(nameOf(seam)));
        item.fittings().forEach(fitting -> all.add(nameOf(fitting)));
        for (Operation step : item.operations()) {
            all.add(nameOf(step));
            if (!step.tool().isBlank()) {
                all.add(byName("tool", step.tool()));
            }
        }
        return all;
    }

    /** The ids of all that lies on a part, and of the kinds of its edges. */
    private static Stream<String> ids(Part part) {
        return Stream.of(
                        part.edges().stream().flatMap(edge -> Stream.of(edge.id(), edge.kind())),
                        part.holes().stream().map(Hole::id),
                        part.stitchLines().stream().map(StitchLine::id),
                        part.folds().stream().map(Fold::id))
                .flatMap(Function.identity());
    }

    /** What a part is called. */
    public Said nameOf(Part part) {
        return new Said(texts, "item.part." + part.id(), part.name());
    }

    /** What an edge, a stitch line, a fold or a hole is called, or a kind of edge; without a text, by the words of its id. */
    public Said nameOn(String id) {
        return new Said(onParts, "item.on." + id, IdWords.of(id));
    }

    /** What a seam is called: as its lines are, since it mostly has their id. */
    public Said nameOf(Seam seam) {
        return nameOn(seam.id());
    }

    Said nameOf(Operation step) {
        return new Said(texts, "item.step." + step.id(), step.what());
    }

    Said nameOf(Fitting fitting) {
        return new Said(texts, "item.fitting." + fitting.id(), fitting.name());
    }

    /** A leather or a tool has no id but its name. */
    private Said byName(String kind, String name) {
        return new Said(
                texts,
                "item." + kind + "." + name.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"),
                name);
    }

    private Part said(Part part, Wording wording) {
        Part.Builder said = Part.of(part.id(), wording.said(nameOf(part)), part.outline())
                .leather(part.leather().isBlank() ? "" : wording.said(byName("leather", part.leather())))
                .oversize(part.oversize())
                .sanded(part.sanded())
                .pieces(part.count(), part.mirrored());
        part.thickness().ifPresent(said::thickness);
        part.shows().forEach(said::shows);
        part.cutOuts().forEach(said::cutOut);
        part.holes().forEach(said::hole);
        part.stitchLines().forEach(said::stitchLine);
        part.folds().forEach(said::fold);
        part.edges().forEach(said::edge);
        part.marks().forEach(said::mark);
        part.direction().ifPresent(said::direction);
        return said.build();
    }

    private Operation said(Operation step, Wording wording) {
        Operation.Builder said = Operation.of(step.id(), wording.said(nameOf(step)))
                .on(step.on())
                .after(step.after())
                .tool(step.tool().isBlank() ? "" : wording.said(byName("tool", step.tool())));
        step.handsOn().ifPresent(said::handsOn);
        step.leastWait().ifPresent(said::leastWait);
        step.mostWait().ifPresent(said::mostWait);
        return said.build();
    }
}
