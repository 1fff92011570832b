package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Seam;

/** What something that is set or sewn on adds to an item, besides the holes in its parts. */
public final class Fastened {
    private final List<Fitting> fittings;
    private final List<Seam> seams;
    private final List<Piece> pieces;

    private Fastened(List<Fitting> fittings, List<Seam> seams, List<Piece> pieces) {
        this.fittings = List.copyOf(fittings);
        this.seams = List.copyOf(seams);
        this.pieces = List.copyOf(pieces);
    }

    static Fastened of(List<Fitting> fittings) {
        return new Fastened(fittings, List.of(), List.of());
    }

    static Fastened of(List<Seam> seams, List<Piece> pieces) {
        return of(List.of(), seams, pieces);
    }

    static Fastened of(List<Fitting> fittings, List<Seam> seams, List<Piece> pieces) {
        return new Fastened(fittings, seams, pieces);
    }

    /** Puts all of it into an item whose other parts are there already. */
    public void into(Item.Builder item) {
        pieces.forEach(piece -> item.part(piece.part()));
        fittings.forEach(item::fitting);
        seams.forEach(item::seam);
    }

    /** What is set into the pieces. */
    public List<Fitting> fittings() {
        return fittings;
    }

    /** What is sewn for it. */
    public List<Seam> seams() {
        return seams;
    }

    /** The pieces with what the fastening does to them, and pieces of its own. */
    public List<Piece> pieces() {
        return pieces;
    }
}
