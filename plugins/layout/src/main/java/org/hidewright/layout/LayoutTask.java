package org.hidewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
    private static final int MOST_FAULTS = 10;

    private final double gap;
    private final List<SheetOfLeather> leather;
    private final List<CutPiece> pieces;
    private final List<CutSheet> sheets;
    private final MatchedPairs pairs;
    private final List<Notice> notices;
    /** Of parts that may lie on some regions alone, these as they are typed. */
    private final Map<String, String> onlyOn = new HashMap<>();

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
        cut.rules().orElse(List.of()).forEach(rule -> rule.onlyOn().ifPresent(only -> onlyOn.put(rule.id(), only)));
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

    /** Square millimetres left of a sheet in one piece, on which a piece lies at least. */
    double inOnePiece(List<Laid> layout, int sheet) {
        return sheets.get(sheet)
                .inOnePiece(layout.stream()
                        .filter(laid -> laid.sheet() == sheet)
                        .map(laid ->
                                pieces.get(laid.piece()).exact().outline().moved(laid.angle(), laid.dx(), laid.dy()))
                        .toList());
    }

    /** The sheet that carries least, of those that are cut from; the first of several. */
    int last(List<Laid> layout) {
        Map<Integer, Double> carried = new TreeMap<>();
        layout.forEach(
                laid -> carried.merge(laid.sheet(), pieces.get(laid.piece()).area(), Double::sum));
        return Collections.min(carried.entrySet(), Map.Entry.comparingByValue()).getKey();
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
        List<Notice> faults = faults(layout);
        if (!faults.isEmpty()) {
            throw new Refusal(first(faults));
        }
    }

    /** Why pieces cannot be cut where they lie; nothing where they can. */
    List<Notice> faults(List<Laid> layout) {
        List<Piece> exact = pieces.stream().map(CutPiece::exact).map(Steps::of).toList();
        List<Sheet> leather =
                sheets.stream().map(CutSheet::exact).map(Steps::of).toList();
        List<Laid> places = layout.stream().map(Steps::of).toList();
        return LayoutCheck.faults(exact, leather, places, gap * Steps.IN_A_MM).stream()
                .map(fault -> told(fault, layout))
                .distinct()
                .toList();
    }

    /** The first of what is wrong, and how much more there is; all of it where that is not much. */
    static List<Notice> first(List<Notice> wrong) {
        if (wrong.size() <= MOST_FAULTS) {
            return wrong;
        }
        List<Notice> first = new ArrayList<>(wrong.subList(0, MOST_FAULTS));
        first.add(LayoutNotices.MORE_FAULTS.at("layout", wrong.size() - MOST_FAULTS));
        return first;
    }

    private Notice told(LayoutFault fault, List<Laid> layout) {
        String piece = pieces.get(fault.piece()).id();
        String row = "layout.pieces[" + piece + "]";
        Optional<CutSheet> on = layout.stream()
                .filter(laid -> laid.piece() == fault.piece())
                .findFirst()
                .map(laid -> sheets.get(laid.sheet()));
        String sheet = on.map(CutSheet::id).orElse("");
        return switch (fault.kind()) {
            case OVERLAP ->
                LayoutNotices.OVERLAP.at(row, piece, pieces.get(fault.with()).id());
            case OFF_THE_SHEET -> LayoutNotices.OFF_SHEET.at(row, piece, sheet);
            case OVER_A_HOLE -> LayoutNotices.OVER_HOLE.at(row, piece, sheet);
            case ON_POOR_LEATHER -> onPoorLeather(fault, on.orElseThrow());
            case TURNED_WRONG -> LayoutNotices.TURNED.at(row + ".turned", piece);
            case NO_SUCH_PLACE -> LayoutNotices.NO_SUCH_PIECE.at(row, piece);
        };
    }

    /** Flaws that are no holes are the first zones of a sheet, in their order; what is behind them lies outside all regions of a rule. */
    private Notice onPoorLeather(LayoutFault fault, CutSheet sheet) {
        CutPiece piece = pieces.get(fault.piece());
        String row = "layout.pieces[" + piece.id() + "]";
        List<DrawnFlaw> zones = sheet.flaws().stream()
                .filter(drawn -> drawn.flaw().damage() != Damage.HOLE)
                .toList();
        return fault.with() < zones.size()
                ? LayoutNotices.ON_FLAW.at(
                        row,
                        piece.id(),
                        sheet.id(),
                        zones.get(fault.with()).flaw().called())
                : LayoutNotices.OFF_REGION.at(
                        row, piece.id(), sheet.id(), onlyOn.get(piece.part().id()));
    }
}
