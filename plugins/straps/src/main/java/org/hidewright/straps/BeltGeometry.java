package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;

/** A belt as a folded strap: turned-back end, turn round the bar, main leg; distances along it count from the bar. */
final class BeltGeometry {
    static final String TURNED_BACK = "turn-back";
    static final String BUCKLE = "buckle";
    static final String MAIN = "belt";

    private final BeltLayout.Belt belt;
    private final double turnedBackThickness;
    private final double foldThickness;
    private final FoldRule rule;

    BeltGeometry(BeltLayout.Belt belt) {
        this.belt = belt;
        this.turnedBackThickness =
                belt.turnBackThickness().orElse(belt.thickness()).mm();
        Length fold =
                belt.preparation() instanceof Preparation.Skived skived ? skived.thicknessLeft() : belt.thickness();
        this.foldThickness = fold.mm();
        this.rule = FoldRule.of(belt.measuredNeutralLine(), Face.GRAIN, belt.preparation(), foldThickness);
    }

    FoldRule rule() {
        return rule;
    }

    double turnedBackThicknessMm() {
        return turnedBackThickness;
    }

    /** Thickness in the turn from the middle of the bar to the main leg. */
    double foldThicknessMm() {
        return foldThickness;
    }

    /** Thickness in the turn before the middle of the bar: as thin as the fold and the turned-back end make it. */
    double foldBeforeMm() {
        return Math.min(turnedBackThickness, foldThickness);
    }

    /** Whether the legs stay apart, side by side from the bar on. */
    boolean parallel() {
        return belt.contact().mm() == 0;
    }

    /** Length of the turned-back end beyond where both legs meet. */
    double tailMm() {
        return belt.turnBackLength().mm() - belt.contact().mm();
    }

    Piece.TurnBack turnBack() {
        return turnBack(Piece.Spread.NONE);
    }

    /** Thickness of the pictured leg that is turned back: where the legs stay apart, as thin as its part of the turn. */
    private double legBelowMm() {
        return parallel() ? foldBeforeMm() : turnedBackThickness;
    }

    /** Thickness of the pictured main leg. */
    double legAboveMm() {
        return parallel() ? foldThickness : belt.thickness().mm();
    }

    private Piece.TurnBack turnBack(Piece.Spread spread) {
        return new Piece.TurnBack(
                BUCKLE,
                belt.barDiameter().mm(),
                belt.contact().mm(),
                foldBeforeMm(),
                foldThickness,
                rule.k(),
                Face.GRAIN,
                spread);
    }

    /** The turn round the bar: a turn-back, or two quarter turns where the legs stay parallel. */
    private Piece turn() {
        return parallel()
                ? new Piece.Bend(BUCKLE, List.of(quarter(foldBeforeMm()), quarter(foldThickness)))
                : turnBack();
    }

    /** Half the turn where the legs stay parallel. */
    Stretch.Arc quarter(double thickness) {
        return new Stretch.Arc(Math.PI / 2, belt.barDiameter().mm() / 2, thickness, rule.k(), Face.GRAIN);
    }

    /** The belt with its main leg reaching to a distance from the bar, laid flat from its turned-back end. */
    FoldedStrap folded(double reachMm) {
        return new FoldedStrap(List.of(
                new Piece.Run(TURNED_BACK, tailMm(), turnedBackThickness),
                turn(),
                new Piece.Run(
                        MAIN, reachMm - belt.contact().mm(), belt.thickness().mm())));
    }

    /** What is thinned, on the flat belt; the ramps are those of a skived turn. */
    Skives skives(FoldedStrap strap) {
        double ramp = belt.preparation() instanceof Preparation.Skived skived
                ? skived.ramp().mm()
                : 0;
        return new Skives(strap, belt.thickness().mm(), piece -> piece.id().equals(BUCKLE) ? ramp : 0);
    }

    /**
     * The buckle end to be pictured: the bar’s centre at (0, 0), the main leg above and running to the right. Legs that
     * meet are as thick as they are, the turn between them as thin as it is.
     */
    FoldedStrap pictured(double reachMm) {
        double below = legBelowMm() + (parallel() ? belt.barDiameter().mm() / 2 : 0);
        Piece.Spread spread = new Piece.Spread(legBelowMm() - foldBeforeMm(), legAboveMm() - foldThickness);
        return new FoldedStrap(
                List.of(
                        new Piece.Run(TURNED_BACK, tailMm(), legBelowMm()),
                        parallel() ? turn() : turnBack(spread),
                        new Piece.Run(MAIN, reachMm - belt.contact().mm(), legAboveMm())),
                new Pose(belt.turnBackLength().mm(), -below, Math.PI));
    }

    /** Where the middle of the bar lies on the flat belt, half-way through the stretches of the turn. */
    static double middleMm(PlacedPiece turn) {
        List<PlacedStretch> stretches = turn.stretches();
        return turn.flatStart()
                + stretches.subList(0, stretches.size() / 2).stream()
                        .mapToDouble(placed -> placed.stretch().flatMm())
                        .sum();
    }

    /** How far behind the bar’s centre, away from the belt, sizes are measured from. */
    double behindBarMm() {
        switch (belt.datum()) {
            case FOLD:
                return outsideOfFoldMm();
            case FRAME_END:
                return belt.frameLength().mm();
            default:
                return 0;
        }
    }

    /** How far the outside of the fold lies behind the bar’s centre. */
    double outsideOfFoldMm() {
        return belt.barDiameter().mm() / 2 + foldThickness;
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
