package org.hidewright.core.proof;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with a text that a bundle carries, though it can be read. */
public final class ProofNotices {
    public static final NoticeKind PROOF_OTHER_ID = NoticeKind.check("proof-other-id");
    public static final NoticeKind PROOF_NO_EXAMPLE = NoticeKind.check("proof-no-example");
    public static final NoticeKind PROOF_NO_LIMITS = NoticeKind.check("proof-no-limits");
    public static final NoticeKind PROOF_USUAL_OUTSIDE = NoticeKind.check("proof-usual-outside");
    public static final NoticeKind PROOF_PRESET_UNUSUAL = NoticeKind.check("proof-preset-unusual");
    public static final NoticeKind PROOF_BLANK = NoticeKind.check("proof-blank");
    public static final NoticeKind PROOF_UNFILLED = NoticeKind.check("proof-unfilled");
    public static final NoticeKind PROOF_EXAMPLE_REFUSED = NoticeKind.check("proof-example-refused");
    public static final NoticeKind PROOF_EXAMPLE_UNREAD = NoticeKind.check("proof-example-unread");
    public static final NoticeKind PROOF_NOT_ASKED = NoticeKind.stop("proof-not-asked");
    public static final NoticeKind PROOF_NOT_ASKED_NEAREST = NoticeKind.stop("proof-not-asked-nearest");
    public static final NoticeKind PROOF_NOT_DRAWN = NoticeKind.check("proof-not-drawn");
    public static final NoticeKind PROOF_UNUSED = NoticeKind.check("proof-unused");
    public static final NoticeKind PROOF_NO_SUCH_PLACE = NoticeKind.check("proof-no-such-place");
    public static final NoticeKind PROOF_REFUSED = NoticeKind.check("proof-refused");
    public static final NoticeKind PROOF_NEVER_TOLD = NoticeKind.check("proof-never-told");
    public static final NoticeKind PROOF_ALWAYS_TOLD = NoticeKind.check("proof-always-told");
    public static final NoticeKind PROOF_FEW = NoticeKind.check("proof-few");
    public static final NoticeKind PROOF_NOT_ITS_WORDS = NoticeKind.check("proof-not-its-words");
    public static final NoticeKind PROOF_BROKE = NoticeKind.check("proof-broke");
    public static final NoticeKind PROOF_NO_NUMBER = NoticeKind.check("proof-no-number");
    public static final NoticeKind PROOF_PART = NoticeKind.check("proof-part");
    public static final NoticeKind PROOF_EXAMPLE_PART = NoticeKind.check("proof-example-part");
    public static final NoticeKind PROOF_OTHER_ANSWER = NoticeKind.check("proof-other-answer");
    public static final NoticeKind PROOF_TRANSLATION_SPOILT = NoticeKind.check("proof-translation-spoilt");
    public static final NoticeKind PROOF_TRANSLATION_ESCAPE = NoticeKind.check("proof-translation-escape");
    public static final NoticeKind PROOF_TRANSLATION_TWICE = NoticeKind.check("proof-translation-twice");
    public static final NoticeKind PROOF_TRANSLATION_UNKNOWN = NoticeKind.check("proof-translation-unknown");
    public static final NoticeKind PROOF_TRANSLATION_NEAREST = NoticeKind.check("proof-translation-nearest");
    public static final NoticeKind PROOF_TRANSLATION_PLACES = NoticeKind.check("proof-translation-places");
    public static final NoticeKind PROOF_TRANSLATION_MISSING = NoticeKind.check("proof-translation-missing");

    private ProofNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                PROOF_OTHER_ID,
                PROOF_NO_EXAMPLE,
                PROOF_NO_LIMITS,
                PROOF_USUAL_OUTSIDE,
                PROOF_PRESET_UNUSUAL,
                PROOF_BLANK,
                PROOF_UNFILLED,
                PROOF_EXAMPLE_REFUSED,
                PROOF_EXAMPLE_UNREAD,
                PROOF_NOT_ASKED,
                PROOF_NOT_ASKED_NEAREST,
                PROOF_NOT_DRAWN,
                PROOF_UNUSED,
                PROOF_NO_SUCH_PLACE,
                PROOF_REFUSED,
                PROOF_NEVER_TOLD,
                PROOF_ALWAYS_TOLD,
                PROOF_FEW,
                PROOF_NOT_ITS_WORDS,
                PROOF_BROKE,
                PROOF_NO_NUMBER,
                PROOF_PART,
                PROOF_EXAMPLE_PART,
                PROOF_OTHER_ANSWER,
                PROOF_TRANSLATION_SPOILT,
                PROOF_TRANSLATION_ESCAPE,
                PROOF_TRANSLATION_TWICE,
                PROOF_TRANSLATION_UNKNOWN,
                PROOF_TRANSLATION_NEAREST,
                PROOF_TRANSLATION_PLACES,
                PROOF_TRANSLATION_MISSING);
    }
}
