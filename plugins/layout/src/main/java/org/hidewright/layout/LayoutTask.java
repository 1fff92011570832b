package org.hidewright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.check.LayoutCheck;
import org.hidewright.layout.check.LayoutFault;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;

/** What is laid on what, and the check of it. */
final class LayoutTask {
    /** Where more is wrong than so, the first will do to begin with. */
    private static final int MOST_FAULTS = 5;

    private final double gap;
    private final List<SheetOfLeather> leather;
    private final List<CutPiece> pieces;
    private final List<CutSheet> sheets;
    private final MatchedPairs pairs;
    private final List<Notice> notices;
    private final Map<String, Integer> pieceNumbers = new HashMap<>();
    private final Map<String, Integer> sheetNumbers = new HashMap<>();

    private LayoutTask(
            Cut cut, List<CutPiece> pieces, List<CutSheet> sheets, MatchedPairs pairs, List<Notice> notices) {
        this.gap = cut.gap().mm();
        this.leather = cut.sheets();
        this.pieces = pieces;
        this.sheets = sheets;
        this.pairs = pairs;
        this.notices = notices;
        pieces.forEach(piece -> pieceNumbers.put(piece.id(), pieceNumbers.size()));
        sheets.forEach(sheet -> sheetNumbers.put(sheet.id(), sheetNumbers.size()));
    }

    /** @throws Refusal where the leather or the parts cannot be as they are asked for */
    static LayoutTask of(Cut cut) throws Refusal {
        List<Notice> notices = new ArrayList<>();
        Regions regions = new Regions(cut);
        if (regions.kinds() > Regions.MOST) {
            throw new Refusal(LayoutNotices.TOO_MANY_REGIONS.at("sheets", regions.kinds(), Regions.MOST));
        }
        List<CutPiece> pieces = new PiecesToCut(cut, regions, notices).pieces();
        List<CutSheet> sheets = new SheetsToCut(cut, regions, pieces).sheets();
        new TooLarge(sheets).of(pieces).forEach(part -> notices.add(LayoutNotices.TOO_LARGE.at("sheets", part)));
        return new LayoutTask(cut, pieces, sheets, MatchedPairs.of(cut, pieces, sheets, notices), notices);
    }

    List<CutPiece> pieces() {
        return pieces;
    }

    /** A piece by its id. */
    CutPiece piece(String id) {
        return pieces.get(pieceNumbers.get(id));
    }

    /** The leather as it was asked for, a row each. */
    List<SheetOfLeather> leather() {
        return leather;
    }

    List<CutSheet> sheets() {
        return sheets;
    }

    /** So many times these pieces can be laid out at once. */
    int most() {
        return PiecesToCut.MOST / Math.max(1, pieces.size());
    }

    MatchedPairs pairs() {
        return pairs;
    }

    /** What is to be told of the task itself. */
    List<Notice> notices() {
        return notices;
    }

    /** A place as it is typed, as the check takes it. */
    Laid laid(Placed placed) throws Refusal {
        Integer piece = pieceNumbers.get(placed.id());
        Integer sheet = sheetNumbers.get(placed.sheet());
        String row = "layout.pieces[" + placed.id() + "]";
        if (piece == null) {
            throw new Refusal(LayoutNotices.NO_SUCH_PIECE.at(row, placed.id()));
        }
        if (sheet == null) {
            throw new Refusal(LayoutNotices.NO_SUCH_SHEET.at(row + ".sheet", placed.id(), placed.sheet()));
        }
        return sheets.get(sheet)
                .frame()
                .seen(new Laid(
                        piece,
                        sheet,
                        placed.turned().radians(),
                        placed.x().mm(),
                        placed.y().mm()));
    }

    /**
     * Looks whether pieces can be cut where they lie.
     *
     * @throws Refusal with the first few that cannot
     */
    void check(List<Laid> layout) throws Refusal {
        List<Piece> exact = pieces.stream().map(CutPiece::exact).map(Steps::of).toList();
        List<Sheet> leather =
                sheets.stream().map(CutSheet::exact).map(Steps::of).toList();
        List<Laid> places = layout.stream().map(Steps::of).toList();
        List<Notice> faults = LayoutCheck.faults(exact, leather, places, gap * Steps.IN_A_MM).stream()
                .map(fault -> told(fault, layout))
                .distinct()
                .limit(MOST_FAULTS)
                .toList();
        if (!faults.isEmpty()) {
            throw new Refusal(faults);
        }
    }

    private Notice told(LayoutFault fault, List<Laid> layout) {
        String piece = pieces.get(fault.piece()).id();
        String row = "layout.pieces[" + piece + "]";
        String sheet = layout.stream()
                .filter(laid -> laid.piece() == fault.piece())
                .findFirst()
                .map(laid -> sheets.get(laid.sheet()).id())
                .orElse("");
        return switch (fault.kind()) {
            case OVERLAP ->
                LayoutNotices.OVERLAP.at(row, piece, pieces.get(fault.with()).id());
            case OFF_THE_SHEET -> LayoutNotices.OFF_SHEET.at(row, piece, sheet);
            case OVER_A_HOLE -> LayoutNotices.OVER_HOLE.at(row, piece, sheet);
            case ON_POOR_LEATHER -> LayoutNotices.ON_FLAW.at(row, piece, sheet);
            case TURNED_WRONG -> LayoutNotices.TURNED.at(row + ".turned", piece);
            case NO_SUCH_PLACE -> LayoutNotices.NO_SUCH_PIECE.at(row, piece);
        };
    }
}
