package org.hidewright.testkit.faults;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Faults of declarations. */
public final class Declared {
    private Declared() {}

    /** It asks for what has neither preset nor example. */
    @Calculates("no-example")
    public static final class NoExample implements Calculator<NoExample.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", min = "3 mm", max = "200 mm")
                Length width) {}

        @Override
        public Outcome<Strip.Takes> calculate(NoExample.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It takes any width, also less than nothing. */
    @Calculates("no-limits")
    public static final class NoLimits implements Calculator<NoLimits.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", example = "25 mm") Length width) {}

        @Override
        public Outcome<Strip.Takes> calculate(NoLimits.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** Some of what is usual is not let through. */
    @Calculates("usual-outside")
    public static final class UsualOutside implements Calculator<UsualOutside.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", min = "20 mm", max = "50 mm", usual = "10-60 mm", example = "25 mm")
                Length width) {}

        @Override
        public Outcome<Strip.Takes> calculate(UsualOutside.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** What it takes when nothing is typed is unusual. */
    @Calculates("unusual-preset")
    public static final class UnusualPreset implements Calculator<UnusualPreset.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", min = "3 mm", max = "200 mm", usual = "10-60 mm", preset = "90 mm")
                Length width) {}

        @Override
        public Outcome<Strip.Takes> calculate(UnusualPreset.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** What it takes when nothing is typed is outside its limits. */
    @Calculates("preset-outside")
    public static final class PresetOutside implements Calculator<PresetOutside.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", min = "3 mm", max = "20 mm", preset = "90 mm")
                Length width) {}

        @Override
        public Outcome<Strip.Takes> calculate(PresetOutside.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** Two questions have one key. */
    @Calculates("key-twice")
    public static final class KeyTwice implements Calculator<KeyTwice.Asks, Strip.Takes> {
        public record Asks(
                @Asked(unit = "mm", min = "3 mm", max = "200 mm", preset = "25 mm")
                Length width,

                @Asked(unit = "mm", min = "3 mm", max = "200 mm", preset = "25 mm")
                Length Width) {}

        @Override
        public Outcome<Strip.Takes> calculate(KeyTwice.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** Its example leaves open what has no preset. */
    @Calculates("odd-example")
    public static final class OddExample implements Calculator<OddExample.Asks, Strip.Takes> {
        public record Sides(
                @Asked(unit = "mm", min = "3 mm", max = "200 mm", example = "25 mm")
                Length width,

                @Asked(unit = "mm", min = "10 mm", max = "3 m", example = "400 mm")
                Length length) {}

        public record Asks(
                @Asked(example = "{\"width\":\"30 mm\"}") Sides strip) {}

        @Override
        public Outcome<Strip.Takes> calculate(OddExample.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.strip().width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** Nobody knows where its number comes from. */
    @Calculates("no-source")
    public static final class NoSource implements Calculator<Strip.Asks, NoSource.Takes> {
        public record Takes(@Answered(unit = "mm") Length width) {}

        @Override
        public Outcome<NoSource.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(new Takes(asks.width()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** Its numbers name what nobody lists. */
    @Calculates("wrong-source")
    public static final class WrongSource implements Calculator<Strip.Asks, WrongSource.Takes> {
        public record Takes(
                @Answered(unit = "mm", by = "breadth") Length width,

                @Answered(unit = "mm", by = "strip-are") Length half) {}

        @Override
        public Outcome<WrongSource.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(new Takes(asks.width(), asks.width().times(0.5)));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }
}
