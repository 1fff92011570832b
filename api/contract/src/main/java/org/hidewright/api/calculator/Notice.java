package org.hidewright.api.calculator;

import java.util.List;
import java.util.Objects;

/** Something a maker must be told, made by {@link NoticeKind#with} or {@link NoticeKind#at}. */
public final class Notice {
    private final NoticeKind kind;
    private final String place;
    private final List<Object> args;

    Notice(NoticeKind kind, String place, List<Object> args) {
        this.kind = kind;
        this.place = place;
        this.args = args;
    }

    /** What it is, with the key of its texts. */
    public NoticeKind kind() {
        return kind;
    }

    /** The question it is about, as {@code key} or {@code list[row-id].column}; empty when about the whole. */
    public String place() {
        return place;
    }

    /** What is put into its texts, as in {@link Phrase#args()}. */
    public List<Object> args() {
        return args;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Notice
                && ((Notice) other).kind.equals(kind)
                && ((Notice) other).place.equals(place)
                && ((Notice) other).args.equals(args);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, place, args);
    }

    @Override
    public String toString() {
        return kind + (place.isEmpty() ? "" : " at " + place) + " " + args;
    }
}
