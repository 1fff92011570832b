package org.hidewright.bookcover;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a cover, millimetres.
 *
 * @param margin from the seam to the finished edge
 * @param spine what goes round the back of the closed book
 * @param width finished, from edge to edge
 * @param height finished
 * @param sleeve width of a sleeve, from the edge to its mouth
 * @param liningShorter by how much a lining is shorter than the cover, to lie smooth when it is closed
 */
record Sizes(double margin, double spine, double width, double height, double sleeve, double liningShorter) {
    /** Round the corners of a book firm grain bends no tighter than a quarter of its thickness: common practice. */
    static double bendRadius(double leather) {
        return leather / 3;
    }

    static Sizes of(BookCover.Asking asked) {
        double leather = asked.thickness().mm();
        double margin = Math.max(3.5, 1.5 * leather);
        double spine = asked.held().thickness().mm() + 2 * Allowances.bend(bendRadius(leather), leather, Math.PI / 2);
        double width = 2 * (asked.held().width().mm() + margin + asked.ease().mm() / 2) + spine;
        double height = asked.held().height().mm() + asked.ease().mm() + 2 * margin;
        double lining = asked.liningThickness().map(Length::mm).orElse(0.0);
        return new Sizes(
                margin,
                spine,
                width,
                height,
                asked.sleeve() * asked.held().width().mm() + margin,
                Allowances.innerShorter(leather, lining, Math.PI));
    }

    void explain(BookCover.Asking asked, Working working) {
        working.step(BookCover.SPINE, Length.ofMm(spine), "t", asked.held().thickness(), "q", asked.thickness());
        working.step(
                BookCover.WIDTH,
                Length.ofMm(width),
                "w",
                asked.held().width(),
                "m",
                Length.ofMm(margin),
                "e",
                asked.ease(),
                "S",
                Length.ofMm(spine));
        working.step(
                BookCover.HEIGHT,
                Length.ofMm(height),
                "h",
                asked.held().height(),
                "e",
                asked.ease(),
                "m",
                Length.ofMm(margin));
        asked.liningThickness()
                .ifPresent(lining -> working.step(
                        BookCover.LINING, Length.ofMm(liningShorter), "q", asked.thickness(), "n", lining));
    }
}
