package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;

/**
 * Lays the legs of a thinned fold where they come to lie: on each other. They are thicker than the fold, and the ramps of
 * its skive lead from the one to the other, so that the fold may be as thin as it likes.
 */
final class LegsApart {
    private static final double HALF_TURN_WITHIN_RAD = Math.toRadians(1);

    private LegsApart() {}

    static List<ReadSection> lay(List<ReadSection> sections) {
        List<ReadSection> laid = new ArrayList<>(sections);
        for (int i = 1; i + 1 < sections.size(); i++) {
            if (sections.get(i - 1).piece() instanceof Piece.Run before
                    && sections.get(i + 1).piece() instanceof Piece.Run after) {
                laid.set(i, laid(sections.get(i), before.thicknessMm(), after.thicknessMm()));
            }
        }
        return laid;
    }

    private static ReadSection laid(ReadSection section, double legBefore, double legAfter) {
        if (section.fold().filter(LegsApart::closes).isEmpty()) {
            return section;
        }
        List<Stretch> stretches = section.piece().placed(Pose.START).stream()
                .map(PlacedStretch::stretch)
                .toList();
        double before = Math.max(0, legBefore - stretches.get(0).thicknessMm());
        double after =
                Math.max(0, legAfter - stretches.get(stretches.size() - 1).thicknessMm());
        boolean runsOut = section.rampMm() >= Skives.RAMP_TO_RISE * Math.max(before, after) - 1e-9;
        double room = section.piece() instanceof Piece.Bend
                ? 2 * section.fold().orElseThrow().insideRadiusMm()
                : 0;
        double share = before + after > 0 ? Math.max(0, 1 - room / (before + after)) : 0;
        if (!runsOut || share == 0) {
            return section;
        }
        Piece.Spread spread = new Piece.Spread(share * before, share * after);
        Piece piece = section.piece() instanceof Piece.Bend bend
                ? new Piece.Bend(bend.id(), bend.stretches(), spread)
                : spread((Piece.TurnBack) section.piece(), spread);
        return new ReadSection(section.asked(), piece, section.rampMm(), section.fold());
    }

    private static Piece spread(Piece.TurnBack turnBack, Piece.Spread spread) {
        return new Piece.TurnBack(
                turnBack.id(),
                turnBack.barDiameterMm(),
                turnBack.contactMm(),
                turnBack.before(),
                turnBack.after(),
                turnBack.k(),
                turnBack.outside(),
                spread);
    }

    /** Whether the legs come to lie flesh to flesh; with the flesh outside it is the even grain faces that meet. */
    private static boolean closes(ReadSection.Fold fold) {
        return fold.outside() == Face.GRAIN && Math.abs(fold.turnRad() - Math.PI) < HALF_TURN_WITHIN_RAD;
    }
}
