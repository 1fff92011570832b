package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Drawing;

/**
 * Patterns in true size, each sheet with squares to check the print against. Small ones share a sheet; one that is larger
 * than a sheet goes over several, which overlap and are laid together cross on cross.
 */
public final class PatternSheets implements Block {
    /**
     * One pattern.
     *
     * @param name said on each of its sheets
     */
    public record Pattern(String name, Drawing drawing) {
        /** Everything is there. */
        public Pattern {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(drawing, "drawing");
        }
    }

    private final List<Pattern> patterns;
    private final String trueSize;
    private final String behind;
    private final String tile;

    private PatternSheets(List<Pattern> patterns, String trueSize, String behind, String tile) {
        this.patterns = List.copyOf(patterns);
        this.trueSize = Objects.requireNonNull(trueSize, "trueSize");
        this.behind = Objects.requireNonNull(behind, "behind");
        this.tile = Objects.requireNonNull(tile, "tile");
    }

    /**
     * Sheets of patterns.
     *
     * @param trueSize said beside the squares: what they must measure, and how to print
     * @param behind said at the head of a sheet so full that the squares stand pale behind the pattern
     * @param tile said at the head of each of several sheets of one pattern, with <code>{0}</code> for its name,
     *     <code>{1}</code> and <code>{2}</code> for the number of the sheet and how many there are, <code>{3}</code> and
     *     <code>{4}</code> for its row from the top and its column from the left
     */
    public static PatternSheets of(List<Pattern> patterns, String trueSize, String behind, String tile) {
        return new PatternSheets(patterns, trueSize, behind, tile);
    }

    /** What is laid on the sheets. */
    public List<Pattern> patterns() {
        return patterns;
    }

    /** Said beside the squares: what they must measure, and how to print. */
    public String trueSizeText() {
        return trueSize;
    }

    /** Said at the head of a sheet so full that the squares stand pale behind the pattern. */
    public String behindText() {
        return behind;
    }

    /** What is said at the head of one of several sheets. */
    public String tileText(String name, int sheet, int sheets, int row, int column) {
        return tile.replace("{1}", Integer.toString(sheet))
                .replace("{2}", Integer.toString(sheets))
                .replace("{3}", Integer.toString(row))
                .replace("{4}", Integer.toString(column))
                .replace("{0}", name);
    }
}
