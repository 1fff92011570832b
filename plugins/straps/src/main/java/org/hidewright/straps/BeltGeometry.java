package org.hidewright.straps;

import java.util.List;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;

/** A belt as a folded strap: turned-back end, turn round the bar, main leg; distances along it count from the bar. */
final class BeltGeometry {
    static final String TURNED_BACK = "turn-back";
    static final String BUCKLE = "buckle";
    static final String MAIN = "belt";

    private final BeltLayout.Belt belt;
    private final double turnedBackThickness;
    private final FoldRule rule;

    BeltGeometry(BeltLayout.Belt belt) {
        this.belt = belt;
        this.turnedBackThickness =
                belt.turnBackThickness().orElse(belt.thickness()).mm();
        this.rule = FoldRule.of(
                belt.measuredNeutralLine(),
                Face.GRAIN,
                new Preparation.None(),
                belt.thickness().mm());
    }

    FoldRule rule() {
        return rule;
    }

    double turnedBackThicknessMm() {
        return turnedBackThickness;
    }

    /** Length of the turned-back end beyond where both legs meet. */
    private double tailMm() {
        return belt.turnBackLength().mm() - belt.contact().mm();
    }

    Piece.TurnBack turnBack() {
        return new Piece.TurnBack(
                BUCKLE,
                belt.barDiameter().mm(),
                belt.contact().mm(),
                turnedBackThickness,
                belt.thickness().mm(),
                rule.k(),
                Face.GRAIN);
    }

    /** The belt with its main leg reaching to a distance from the bar, laid flat from its turned-back end. */
    FoldedStrap folded(double reachMm) {
        return new FoldedStrap(List.of(
                new Piece.Run(TURNED_BACK, tailMm(), turnedBackThickness),
                turnBack(),
                new Piece.Run(
                        MAIN, reachMm - belt.contact().mm(), belt.thickness().mm())));
    }

    /** How far behind the bar’s centre, away from the belt, sizes are measured from. */
    double behindBarMm() {
        switch (belt.datum()) {
            case FOLD:
                return belt.barDiameter().mm() / 2 + belt.thickness().mm();
            case FRAME_END:
                return belt.frameLength().mm();
            default:
                return 0;
        }
    }

    /** Where the hole for a size lies along the main leg, from the bar’s centre. */
    double fromBarMm(double sizeMm) {
        return sizeMm - behindBarMm();
    }

    /** Place on the flat belt of a distance along the main leg from the bar. */
    double flatMm(FoldedStrap strap, double fromBarMm) {
        PlacedPiece main = strap.piece(MAIN).orElseThrow();
        return main.flatStart() + fromBarMm - belt.contact().mm();
    }
}
