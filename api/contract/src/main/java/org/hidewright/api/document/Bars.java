package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/**
 * Amounts as bars beside each other, where looking is quicker than reading: shares of a sum, times one after the other. Every bar has
 * its name before it and its amount in words behind it, so that nothing has to be measured off the paper. All bars of a block have
 * one scale, from nought to the furthest end. Blocks of equal bars are equal.
 */
public final class Bars implements Block {
    private final String caption;
    private final List<Bar> bars;

    private Bars(String caption, List<Bar> bars) {
        this.caption = Objects.requireNonNull(caption, "caption");
        this.bars = List.copyOf(bars);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("bars without a bar");
        }
    }

    /**
     * Bars under each other.
     *
     * @param caption what they show; empty for none
     * @throws IllegalArgumentException if there is no bar
     */
    public static Bars of(String caption, List<Bar> bars) {
        return new Bars(caption, bars);
    }

    /** What they show; empty for none. */
    public String caption() {
        return caption;
    }

    /** From above to below; never none. */
    public List<Bar> bars() {
        return bars;
    }

    /** The furthest end of any bar; 0 where all amounts are nothing. */
    public double furthest() {
        return bars.stream()
                .flatMap(bar -> bar.stretches().stream())
                .mapToDouble(Stretch::to)
                .max()
                .orElse(0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Bars like && caption.equals(like.caption) && bars.equals(like.bars);
    }

    @Override
    public int hashCode() {
        return Objects.hash(caption, bars);
    }

    /** One bar, which may be in stretches with room between. */
    public static final class Bar {
        private final String label;
        private final List<Stretch> stretches;
        private final String text;

        private Bar(String label, List<Stretch> stretches, String text) {
            this.label = Objects.requireNonNull(label, "label");
            this.stretches = List.copyOf(stretches);
            this.text = Objects.requireNonNull(text, "text");
        }

        /**
         * A bar from nought on.
         *
         * @param label what it stands for
         * @param amount how long it is, not negative, in the unit of all bars of the block
         * @param text the amount as it is read
         * @throws IllegalArgumentException if the amount is negative or no number
         */
        public static Bar of(String label, double amount, String text) {
            return new Bar(label, List.of(Stretch.of(0, amount)), text);
        }

        /** A bar of stretches, as a task in its time with the wait after it. */
        public static Bar of(String label, List<Stretch> stretches, String text) {
            return new Bar(label, stretches, text);
        }

        /** What it stands for. */
        public String label() {
            return label;
        }

        /** From nought on, in the order they were given. */
        public List<Stretch> stretches() {
            return stretches;
        }

        /** The amount as it is read. */
        public String text() {
            return text;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Bar like
                    && label.equals(like.label)
                    && stretches.equals(like.stretches)
                    && text.equals(like.text);
        }

        @Override
        public int hashCode() {
            return Objects.hash(label, stretches, text);
        }
    }

    /** A stretch of a bar. */
    public static final class Stretch {
        private final double from;
        private final double to;
        private final boolean faint;

        private Stretch(double from, double to, boolean faint) {
            if (!(from >= 0 && to >= from && to < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a stretch from " + from + " to " + to);
            }
            this.from = from;
            this.to = to;
            this.faint = faint;
        }

        /**
         * A stretch in full ink.
         *
         * @throws IllegalArgumentException if it ends before it begins, begins below 0, or one of both is no number
         */
        public static Stretch of(double from, double to) {
            return new Stretch(from, to, false);
        }

        /** A faint stretch, in outline: a wait, a part that is not certain. */
        public static Stretch faint(double from, double to) {
            return new Stretch(from, to, true);
        }

        /** Where it begins, not below 0, in the unit of all bars of the block. */
        public double from() {
            return from;
        }

        /** Where it ends, not before it begins. */
        public double to() {
            return to;
        }

        /** Whether it is drawn in outline alone. */
        public boolean isFaint() {
            return faint;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Stretch like && from == like.from && to == like.to && faint == like.faint;
        }

        @Override
        public int hashCode() {
            return Objects.hash(from, to, faint);
        }
    }
}
