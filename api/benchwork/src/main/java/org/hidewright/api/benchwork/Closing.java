package org.hidewright.api.benchwork;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How a piece with a flap is closed, or not: variants of a question that bring their own texts. */
public sealed interface Closing {
    /** By nothing: no flap. */
    record Open(
            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "8-25 mm", preset = "12 mm")
            Length standsOut) implements Closing {
        @Override
        public Optional<Closure> closure() {
            return Optional.empty();
        }
    }

    /** By a stud and a slit. */
    record Stud(
            @Asked(unit = "mm", min = "1 mm", max = "8 mm", usual = "2-4 mm", preset = "3 mm")
            Length post,

            @Asked(unit = "mm", min = "1 mm", max = "12 mm", usual = "3-6 mm", preset = "4 mm")
            Length neck,

            @Asked(unit = "mm", min = "2 mm", max = "30 mm", usual = "6-10 mm", preset = "7 mm")
            Length slit)
            implements Closing {
        @Override
        public Optional<Closure> closure() {
            return Optional.of(Closure.stud(post.mm(), neck.mm(), slit.mm()));
        }
    }

    /** By a snap. */
    record Snap(
            @Asked(unit = "mm", min = "1 mm", max = "10 mm", usual = "3-5.5 mm", preset = "4.5 mm")
            Length capHole,

            @Asked(unit = "mm", min = "1 mm", max = "10 mm", usual = "3-5 mm", preset = "4 mm")
            Length studHole,

            @Asked(unit = "mm", min = "4 mm", max = "30 mm", usual = "10-15 mm", preset = "12.5 mm")
            Length cap)
            implements Closing {
        @Override
        public Optional<Closure> closure() {
            return Optional.of(Closure.snap(capHole.mm(), studHole.mm(), cap.mm()));
        }
    }

    /** By a magnet with prongs. */
    record Magnet(
            @Asked(unit = "mm", min = "3 mm", max = "30 mm", usual = "7-12 mm", preset = "9 mm")
            Length apart,

            @Asked(unit = "mm", min = "1 mm", max = "20 mm", usual = "3-6 mm", preset = "4 mm")
            Length prong,

            @Asked(unit = "mm", min = "5 mm", max = "40 mm", usual = "14-18 mm", preset = "18 mm")
            Length body)
            implements Closing {
        @Override
        public Optional<Closure> closure() {
            return Optional.of(Closure.magnet(apart.mm(), prong.mm(), body.mm()));
        }
    }

    /** What it cuts; empty where there is nothing. */
    Optional<Closure> closure();
}
