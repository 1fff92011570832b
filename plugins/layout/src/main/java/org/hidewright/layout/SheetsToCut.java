package org.hidewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.PathData;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.measure.Money;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.Panel;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Zone;

/** The panels and hides that can be cut from, each by itself. */
final class SheetsToCut {
    /** So much more leather than the parts have is looked through where as many sheets are there as are needed. */
    private static final double ROOM = 2;

    /** With less, corners lie on a line. */
    private static final double LEAST_MM2 = 1;

    private static final String OUTLINE = ".outline";

    /** A closed line of straight stretches has so many corners at least. */
    private static final int CORNERS = 3;

    /** So much of an outline is told to say which one is meant. */
    private static final int BEGINNING = 30;

    private final Cut cut;
    private final Regions regions;
    private final double partsArea;
    private final int pieces;
    private final double margin;
    private final boolean priced;

    SheetsToCut(Cut cut, Regions regions, List<CutPiece> pieces) throws Refusal {
        this.cut = cut;
        this.regions = regions;
        this.partsArea = pieces.stream().mapToDouble(CutPiece::area).sum();
        this.pieces = pieces.size();
        this.margin = cut.gap().mm() / 2 + 2 * Flattened.OFF;
        this.priced = cut.sheets().stream().allMatch(sheet -> sheet.price().isPresent());
        if (cut.sheets().isEmpty()) {
            throw new Refusal(LayoutNotices.NO_SHEETS.at("sheets"));
        }
        oneCurrency();
    }

    private void oneCurrency() throws Refusal {
        List<Money> prices = cut.sheets().stream()
                .map(SheetOfLeather::price)
                .flatMap(Optional::stream)
                .toList();
        for (Money price : prices) {
            if (!Objects.equals(price.currency(), prices.get(0).currency())) {
                throw new Refusal(LayoutNotices.CURRENCIES.at("sheets", prices.get(0), price));
            }
        }
    }

    List<CutSheet> sheets() throws Refusal {
        List<CutSheet> sheets = new ArrayList<>();
        for (SheetOfLeather row : cut.sheets()) {
            if (row instanceof Panel panel) {
                add(panel, sheets);
            } else if (row instanceof Hide hide) {
                sheets.add(hide(hide));
            }
        }
        return sheets;
    }

    private void add(Panel panel, List<CutSheet> sheets) throws Refusal {
        Curve outline = Outlines.rectangle(
                Point.of(0, 0), panel.size().width().mm(), panel.size().height().mm());
        int enough = (int) Math.min(
                pieces, Math.ceil(ROOM * partsArea / panel.size().area().mm2()) + 1);
        int count = panel.count().orElse(enough);
        Made made = new Made(panel.id(), outline, List.of(), 0, panel.backbone(), panel.price());
        for (int number = 1; number <= count; number++) {
            sheets.add(made.sheet(count == 1 ? panel.id() : panel.id() + "-" + number));
        }
    }

    private CutSheet hide(Hide hide) throws Refusal {
        String row = "sheets[" + hide.id() + "].hide";
        Curve outline = read(hide.outline(), row + OUTLINE);
        List<DrawnFlaw> flaws = new ArrayList<>();
        for (String text : hide.flaws().orElse(List.of())) {
            String place = row + ".flaws";
            Flaw flaw = Flaw.read(text).orElseThrow(() -> new Refusal(LayoutNotices.NO_SUCH_FLAW.at(place, text)));
            DrawnFlaw drawn = new DrawnFlaw(flaw, read(flaw.outline(), place));
            if (Region.of(outline).common(Region.of(drawn.outline())).isEmpty()) {
                throw new Refusal(LayoutNotices.FLAW_OUTSIDE.at(place, flaw.called()));
            }
            flaws.add(drawn);
        }
        return new Made(hide.id(), outline, flaws, hide.rim().mm(), hide.backbone(), hide.price()).sheet(hide.id());
    }

    /** A closed line, as the path data of SVG or as the corners alone. */
    private static Curve read(String text, String place) throws Refusal {
        String data = text.strip();
        if (!data.isEmpty() && !Character.isLetter(data.charAt(0))) {
            data = "M " + data;
        }
        if (!data.toUpperCase(java.util.Locale.ROOT).endsWith("Z")) {
            data += " Z";
        }
        try {
            Curve read = PathData.read(data);
            if (read.segments().size() < CORNERS && read.segments().stream().allMatch(Segment.Line.class::isInstance)) {
                throw new Refusal(LayoutNotices.UNREADABLE.at(place, text));
            }
            Curve curve = Region.of(read).outline();
            if (!Faults.of(curve).isEmpty()) {
                throw new Refusal(LayoutNotices.CROSSES.at(place, beginning(text)));
            }
            if (Region.of(curve).area() < LEAST_MM2) {
                throw new Refusal(LayoutNotices.UNREADABLE.at(place, text));
            }
            return curve;
        } catch (PathData.Unreadable e) {
            // the closing letter may be ours
            String near = e.near().replaceFirst("\\s*[Zz]$", "");
            throw new Refusal(LayoutNotices.UNREADABLE.at(place, near.isEmpty() ? text : near));
        }
    }

    private static String beginning(String text) {
        String typed = text.strip();
        return typed.length() <= BEGINNING ? typed : typed.substring(0, BEGINNING) + "…";
    }

    /** What all sheets of one row have in common. */
    private final class Made {
        private final String row;
        private final Curve outline;
        private final List<DrawnFlaw> flaws;
        private final Frame frame;
        private final Sheet exact;
        private final Sheet shrunk;
        private final Sheet tight;
        private final Optional<Money> price;

        Made(String row, Curve outline, List<DrawnFlaw> flaws, double rim, Backbone backbone, Optional<Money> price)
                throws Refusal {
            this.row = row;
            this.outline = outline;
            this.flaws = flaws;
            this.frame = Frame.of(backbone);
            this.price = price;
            double cost = priced
                    ? price.orElseThrow().amount().doubleValue()
                    : Region.of(outline).area();
            Curve usable = rim == 0 ? outline : inside(outline, rim);
            List<Outline> holes = new ArrayList<>();
            List<Outline> wideHoles = new ArrayList<>();
            List<Zone> zones = new ArrayList<>();
            for (DrawnFlaw drawn : flaws) {
                Outline seen = frame.seen(Flattened.of(drawn.outline()));
                if (drawn.flaw().damage() == Damage.HOLE) {
                    holes.add(seen);
                    wideHoles.add(frame.seen(
                            Flattened.of(largest(Region.of(drawn.outline()).grown(margin, Corner.POINTED)))));
                } else {
                    zones.add(new Zone(seen, regions.kind(drawn.flaw())));
                }
            }
            zones.addAll(regions.elsewhere(outline, flaws, frame));
            exact = new Sheet(row, frame.seen(Flattened.of(usable)), holes, zones, cost);
            shrunk = new Sheet(row, frame.seen(Flattened.of(inside(usable, margin))), wideHoles, zones, cost);
            // on a hide nothing lies edge to edge
            tight = flaws.isEmpty() && exact.outline().corners() == 4
                    ? new Sheet(row, frame.seen(Flattened.of(flush(usable))), holes, zones, cost)
                    : shrunk;
        }

        private Curve flush(Curve usable) throws Refusal {
            double gap = cut.gap().mm();
            return gap == 0 ? usable : inside(usable, gap / 2);
        }

        private Curve inside(Curve around, double distance) throws Refusal {
            List<Region> left = Region.of(around).shrunk(distance, Corner.POINTED);
            if (left.isEmpty()) {
                throw new Refusal(LayoutNotices.ALL_RIM.at("sheets[" + row + "]", row));
            }
            return largest(left);
        }

        CutSheet sheet(String id) {
            return new CutSheet(id, row, outline, flaws, frame, exact, shrunk, tight, price);
        }
    }

    private static Curve largest(List<Region> regions) {
        return regions.stream()
                .max(Comparator.comparingDouble(Region::area))
                .orElseThrow()
                .outline();
    }
}
