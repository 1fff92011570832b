package org.hidewright.straps;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.hidewright.straps.geometry.Face;

/** Short ways for tests to ask for straps. */
final class Straps {
    static final Preparation DRY = new Preparation.None();

    private Straps() {}

    static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    static Angle deg(double degrees) {
        return Angle.of(degrees, Units.DEGREE);
    }

    static Section.Straight straight(String id, double length) {
        return new Section.Straight(id, mm(length), Optional.empty(), Length.ZERO);
    }

    static Section.Straight straight(String id, double length, double thickness, double ramp) {
        return new Section.Straight(id, mm(length), Optional.of(mm(thickness)), mm(ramp));
    }

    static Section.Overlap overlap(String id, String on, double length) {
        return new Section.Overlap(id, on, mm(length), Optional.empty(), Length.ZERO);
    }

    static Section.Bend bend(String id, Core core, double degrees, Face outside, Preparation preparation) {
        return new Section.Bend(id, core, deg(degrees), outside, preparation, Optional.empty(), Optional.empty());
    }

    static Section.Bend flatFold(String id, Face outside) {
        return bend(id, new Core.OwnLayers(0, Optional.empty(), Optional.empty()), 180, outside, DRY);
    }

    static Section.Bend roundBar(String id, double diameter) {
        return bend(id, new Core.RoundBar(mm(diameter)), 180, Face.GRAIN, DRY);
    }

    static Section.TurnBack turnBack(String id, double bar, double contact, Face outside, Preparation preparation) {
        return new Section.TurnBack(
                id,
                mm(bar),
                mm(contact),
                outside,
                preparation,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Feature.Hole hole(String id, String section, From from, double distance, String... alsoThrough) {
        return hole(id, 4, section, from, distance, alsoThrough);
    }

    static Feature.Hole hole(
            String id, double diameter, String section, From from, double distance, String... alsoThrough) {
        return new Feature.Hole(
                id,
                mm(diameter),
                section,
                from,
                mm(distance),
                alsoThrough.length == 0 ? Optional.empty() : Optional.of(List.of(alsoThrough)));
    }

    static StrapLayout.Strap strap(double thickness, List<? extends Section> sections, Feature... features) {
        return new StrapLayout.Strap(
                mm(thickness),
                mm(20),
                List.copyOf(sections),
                List.of(features),
                Length.ZERO,
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** 3 mm leather, 100 mm, a turn round a bar of 4 mm, 50 mm. */
    static StrapLayout.Strap ring(Feature... features) {
        return strap(3, List.of(straight("leg", 100), roundBar("ring", 4), straight("tip", 50)), features);
    }

    /** 3 mm leather, 60 mm, a turn round a bar of 4 mm skived to 1 mm with ramps of 9 mm, 60 mm. */
    static StrapLayout.Strap skivedRing() {
        Section fold = bend("fold", new Core.RoundBar(mm(4)), 180, Face.GRAIN, new Preparation.Skived(mm(1), mm(9)));
        return strap(3, List.of(straight("leg", 60), fold, straight("tip", 60)));
    }

    static StrapLayout.Strap measured(StrapLayout.Strap strap, double k) {
        return new StrapLayout.Strap(
                strap.thickness(),
                strap.width(),
                strap.sections(),
                strap.features(),
                strap.glueGap(),
                strap.hardwareInsideWidth(),
                Optional.of(k),
                strap.carriesLoad());
    }

    static StrapLayout.Strap glued(StrapLayout.Strap strap, double gap) {
        return new StrapLayout.Strap(
                strap.thickness(),
                strap.width(),
                strap.sections(),
                strap.features(),
                mm(gap),
                strap.hardwareInsideWidth(),
                strap.measuredNeutralLine(),
                strap.carriesLoad());
    }

    static Outcome<StrapLayout.Layout> work(StrapLayout.Strap strap) {
        return new StrapLayout().calculate(strap, Working.NONE);
    }

    static StrapLayout.Layout layout(StrapLayout.Strap strap) {
        Outcome<StrapLayout.Layout> outcome = work(strap);
        return outcome.answers().orElseThrow(() -> new AssertionError(outcome.toString()));
    }

    static StrapLayout.FlatFeature feature(StrapLayout.Layout layout, String id) {
        return layout.features().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static double place(StrapLayout.Layout layout, String id) {
        return feature(layout, id).fromStart().mm();
    }
}
