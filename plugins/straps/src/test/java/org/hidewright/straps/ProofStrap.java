package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.folding.StripFolder;
import org.hidewright.straps.geometry.Face;

/** One strap told twice: to the bundle in its records, and to the folder in plain numbers. */
final class ProofStrap {
    private static final double RAMP_MM = 5;

    /**
     * A bend.
     *
     * @param radius inside radius, mm
     * @param turn radians
     * @param outside the face outside
     * @param prepared what was done to it
     * @param measured neutral line measured in the workshop
     */
    record Fold(double radius, double turn, Face outside, Prepared prepared, OptionalDouble measured) {
        enum Prepared {
            NONE,
            CASED,
            SKIVED,
            GROOVED
        }

        double thicknessOf(double strap) {
            return prepared == Prepared.SKIVED ? strap * 0.6 : strap;
        }

        double webOf(double strap) {
            return strap * 0.4;
        }

        /** Common practice, told again here: formulas sheet, neutral line of leather. */
        double neutral(double strap) {
            if (measured.isPresent()) {
                return measured.getAsDouble();
            }
            return switch (prepared) {
                case NONE, SKIVED -> outside == Face.GRAIN ? 0.6 : 0.4;
                case CASED -> 0.5;
                // the middle of the web, at t - web / 2 from the inside face
                case GROOVED -> (strap - webOf(strap) / 2) / strap;
            };
        }

        Preparation record(double strap) {
            return switch (prepared) {
                case NONE -> new Preparation.None();
                case CASED -> new Preparation.Cased();
                case SKIVED -> new Preparation.Skived(Length.ofMm(strap * 0.6), Length.ofMm(RAMP_MM));
                case GROOVED -> new Preparation.Grooved(Length.ofMm(webOf(strap)));
            };
        }
    }

    private sealed interface Part {}

    private record Run(double length) implements Part {}

    private record Bent(Fold fold) implements Part {}

    private record Around(int inner, double turn, Face outside) implements Part {}

    private record Flat(double bar, double corner, Face outside) implements Part {}

    private record Tear(double bar, double contact, Face outside) implements Part {}

    private record Hole(int section, From from, double distance, int through) {}

    private final double thickness;
    private final List<Part> parts = new ArrayList<>();
    private final List<Hole> holes = new ArrayList<>();
    private StrapLayout.Layout layout;

    ProofStrap(double thickness) {
        this.thickness = thickness;
    }

    ProofStrap straight(double length) {
        return with(new Run(length));
    }

    ProofStrap bend(Fold fold) {
        return with(new Bent(fold));
    }

    ProofStrap aroundBend(int inner, double turn, Face outside) {
        return with(new Around(inner, turn, outside));
    }

    ProofStrap flatBar(double bar, double corner, Face outside) {
        return with(new Flat(bar, corner, outside));
    }

    ProofStrap turnBack(double bar, double contact, Face outside) {
        return with(new Tear(bar, contact, outside));
    }

    private ProofStrap with(Part part) {
        parts.add(part);
        return this;
    }

    ProofStrap hole(int section, double distance) {
        return hole(new Hole(section, From.START, distance, -1));
    }

    ProofStrap through(int section, double distance, int other) {
        return hole(new Hole(section, From.START, distance, other));
    }

    ProofStrap middle(int section) {
        return hole(new Hole(section, From.MIDDLE, 0, -1));
    }

    private ProofStrap hole(Hole hole) {
        holes.add(hole);
        return this;
    }

    double outsideLength(int section) {
        return folded().outsideLength(id(section));
    }

    /** A strap of one to three bends, with holes at places of every section and one through the legs of a half turn. */
    static ProofStrap seeded(Random random) {
        double thickness = 0.8 + 4.2 * random.nextDouble();
        ProofStrap strap = new ProofStrap(thickness).straight(30 + 100 * random.nextDouble());
        int bends = 1 + random.nextInt(3);
        for (int i = 0; i < bends; i++) {
            boolean half = random.nextInt(3) == 0;
            double turn = half ? Math.PI : Math.toRadians(30 + 300 * random.nextDouble());
            OptionalDouble measured = random.nextInt(4) == 0
                    ? OptionalDouble.of(0.3 + 0.4 * random.nextDouble())
                    : OptionalDouble.empty();
            strap.bend(new Fold(
                    thickness / 2 + 8 * random.nextDouble(),
                    turn,
                    Face.values()[random.nextInt(2)],
                    Fold.Prepared.values()[random.nextInt(4)],
                    measured));
            strap.straight(30 + 100 * random.nextDouble());
            int before = strap.parts.size() - 3;
            if (half) {
                strap.through(
                        before, ((Run) strap.parts.get(before)).length() - 12 - 10 * random.nextDouble(), before + 2);
            }
            strap.hole(before + 1, strap.outsideLength(before + 1) * random.nextDouble());
            strap.hole(before + 2, ((Run) strap.parts.get(before + 2)).length() * random.nextDouble());
        }
        return strap;
    }

    /** The same strap described from its other end: what was first is last. Fittings through two layers are left out. */
    ProofStrap fromTheOtherEnd() {
        ProofStrap turned = new ProofStrap(thickness);
        for (int i = parts.size() - 1; i >= 0; i--) {
            turned.with(parts.get(i));
        }
        for (Hole hole : holes) {
            turned.hole(new Hole(parts.size() - 1 - hole.section(), From.END, hole.distance(), -1));
        }
        holes.replaceAll(hole -> new Hole(hole.section(), hole.from(), hole.distance(), -1));
        return turned;
    }

    /** What the bundle and the folder do not agree on, the bundle's neutral line being off by a share of the thickness. */
    List<String> troubles(double neutralOff, double holeTolerance, double lengthTolerance) {
        StripFolder folder = folded();
        StrapLayout.Layout answers = neutralOff == 0 ? layout() : layout(neutralOff);
        List<String> troubles = new ArrayList<>();
        compare(troubles, "cut length", answers.cutLength().mm(), folder.flatLength(), lengthTolerance);
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            double place = hole.from() == From.MIDDLE
                    ? (folder.flatStart(id(hole.section())) + folder.flatEnd(id(hole.section()))) / 2
                    : folder.fromStart(id(hole.section()), hole.distance());
            List<Double> given = places(answers, "h" + i);
            compare(troubles, "hole " + i, given.get(0), place, holeTolerance);
            if (hole.through() >= 0) {
                OptionalDouble mate = folder.mate(id(hole.section()), place, id(hole.through()));
                if (mate.isEmpty()) {
                    troubles.add("hole " + i + " misses its mate in the folded strip");
                } else {
                    compare(troubles, "mate of hole " + i, given.get(1), mate.getAsDouble(), holeTolerance);
                }
            }
        }
        return troubles;
    }

    private static void compare(List<String> troubles, String what, double given, double found, double tolerance) {
        if (Math.abs(given - found) > tolerance) {
            troubles.add(String.format(Locale.ROOT, "%s: %.4f, folded %.4f", what, given, found));
        }
    }

    List<Double> bundlePlaces() {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            places.addAll(places(layout(), "h" + i));
        }
        return places;
    }

    double bundleLength() {
        return layout().cutLength().mm();
    }

    private static List<Double> places(StrapLayout.Layout layout, String id) {
        return layout.features().stream()
                .filter(feature -> feature.id().equals(id) || feature.id().startsWith(id + "-"))
                .map(feature -> feature.fromStart().mm())
                .toList();
    }

    private StrapLayout.Layout layout() {
        if (layout == null) {
            layout = layout(0);
        }
        return layout;
    }

    private StrapLayout.Layout layout(double neutralOff) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            sections.add(section(i, parts.get(i), neutralOff));
        }
        List<Feature> features = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            features.add(new Feature.Hole(
                    "h" + i,
                    Length.ofMm(4),
                    id(hole.section()),
                    hole.from(),
                    Length.ofMm(hole.distance()),
                    hole.through() < 0 ? Optional.empty() : Optional.of(List.of(id(hole.through())))));
        }
        Outcome<StrapLayout.Layout> outcome = new StrapLayout()
                .calculate(
                        new StrapLayout.Strap(
                                Length.ofMm(thickness),
                                Length.ofMm(20),
                                sections,
                                features,
                                Length.ZERO,
                                Optional.empty(),
                                Optional.empty(),
                                false),
                        Working.NONE);
        return outcome.answers().orElseThrow(() -> new AssertionError(this + " was refused: " + outcome.notices()));
    }

    private Section section(int i, Part part, double neutralOff) {
        if (part instanceof Run run) {
            return new Section.Straight(id(i), Length.ofMm(run.length()), Optional.empty(), Length.ZERO);
        } else if (part instanceof Bent bent) {
            Fold fold = bent.fold();
            Optional<Double> measured = neutralOff != 0
                    ? Optional.of(fold.neutral(thickness) + neutralOff)
                    : fold.measured().isPresent() ? Optional.of(fold.measured().getAsDouble()) : Optional.empty();
            return new Section.Bend(
                    id(i),
                    new Core.Radius(Length.ofMm(fold.radius())),
                    Angle.ofRadians(fold.turn()),
                    fold.outside(),
                    fold.record(thickness),
                    Optional.empty(),
                    measured);
        } else if (part instanceof Around around) {
            return new Section.Bend(
                    id(i),
                    new Core.AroundBend(id(around.inner())),
                    Angle.ofRadians(around.turn()),
                    around.outside(),
                    new Preparation.None(),
                    Optional.empty(),
                    Optional.empty());
        } else if (part instanceof Flat flat) {
            return new Section.Bend(
                    id(i),
                    new Core.FlatBar(Length.ofMm(flat.bar()), Length.ofMm(10), Length.ofMm(flat.corner())),
                    Angle.ofRadians(Math.PI),
                    flat.outside(),
                    new Preparation.None(),
                    Optional.empty(),
                    Optional.empty());
        }
        Tear tear = (Tear) part;
        return new Section.TurnBack(
                id(i),
                Length.ofMm(tear.bar()),
                Length.ofMm(tear.contact()),
                tear.outside(),
                new Preparation.None(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private StripFolder folded() {
        StripFolder folder = new StripFolder();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (part instanceof Run run) {
                folder.straight(id(i), run.length());
            } else if (part instanceof Bent bent) {
                Fold fold = bent.fold();
                folder.bend(
                        id(i),
                        fold.radius(),
                        fold.turn(),
                        fold.outside() == Face.GRAIN,
                        fold.neutral(thickness),
                        fold.thicknessOf(thickness));
            } else if (part instanceof Around around) {
                Fold inner = ((Bent) parts.get(around.inner())).fold();
                folder.bend(
                        id(i),
                        inner.radius() + inner.thicknessOf(thickness),
                        around.turn(),
                        around.outside() == Face.GRAIN,
                        dry(around.outside()),
                        thickness);
            } else if (part instanceof Flat flat) {
                folder.flatBar(
                        id(i), flat.bar(), flat.corner(), flat.outside() == Face.GRAIN, dry(flat.outside()), thickness);
            } else if (part instanceof Tear tear) {
                folder.turnBack(
                        id(i),
                        tear.bar(),
                        tear.contact(),
                        tear.outside() == Face.GRAIN,
                        dry(tear.outside()),
                        thickness);
            }
        }
        return folder;
    }

    private static double dry(Face outside) {
        return outside == Face.GRAIN ? 0.6 : 0.4;
    }

    private static String id(int section) {
        return "s" + section;
    }

    @Override
    public String toString() {
        return thickness + " mm thick: " + parts + " with " + holes;
    }
}
