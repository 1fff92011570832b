package org.hidewright.core.wording;

import java.util.Locale;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;

/**
 * What the things of an item are called where a maker reads of them. Parts, fittings and steps have names; what is on a part,
 * a seam and a kind of edge have ids alone, and are called by the texts of the bundle, else by the words of the id.
 */
public final class ItemNames {
    private final ItemWords words;
    private final Wording wording;

    public ItemNames(ItemWords words, Wording wording) {
        this.words = words;
        this.wording = wording;
    }

    public String part(Part part) {
        return wording.said(words.nameOf(part));
    }

    /** An edge, a stitch line or a fold, behind the name of its part. */
    public String on(Part part, String id) {
        return wording.host("phrase.item-on", part(part), wording.said(words.nameOn(id)));
    }

    /** A hole where its part is told with it. */
    public String on(Hole hole) {
        return wording.said(words.nameOn(hole.id()));
    }

    public String seam(Seam seam) {
        String name = wording.said(words.nameOf(seam));
        return name.toLowerCase(Locale.ROOT).contains(wording.host("item-name.seam-word"))
                ? name.substring(0, 1).toUpperCase(wording.language()) + name.substring(1)
                : wording.host("item-name.seam", name);
    }

    public String fitting(Fitting fitting) {
        return wording.said(words.nameOf(fitting));
    }

    public String step(Operation step) {
        return wording.said(words.nameOf(step));
    }

    /** All edges that are finished alike. */
    public String edges(String kind) {
        return wording.host("item-name.edges", wording.said(words.nameOn(kind)));
    }

    /** Everything together. */
    public String all() {
        return wording.host("item-name.all");
    }
}
