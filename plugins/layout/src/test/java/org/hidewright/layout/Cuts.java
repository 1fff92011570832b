package org.hidewright.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.Panel;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;

/** Cuts put together in a line, for tests. */
record Cuts(
        Item item,
        int pieces,
        String leather,
        double gap,
        double withinDegrees,
        List<SheetOfLeather> sheets,
        List<PartRule> rules,
        List<Placed> placed) {
    static Cuts of(Part.Builder... parts) {
        Item.Builder item = Item.builder();
        for (Part.Builder part : parts) {
            item.part(part.build());
        }
        return new Cuts(item.build(), 1, "", 2, 10, List.of(), List.of(), List.of());
    }

    static Part.Builder rectangle(String id, double width, double height) {
        return Part.of(id, id.toUpperCase(Locale.ROOT), Path.rectangle(Role.CUT, Point.of(5, 7), width, height));
    }

    static Panel panel(String id, double width, double height, Integer count) {
        return new Panel(
                id,
                Size.of(Length.ofMm(width), Length.ofMm(height)),
                Optional.ofNullable(count),
                Backbone.ACROSS_THE_SHEET,
                Optional.empty());
    }

    static Panel priced(Panel panel, double euro) {
        return new Panel(
                panel.id(),
                panel.size(),
                panel.count(),
                panel.backbone(),
                Optional.of(Money.of(euro, Units.currency("EUR"))));
    }

    static Panel upwards(Panel panel) {
        return new Panel(panel.id(), panel.size(), panel.count(), Backbone.UP_THE_SHEET, panel.price());
    }

    static Hide hide(String outline, double rim, String... flaws) {
        return new Hide(
                "hide",
                outline,
                Length.ofMm(rim),
                Backbone.ACROSS_THE_SHEET,
                Optional.of(List.of(flaws)),
                Optional.empty());
    }

    /** A rule for a part; null for what it does not say. */
    static PartRule rule(String part, Lies lies, Leather leather, Double rim, String never, String matches) {
        return new PartRule(
                part,
                Optional.ofNullable(lies),
                Optional.empty(),
                Optional.ofNullable(leather),
                Optional.ofNullable(rim).map(Length::ofMm),
                Optional.ofNullable(never),
                Optional.empty(),
                Optional.ofNullable(matches));
    }

    /** A rule by which a part lies on some regions alone. */
    static PartRule only(String part, String regions) {
        return new PartRule(
                part,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(regions),
                Optional.empty());
    }

    static PartRule matches(String part, String other) {
        return rule(part, null, null, null, null, other);
    }

    static Placed at(String piece, String sheet, double x, double y, double degrees) {
        return new Placed(
                piece, sheet, Length.ofMm(x), Length.ofMm(y), Angle.ofRadians(Math.toRadians(degrees)), false);
    }

    static Placed held(Placed placed) {
        return new Placed(placed.id(), placed.sheet(), placed.x(), placed.y(), placed.turned(), true);
    }

    Cuts times(int count) {
        return new Cuts(item, count, leather, gap, withinDegrees, sheets, rules, placed);
    }

    Cuts from(String names) {
        return new Cuts(item, pieces, names, gap, withinDegrees, sheets, rules, placed);
    }

    Cuts apart(double mm) {
        return new Cuts(item, pieces, leather, mm, withinDegrees, sheets, rules, placed);
    }

    Cuts on(SheetOfLeather... leathers) {
        return new Cuts(item, pieces, leather, gap, withinDegrees, List.of(leathers), rules, placed);
    }

    Cuts rules(PartRule... other) {
        return new Cuts(item, pieces, leather, gap, withinDegrees, sheets, List.of(other), placed);
    }

    Cuts laid(Placed... places) {
        return laid(List.of(places));
    }

    Cuts laid(List<Placed> places) {
        return new Cuts(item, pieces, leather, gap, withinDegrees, sheets, rules, places);
    }

    Cut cut() {
        return new Cut(
                item,
                pieces,
                leather.isEmpty() ? Optional.empty() : Optional.of(leather),
                Length.ofMm(gap),
                Angle.ofRadians(Math.toRadians(withinDegrees)),
                sheets,
                Optional.of(rules),
                placed.isEmpty() ? Optional.empty() : Optional.of(new Places(placed)));
    }
}
