package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;

/** What is told where somebody can be hurt by a fitting, or a fitting spoilt by a mistake that is often made. */
final class Cautions {
    static final NoticeKind STRUCK_TOOLS = NoticeKind.caution("struck-tools");
    static final NoticeKind NICKEL = NoticeKind.caution("nickel");
    static final NoticeKind SMALL_PARTS = NoticeKind.caution("small-parts");
    static final NoticeKind NO_LOAD = NoticeKind.caution("fitting-no-load");
    static final NoticeKind MAGNETS = NoticeKind.caution("magnets");
    static final NoticeKind NO_SETTER = NoticeKind.check("no-setter");
    static final NoticeKind LINES = NoticeKind.check("lines-for-size");
    static final List<NoticeKind> KINDS = List.of(STRUCK_TOOLS, NICKEL, SMALL_PARTS, NO_LOAD);

    /** Caps and heads are told in lines in catalogues; above this a whole number is likelier lines than millimetres. */
    private static final double LARGEST_HEAD_MM = 17;

    private static final double LINE_MM = 25.4 / 40;

    private Cautions() {}

    static void tell(Use use, HoleMade made, List<Notice> notices) {
        if (made instanceof HoleMade.Punched) {
            notices.add(STRUCK_TOOLS.with());
        }
        tell(use, notices);
    }

    static void tell(Use use, List<Notice> notices) {
        if (use.touchesSkin()) {
            notices.add(NICKEL.with());
        }
        if (use.forChildren()) {
            notices.add(SMALL_PARTS.with());
        }
        if (use.bearsLoad()) {
            notices.add(NO_LOAD.with());
        }
    }

    static Optional<Notice> setter(Shank shank, String place) {
        return shank.setter().isEmpty() ? Optional.of(NO_SETTER.at(place + ".setter")) : Optional.empty();
    }

    /** A size of a head that is likelier the number it is sold by. */
    static Optional<Notice> lines(Shank shank, String place) {
        return shank.headDiameter()
                .filter(head -> head.mm() > LARGEST_HEAD_MM && Math.abs(head.mm() - Math.rint(head.mm())) < 1e-9)
                .map(head -> LINES.at(place + ".head-diameter", head, (int) Math.rint(head.mm()), lines(head.mm())));
    }

    /** What so many lines of a button are, 1/40 in each. */
    static Length lines(double count) {
        return Length.of(count * LINE_MM, Units.MM);
    }
}
