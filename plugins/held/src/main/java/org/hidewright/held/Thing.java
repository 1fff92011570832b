package org.hidewright.held;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** What is held. */
public sealed interface Thing {
    /** Anything, by its own measures. */
    record Measured(
            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "2 m",
                    usual = "10-400 mm",
                    example = "120 mm",
                    picture = "thing#width")
            Length width,

            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "2 m",
                    usual = "10-400 mm",
                    example = "180 mm",
                    picture = "thing#height")
            Length height,

            @Asked(
                    unit = "mm",
                    min = "0.05 mm",
                    max = "500 mm",
                    usual = "0.3-60 mm",
                    example = "18 mm",
                    picture = "thing#thickness")
            Length thickness)
            implements Thing {
        @Override
        public Bulk bulk() {
            return new Bulk(width.mm(), height.mm(), thickness.mm(), false);
        }
    }

    /** Something round that lies flat, by its own measures. */
    record MeasuredRound(
            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "2 m",
                    usual = "10-400 mm",
                    example = "60 mm",
                    picture = "round-thing#diameter")
            Length diameter,

            @Asked(
                    unit = "mm",
                    min = "0.05 mm",
                    max = "500 mm",
                    usual = "0.3-60 mm",
                    example = "14 mm",
                    picture = "round-thing#thickness")
            Length thickness)
            implements Thing {
        @Override
        public Bulk bulk() {
            return new Bulk(diameter.mm(), diameter.mm(), thickness.mm(), true);
        }
    }

    /** Cards on each other. */
    record Cards(
            @Asked(preset = "id-1") Card card,

            @Asked(min = "1", max = "500", usual = "1-12", preset = "1")
            int count) implements Thing {
        @Override
        public Bulk bulk() {
            return new Bulk(card.width(), card.height(), count * card.thickness(), false);
        }
    }

    /** Sheets or a booklet. */
    record Sheets(
            @Asked(preset = "a6") Paper paper,

            @Asked(unit = "mm", min = "0.05 mm", max = "200 mm", usual = "0.1-30 mm", example = "8 mm")
            Length thickness)
            implements Thing {
        @Override
        public Bulk bulk() {
            return new Bulk(
                    paper.width() + tolerance(paper.width()),
                    paper.height() + tolerance(paper.height()),
                    thickness.mm(),
                    false);
        }

        /** Of ISO 216; from memory. */
        private static double tolerance(double side) {
            if (side <= 150) {
                return 1.5;
            }
            return side <= 600 ? 2 : 3;
        }
    }

    /** Round cells lying side by side, or button cells on each other. */
    record Cells(
            @Asked(preset = "r6") Cell cell,

            @Asked(min = "1", max = "100", usual = "1-8", preset = "2")
            int count) implements Thing {
        @Override
        public Bulk bulk() {
            return cell.isButton()
                    ? new Bulk(cell.diameter(), cell.diameter(), count * cell.height(), true)
                    : new Bulk(count * cell.diameter(), cell.height(), cell.diameter(), false);
        }
    }

    /** Coins on each other. */
    record Coins(
            @Asked(preset = "euro-1") Coin coin,

            @Asked(min = "1", max = "200", usual = "1-20", preset = "1")
            int count) implements Thing {
        @Override
        public Bulk bulk() {
            return new Bulk(coin.diameter(), coin.diameter(), count * coin.thickness(), true);
        }
    }

    /** The greatest it can be. */
    Bulk bulk();
}
