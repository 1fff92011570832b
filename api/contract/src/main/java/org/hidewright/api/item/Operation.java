package org.hidewright.api.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hidewright.api.measure.Duration;

/** One thing that is done to make an item: what, on what, with what, after what, how long, and how long it then waits. */
public final class Operation {
    private final String id;
    private final String what;
    private final List<String> on;
    private final List<String> after;
    private final String tool;
    private final Duration handsOn;
    private final Duration leastWait;
    private final Duration mostWait;

    private Operation(Builder builder) {
        this.id = builder.id;
        this.what = builder.what;
        this.on = List.copyOf(builder.on);
        this.after = List.copyOf(builder.after);
        this.tool = builder.tool;
        this.handsOn = builder.handsOn;
        this.leastWait = builder.leastWait;
        this.mostWait = builder.mostWait;
    }

    /** @param what the verb of the trade and what it is done to, as it is to be read at the bench */
    public static Builder of(String id, String what) {
        return new Builder(id, what);
    }

    /** Its name among the operations of the item. */
    public String id() {
        return id;
    }

    /** What is done, as it is printed. */
    public String what() {
        return what;
    }

    /** Ids of the parts, seams and fittings it is done on. */
    public List<String> on() {
        return on;
    }

    /** Ids of the operations that must be done before. */
    public List<String> after() {
        return after;
    }

    /** Tool or station; empty where nothing is said. */
    public String tool() {
        return tool;
    }

    /** How long hands are at it. */
    public Optional<Duration> handsOn() {
        return Optional.ofNullable(handsOn);
    }

    /** How long what comes after has to wait at least. */
    public Optional<Duration> leastWait() {
        return Optional.ofNullable(leastWait);
    }

    /** How long what comes after may wait at most, as with glue that must not dry. */
    public Optional<Duration> mostWait() {
        return Optional.ofNullable(mostWait);
    }

    private List<Object> values() {
        return List.of(id, what, on, after, tool, handsOn(), leastWait(), mostWait());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Operation operation && values().equals(operation.values());
    }

    @Override
    public int hashCode() {
        return values().hashCode();
    }

    @Override
    public String toString() {
        return "Operation[" + id + ", after " + after + "]";
    }

    /** Says more of an operation; not for use by several threads. */
    public static final class Builder {
        private final String id;
        private final String what;
        private final List<String> on = new ArrayList<>();
        private final List<String> after = new ArrayList<>();
        private String tool = "";
        private Duration handsOn;
        private Duration leastWait;
        private Duration mostWait;

        private Builder(String id, String what) {
            this.id = Ids.of(id);
            this.what = Ids.of(what);
        }

        /** Adds ids of the parts, seams and fittings it is done on. */
        public Builder on(List<String> ids) {
            on.addAll(ids);
            return this;
        }

        /** Adds ids of operations that must be done before. */
        public Builder after(List<String> ids) {
            after.addAll(ids);
            return this;
        }

        /** What it is done with. */
        public Builder tool(String name) {
            this.tool = Objects.requireNonNull(name, "name");
            return this;
        }

        /** How long hands are at it. */
        public Builder handsOn(Duration time) {
            this.handsOn = Objects.requireNonNull(time, "time");
            return this;
        }

        /** How long what comes after has to wait at least. */
        public Builder leastWait(Duration time) {
            this.leastWait = Objects.requireNonNull(time, "time");
            return this;
        }

        /** How long what comes after may wait at most. */
        public Builder mostWait(Duration time) {
            this.mostWait = Objects.requireNonNull(time, "time");
            return this;
        }

        /** @throws IllegalArgumentException if the longest wait is shorter than the shortest */
        public Operation build() {
            if (leastWait != null && mostWait != null && mostWait.seconds() < leastWait.seconds()) {
                throw new IllegalArgumentException("no time is at least " + leastWait + " and at most " + mostWait);
            }
            return new Operation(this);
        }
    }
}
