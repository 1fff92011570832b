package org.hidewright.layout.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.layout.check.LayoutFault.Kind;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Zone;

/**
 * Whether a layout can be cut: told from the outlines alone, knowing nothing of how the layout was found, and without
 * rounding once the pieces lie where they lie.
 */
public final class LayoutCheck {
    private final List<Piece> pieces;
    private final List<Sheet> sheets;
    private final double gap;
    private final List<LayoutFault> faults = new ArrayList<>();
    private final Map<Integer, Edges> edges = new HashMap<>();

    /** The rings of a sheet, made once for all pieces that lie on it. */
    private record Edges(Ring outline, List<Ring> holes, List<Ring> zones) {
        static Edges of(Sheet sheet) {
            return new Edges(
                    new Ring(sheet.outline()),
                    sheet.holes().stream().map(Ring::new).toList(),
                    sheet.zones().stream().map(zone -> new Ring(zone.outline())).toList());
        }
    }

    private LayoutCheck(List<Piece> pieces, List<Sheet> sheets, double gap) {
        this.pieces = pieces;
        this.sheets = sheets;
        this.gap = gap;
    }

    /**
     * All faults of a layout; none when it can be cut.
     *
     * @param gap how far pieces have to stay from one another and from the edges of the sheet, in the unit of the outlines; within
     *     a millionth of the gap, since distances are rounded
     */
    public static List<LayoutFault> faults(List<Piece> pieces, List<Sheet> sheets, List<Laid> layout, double gap) {
        LayoutCheck check = new LayoutCheck(pieces, sheets, gap);
        check.run(layout);
        return List.copyOf(check.faults);
    }

    private void run(List<Laid> layout) {
        boolean[] seen = new boolean[pieces.size()];
        List<Laid> known = new ArrayList<>();
        for (Laid laid : layout) {
            boolean exists = laid.piece() >= 0
                    && laid.piece() < pieces.size()
                    && laid.sheet() >= 0
                    && laid.sheet() < sheets.size();
            if (!exists || seen[laid.piece()] || !finite(laid)) {
                faults.add(new LayoutFault(Kind.NO_SUCH_PLACE, laid.piece(), -1));
                continue;
            }
            seen[laid.piece()] = true;
            known.add(laid);
        }
        List<Ring> rings = known.stream().map(laid -> new Ring(outline(laid))).toList();
        for (int index = 0; index < known.size(); index++) {
            Laid laid = known.get(index);
            if (!pieces.get(laid.piece()).turning().allows(laid.angle())) {
                faults.add(new LayoutFault(Kind.TURNED_WRONG, laid.piece(), -1));
            }
            onItsSheet(laid, rings.get(index));
            for (int before = 0; before < index; before++) {
                if (known.get(before).sheet() == laid.sheet() && tooNear(rings.get(before), rings.get(index))) {
                    faults.add(new LayoutFault(
                            Kind.OVERLAP, laid.piece(), known.get(before).piece()));
                }
            }
        }
    }

    private static boolean finite(Laid laid) {
        return Double.isFinite(laid.angle()) && Double.isFinite(laid.dx()) && Double.isFinite(laid.dy());
    }

    private Outline outline(Laid laid) {
        return pieces.get(laid.piece()).outline().moved(laid.angle(), laid.dx(), laid.dy());
    }

    private void onItsSheet(Laid laid, Ring ring) {
        Sheet sheet = sheets.get(laid.sheet());
        Edges here = edges.computeIfAbsent(laid.sheet(), number -> Edges.of(sheets.get(number)));
        if (!ring.liesWithin(here.outline()) || gap > 0 && ring.distanceTo(here.outline()) < nearest()) {
            faults.add(new LayoutFault(Kind.OFF_THE_SHEET, laid.piece(), -1));
        }
        for (int hole = 0; hole < here.holes().size(); hole++) {
            if (tooNear(ring, here.holes().get(hole))) {
                faults.add(new LayoutFault(Kind.OVER_A_HOLE, laid.piece(), hole));
            }
        }
        for (int index = 0; index < sheet.zones().size(); index++) {
            if (bars(sheet.zones().get(index), here.zones().get(index), laid, ring)) {
                faults.add(new LayoutFault(Kind.ON_POOR_LEATHER, laid.piece(), index));
            }
        }
    }

    /** Whether a piece, or a place within it, lies on a zone that it avoids. */
    private boolean bars(Zone zone, Ring place, Laid laid, Ring ring) {
        Piece piece = pieces.get(laid.piece());
        return zone.bars(piece.avoids()) && ring.sharesInsideWith(place)
                || piece.inner().stream()
                        .filter(inner -> zone.bars(inner.avoids()))
                        .anyMatch(inner -> new Ring(inner.outline().moved(laid.angle(), laid.dx(), laid.dy()))
                                .sharesInsideWith(place));
    }

    private boolean tooNear(Ring one, Ring other) {
        return one.sharesInsideWith(other) || gap > 0 && one.distanceTo(other) < nearest();
    }

    private double nearest() {
        return gap * (1 - 1e-6);
    }
}
