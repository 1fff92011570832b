package org.hidewright.straps;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;

/** A strap’s width against the inside of its hardware; half a millimetre to one less is usual (common practice). */
final class HardwareFit {
    static final NoticeKind WIDER = NoticeKind.check("strap-wider-than-hardware");
    static final NoticeKind TOO_WIDE = NoticeKind.check("strap-as-wide-as-hardware");
    static final NoticeKind TIGHT = NoticeKind.check("strap-tight-in-hardware");
    static final NoticeKind LOOSE = NoticeKind.note("strap-loose-in-hardware");
    static final List<NoticeKind> KINDS = List.of(WIDER, TOO_WIDE, TIGHT, LOOSE);

    static final double LEAST_EASE_MM = 0.5;
    static final Length LEAST_EASE = Length.ofMm(LEAST_EASE_MM);
    static final Length USUAL_EASE = Length.ofMm(1);
    static final double MOST_EASE_MM = 3;

    private HardwareFit() {}

    static Optional<Notice> check(Length width, Optional<Length> insideWidth) {
        if (insideWidth.isEmpty()) {
            return Optional.empty();
        }
        double ease = insideWidth.get().mm() - width.mm();
        if (ease < -1e-9) {
            return Optional.of(WIDER.at("width", width, insideWidth.get(), Length.ofMm(-ease), LEAST_EASE, USUAL_EASE));
        }
        if (ease < 1e-9) {
            return Optional.of(TOO_WIDE.at("width", width, insideWidth.get(), LEAST_EASE, USUAL_EASE));
        }
        if (ease < LEAST_EASE_MM - 1e-9) {
            return Optional.of(TIGHT.at("width", width, insideWidth.get(), Length.ofMm(ease), LEAST_EASE, USUAL_EASE));
        }
        return ease > MOST_EASE_MM + 1e-9
                ? Optional.of(LOOSE.at("width", width, insideWidth.get(), Length.ofMm(ease)))
                : Optional.empty();
    }
}
