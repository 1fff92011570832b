package org.hidewright.documents;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Checks.Check;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.TickList.Step;
import org.hidewright.api.document.Working;

/** A job card of the size and kind that a maker gets: the neck strap for the binoculars of a naturalist's field kit. */
public final class NeckStrapCard {
    private final UnaryOperator<String> words;

    private NeckStrapCard(UnaryOperator<String> words) {
        this.words = words;
    }

    public static Document inEnglish() {
        return new NeckStrapCard(UnaryOperator.identity()).card();
    }

    /** The same card in a language whose words are 40% longer and full of accents. */
    public static Document inLongWords() {
        return new NeckStrapCard(LongWords::of).card();
    }

    private String w(String text) {
        return words.apply(text);
    }

    private Document card() {
        return Document.of(w("Naturalist’s field kit"), w("Binocular neck strap"))
                .meta(w("Make 2. Vegetable tanned side, 2.4 mm (6 oz), belly left out."))
                .meta(w("For a binocular with 10 mm strap loops; carries up to 0.9 kg."))
                .dated(LocalDate.of(2026, 3, 14), w("14 March 2026"))
                .pageText(w("Page") + " {0} " + w("of") + " {1}")
                .language(Locale.ENGLISH)
                .section(sizes())
                .section(checks())
                .section(strap())
                .section(holes())
                .section(steps())
                .section(ends())
                .section(working())
                .build();
    }

    private Section sizes() {
        return Section.of(
                "sizes",
                w("Cut these"),
                BigAnswer.of(w("Strap, cut length"), "931", "mm")
                        .fromTo(w("from 929.6 to 932.4 mm"))
                        .because(w("The thickness of the leather moves it most.")),
                BigAnswer.of(w("Strap, width"), "9.5", "mm")
                        .because(w("Half a millimetre less than the loop it runs through.")),
                BigAnswer.of(w("Keeper, cut length"), "34 1/2", "mm").fromTo(w("from 33.8 to 35.2 mm")),
                BigAnswer.of(w("Leather for two, with waste"), "2 × 0.018", "m²"),
                Table.builder()
                        .column(w("What to have ready"))
                        .numbers(w("How many"))
                        .column(w("Size"))
                        .row(w("Chicago screw, flat head"), "4", "5 × 6 mm")
                        .row(w("Double-cap rivet"), "4", "7 × 8 mm")
                        .row(w("Linen thread, waxed"), "3.2 m", "0.8 mm")
                        .build());
    }

    private Section checks() {
        return Section.of(
                "checks",
                w("Look here before you cut"),
                Checks.of(
                        Check.of(
                                Severity.STOP,
                                w("Stop"),
                                w("The second hole row ends 6 mm before the longest size asked."),
                                w("At 1140 mm the screw would stand in plain leather."),
                                w("Add one hole at 25 mm, or ask for 1115 mm at most.")),
                        Check.of(
                                Severity.CHECK,
                                w("Check"),
                                w("The folded place is 4 mm from a hole."),
                                w(
                                        "A punch there can open the fold. Common practice leaves at least twice the thickness."),
                                w("Move hole 3 by 2 mm, or fold before you punch.")),
                        Check.of(
                                Severity.CAUTION,
                                w("Caution"),
                                w("This strap carries a load over a neck."),
                                w("Leather ages, and a strap that holds today may part next year."),
                                w("Pull each end with three times the load before use, and follow local rules.")),
                        Check.of(
                                Severity.NOTE,
                                w("Note"),
                                w("The typed range 2.2–2.6 mm was worked at its middle, 2.4 mm."),
                                "",
                                "")));
    }

    private Section strap() {
        return Section.of(
                "strap",
                w("The strap, flat and folded"),
                Figure.fitted(
                        NeckStrapDrawings.flat(words),
                        w("Grain side up. Holes are measured from the left end of the flat strap.")),
                Figure.fitted(
                        NeckStrapDrawings.fold(words),
                        w("The end turned back round a loop of 3 mm: grain outside, flesh side skived to 1.6 mm.")));
    }

    private Section holes() {
        Table.Builder table = Table.builder()
                .column(w("Hole"))
                .numbers(w("On the flat strap, mm"))
                .numbers(w("On the folded strap, mm"))
                .numbers(w("Punch, mm"))
                .column(w("Meets"));
        String[] meets = {"Screw, lower leaf", "Screw, upper leaf", "Size hole"};
        for (int i = 1; i <= 14; i++) {
            double flat = i < 3 ? 12 + 43.5 * (i - 1) : 120 + 25 * (i - 3);
            table.row(
                    Integer.toString(i),
                    String.format(Locale.ROOT, "%.1f", flat),
                    String.format(Locale.ROOT, "%.1f", flat - 8.5),
                    i < 3 ? "5.0" : "3.5",
                    w(meets[Math.min(i, 3) - 1]));
        }
        return Section.of("holes", w("Holes"), table.build());
    }

    private Section steps() {
        return Section.of(
                        "steps",
                        w("Order of work"),
                        TickList.of(
                                Step.of(w("Cut two strips 9.5 mm wide along the backbone."), w("Strap cutter, no gap")),
                                Step.of(w("Cut each strip to 931 mm.")),
                                Step.of(
                                        w("Skive both ends on the flesh side to 1.6 mm."),
                                        w("From 0 to 64 mm; bevel 15 mm wide")),
                                Step.of(w("Bevel and burnish the long edges, both faces."), w("Water, then wax")),
                                Step.of(w("Punch holes 1 and 2 only."), w("Punch 5.0 mm")),
                                Step.of(w("Dampen the fold, turn it back round the loop, clamp until dry.")),
                                Step.of(w("Set the screws and pull each end with 3 kg.")),
                                Step.of(w("Punch the size holes, wearing the binocular."), w("Punch 3.5 mm"))),
                        NoteSpace.of(w("What really came out"), 5))
                .onNewPage();
    }

    private Section ends() {
        return Section.of(
                "ends",
                w("End to lay on the leather"),
                Figure.trueSize(
                        NeckStrapDrawings.end(words),
                        w("Left end with its two screw holes and the fold line."),
                        w("True size. Print without fitting to the page, then measure a square on two sides."),
                        w("Not in true size: it is longer than this page.")));
    }

    private Section working() {
        return Section.of(
                "working",
                w("Where the numbers come from"),
                Working.of(List.of(
                        Working.Line.of(
                                w("Leather used by the fold"),
                                "L = α · (r + k · t)",
                                "L = π · (1.5 + 0.5 · 2.4)",
                                "8.48 mm",
                                w(
                                        "Definition: length of the neutral line of a bend; neutral line in the middle, assumed")),
                        Working.Line.of(
                                w("Cut length"), "C = F + 2 · (T + L)", "C = 820 + 2 · (47.0 + 8.48)", "931.0 mm", ""),
                        Working.Line.of(
                                w("Spread of the cut length"),
                                "u² = (∂C/∂t)² · u(t)²,   ∂C/∂t = 2 · π · k",
                                "u = 3.14 · 0.4 / (2 · √3)",
                                "± 0.36 mm",
                                w("Published: guide to the expression of uncertainty, first order")),
                        Working.Line.of(
                                w("Weight of one strap"),
                                "m = ρ · l · b · t",
                                "m = 0.86 · 93.1 · 0.95 · 0.24",
                                "18 g",
                                ""))),
                Sources.of(
                        Sources.Entry.of(w("Definition"), w("Length of an arc: angle times radius.")),
                        Sources.Entry.of(
                                w("Common practice"),
                                w(
                                        "A hole stands at least twice the thickness from a fold; strap half a millimetre narrower "
                                                + "than its loop.")),
                        Sources.Entry.of(w("Measured here"), w("Three folded strips of this side, 9 March 2026."))),
                Paragraph.quiet(w("Workshop values were copied into the project on the day they were used.")));
    }
}
