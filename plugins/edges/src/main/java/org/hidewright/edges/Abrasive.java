package org.hidewright.edges;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.RowId;

/** Paper or a block that is there; the workshop’s table of abrasives can be taken for them. */
public record Abrasive(
        @RowId String id,

        @Asked(min = "5", max = "10000", usual = "80-3000", example = "400")
        int grit,

        @Asked(preset = "p") GritScale system) {
    static final NoticeKind UNKNOWN = NoticeKind.stop("grit-unknown");
    static final NoticeKind TWO_CHARTS = NoticeKind.note("grit-two-charts");

    /** The first grade that its scale does not have. */
    static Optional<Notice> unknown(List<Abrasive> abrasives) {
        return abrasives.stream()
                .filter(abrasive -> abrasive.system.micrometres(abrasive.grit).isEmpty())
                .findFirst()
                .map(abrasive -> unknown(place(abrasive), abrasive.grit, abrasive.system));
    }

    static Notice unknown(String place, int number, GritScale scale) {
        return UNKNOWN.at(place, number, scale, scale.label(nearest(scale, number)));
    }

    /** An American number above which the charts disagree. */
    static Optional<Notice> twoCharts(List<Abrasive> abrasives) {
        return abrasives.stream()
                .filter(abrasive -> abrasive.system.isAmerican() && abrasive.grit > GritScale.SCALES_AGREE_UP_TO)
                .findFirst()
                .map(abrasive -> TWO_CHARTS.at(place(abrasive), abrasive.system.label(abrasive.grit)));
    }

    static List<Grit> grits(List<Abrasive> abrasives) {
        return abrasives.stream()
                .map(abrasive -> abrasive.system.grit(abrasive.grit))
                .toList();
    }

    private static String place(Abrasive abrasive) {
        return "abrasives[" + abrasive.id + "].grit";
    }

    private static int nearest(GritScale scale, int number) {
        Integer below = scale.grades().floorKey(number);
        Integer above = scale.grades().ceilingKey(number);
        if (below == null || above == null) {
            return below == null ? above : below;
        }
        return number - below <= above - number ? below : above;
    }
}
