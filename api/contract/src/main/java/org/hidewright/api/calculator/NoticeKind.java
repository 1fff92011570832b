package org.hidewright.api.calculator;

import java.util.List;
import java.util.Objects;

/**
 * A kind of notice a calculator can raise: its severity and the key of its texts.
 *
 * <p>The texts are {@code notice.KEY.what}, {@code notice.KEY.why} and {@code notice.KEY.next}: what is the matter and
 * where, why it matters, what to do. Kinds are constants of the bundle and are listed by
 * {@link Calculator#notices()}.
 */
public final class NoticeKind {
    /** How much a notice weighs. */
    public enum Severity {
        /** No answer is possible. */
        STOP,
        /** The answer stands, but the piece would not work as it is: mend it before cutting. */
        CHECK,
        /** Somebody can be hurt. */
        CAUTION,
        /** Worth knowing. */
        NOTE
    }

    private final Severity severity;
    private final String key;

    private NoticeKind(Severity severity, String key) {
        this.severity = severity;
        this.key = Objects.requireNonNull(key, "key");
    }

    /** A kind of notice that there is no answer. */
    public static NoticeKind stop(String key) {
        return new NoticeKind(Severity.STOP, key);
    }

    /** A kind of notice of what should be mended before cutting. */
    public static NoticeKind check(String key) {
        return new NoticeKind(Severity.CHECK, key);
    }

    /** A kind of notice that somebody can be hurt. */
    public static NoticeKind caution(String key) {
        return new NoticeKind(Severity.CAUTION, key);
    }

    /** A kind of notice of what is worth knowing. */
    public static NoticeKind note(String key) {
        return new NoticeKind(Severity.NOTE, key);
    }

    /** A notice of this kind about the calculation as a whole, with the arguments of its texts. */
    public Notice with(Object... args) {
        return new Notice(this, "", List.of(args));
    }

    /**
     * A notice of this kind about one question.
     *
     * @param place the question's key, or for a row {@code list[row-id].column}
     */
    public Notice at(String place, Object... args) {
        return new Notice(this, Objects.requireNonNull(place, "place"), List.of(args));
    }

    /** How much it matters. */
    public Severity severity() {
        return severity;
    }

    /** Its key: its texts are {@code notice.KEY.what}, {@code .why} and {@code .next}. */
    public String key() {
        return key;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NoticeKind
                && ((NoticeKind) other).severity == severity
                && ((NoticeKind) other).key.equals(key);
    }

    @Override
    public int hashCode() {
        return Objects.hash(severity, key);
    }

    @Override
    public String toString() {
        return severity + " " + key;
    }
}
