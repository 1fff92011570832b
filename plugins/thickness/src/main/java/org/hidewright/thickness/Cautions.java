package org.hidewright.thickness;

import org.hidewright.api.calculator.NoticeKind;

/** Cautions that several calculators of this bundle raise where their work can hurt somebody. */
final class Cautions {
    /** A blade pushed through leather by hand. */
    static final NoticeKind BLADE = NoticeKind.caution("blade");
    /** Dust of sanded or skived leather, a proven carcinogen (IARC volume 100C). */
    static final NoticeKind LEATHER_DUST = NoticeKind.caution("leather-dust");
    /** Heat, light and dry air on chrome-tanned leather: chromium(VI). */
    static final NoticeKind CHROME_HEAT = NoticeKind.caution("chrome-heat");
    /** A joint somebody may hang from. */
    static final NoticeKind NOT_FOR_LOADS = NoticeKind.caution("not-for-loads");

    private Cautions() {}
}
