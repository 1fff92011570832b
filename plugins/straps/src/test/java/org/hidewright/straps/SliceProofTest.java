package org.hidewright.straps;

import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.slices.Folder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bundle's flat places, punched and folded slice by slice: each hole meets its fitting within 0.05 mm. */
class SliceProofTest {
    private static final double MEETS_MM = 0.05;
    private static final double[] TURNS = {30, 55, 90, 120, 150, 165, 180, 180, 195, 210, 240, 270, 300, 330};

    /** A strap and the fold a bench hand would make of it, from the words of the conventions alone. */
    private static final class Case {
        final List<Section> sections = new ArrayList<>();
        final Folder folder = new Folder();
        final List<Feature> features = new ArrayList<>();
        final List<Runnable> checks = new ArrayList<>();
        final double thickness;
        StrapLayout.Layout answered;
        double worst;

        Case(double thickness) {
            this.thickness = thickness;
        }

        Case straight(String id, double length) {
            sections.add(Straps.straight(id, length));
            folder.straight(id, length);
            return this;
        }

        /** k by the words: grain out dry 0.6, grain in 0.4, cased 0.5, grooved in the middle of the web. */
        static double k(Face outside, Preparation preparation, double t) {
            if (preparation instanceof Preparation.Cased) {
                return 0.5;
            }
            if (preparation instanceof Preparation.Grooved grooved) {
                return (t - grooved.web().mm() / 2) / t;
            }
            return outside == Face.GRAIN ? 0.6 : 0.4;
        }

        static double left(Preparation preparation, double t) {
            return preparation instanceof Preparation.Skived skived
                    ? skived.thicknessLeft().mm()
                    : t;
        }

        Case bend(String id, Core core, double radius, double degrees, Face outside, Preparation preparation) {
            sections.add(Straps.bend(id, core, degrees, outside, preparation));
            double t = left(preparation, thickness);
            double out = degrees == 180 && outside == Face.GRAIN ? legsFurtherOut(preparation, t, radius) : 0;
            folder.aside(-out)
                    .bend(id, Math.toRadians(degrees), radius, t, k(outside, preparation, t), outside == Face.GRAIN)
                    .aside(out);
            return this;
        }

        /** Legs folded flesh to flesh lie on each other, not in each other, where long enough ramps lead there. */
        private double legsFurtherOut(Preparation preparation, double left, double radius) {
            boolean ramped = preparation instanceof Preparation.Skived skived
                    && skived.ramp().mm() >= 3 * (thickness - left);
            return ramped ? Math.max(0, thickness - left - radius) : 0;
        }

        Case turnBack(String id, double bar, double contact, double before, double after, Face outside) {
            sections.add(new Section.TurnBack(
                    id,
                    mm(bar),
                    mm(contact),
                    outside,
                    Straps.DRY,
                    Optional.empty(),
                    Optional.of(mm(before)),
                    Optional.of(mm(after)),
                    Optional.empty()));
            folder.turnBack(id, bar, contact, before, after, k(outside, Straps.DRY, thickness), outside == Face.GRAIN);
            return this;
        }

        /** A fitting through a section and every one of the others that its axis goes through squarely enough. */
        Case fitting(String id, String section, From from, double distance, String... others) {
            double along = from == From.START
                    ? distance
                    : from == From.END ? folder.outsideLength(section) - distance : folder.middle(section) + distance;
            List<String> through = new ArrayList<>();
            for (String other : others) {
                if (folder.squareness(section, along, other) > 0.2 && folder.meets(section, along, other)) {
                    through.add(other);
                    checks.add(() -> near(folder.missMm(section, along, other, flat(id + "-on-" + other))));
                }
            }
            checks.add(() -> near(Math.abs(folder.material(section, along) - flat(id))));
            features.add(hole(id, section, from, distance, through.toArray(String[]::new)));
            return this;
        }

        private double flat(String id) {
            return Straps.place(answered, id);
        }

        private void near(double miss) {
            worst = Math.max(worst, miss);
        }

        StrapLayout.Strap asked() {
            return strap(thickness, sections, features.toArray(Feature[]::new));
        }

        /** The farthest any hole is from its fitting when the answers to a strap are punched and folded. */
        double worstMiss(StrapLayout.Strap asked) {
            answered = layout(asked);
            worst = Math.abs(folder.flatLength() - answered.cutLength().mm());
            for (StrapLayout.FlatSection section : answered.sections()) {
                double[] ends = folder.flatEnds(section.id());
                near(Math.abs(ends[0] - section.start().mm()));
                near(Math.abs(ends[1] - section.end().mm()));
            }
            checks.forEach(Runnable::run);
            return worst;
        }
    }

    private static Preparation preparation(Random random, double thickness) {
        switch (random.nextInt(4)) {
            case 0:
                return new Preparation.Cased();
            case 1:
                return new Preparation.Skived(mm(thickness * (0.4 + 0.5 * random.nextDouble())), mm(random.nextInt(8)));
            case 2:
                return new Preparation.Grooved(mm(thickness * (0.3 + 0.6 * random.nextDouble())));
            default:
                return Straps.DRY;
        }
    }

    private static Face face(Random random) {
        return random.nextBoolean() ? Face.GRAIN : Face.FLESH;
    }

    /** Three legs and two bends of any turn, face and preparation; fittings on all five sections. */
    private static Case twoBends(Random random, double thickness, double firstTurn) {
        double bar = 0.2 + 8 * random.nextDouble();
        double radius = 5 * random.nextDouble();
        return new Case(thickness)
                .straight("a", 40 + random.nextInt(60))
                .bend(
                        "one",
                        new Core.RoundBar(mm(bar)),
                        bar / 2,
                        firstTurn,
                        face(random),
                        preparation(random, thickness))
                .straight("b", 40 + random.nextInt(60))
                .bend(
                        "two",
                        new Core.Radius(mm(radius)),
                        radius,
                        TURNS[random.nextInt(TURNS.length)],
                        face(random),
                        preparation(random, thickness))
                .straight("c", 40 + random.nextInt(60))
                .fitting("on-a", "a", From.END, 5 + random.nextInt(30), "b", "c")
                .fitting("on-b", "b", From.MIDDLE, random.nextInt(30) - 15.0, "a", "c")
                .fitting("on-c", "c", From.START, 5 + random.nextInt(30), "a", "b")
                .fitting("on-one", "one", From.START, 0.3, "c")
                .fitting("on-two", "two", From.MIDDLE, -0.1, "a");
    }

    @ParameterizedTest(name = "{0} mm leather")
    @ValueSource(doubles = {0.8, 1.5, 2.5, 3.5, 5})
    void holesMeetTheirFittingsWhateverTheFolds(double thickness) {
        Random random = new Random(Double.hashCode(thickness));
        int throughHoles = 0;
        for (double turn : TURNS) {
            for (int i = 0; i < 3; i++) {
                Case made = twoBends(random, thickness, turn);
                assertTrue(made.worstMiss(made.asked()) < MEETS_MM, () -> made.worst + " mm off: " + made.asked());
                throughHoles += made.answered.features().size() - made.features.size();
            }
        }
        assertTrue(throughHoles > 40, throughHoles + " holes through a second layer");
    }

    @ParameterizedTest(name = "{0} mm leather")
    @ValueSource(doubles = {0.8, 2, 5})
    void holesMeetInATurnBackWithEqualAndUnequalLegs(double thickness) {
        for (Face outside : Face.values()) {
            for (double bar : new double[] {2, 5, 9}) {
                for (double thinner : new double[] {1, 0.6}) {
                    Case made = new Case(thickness)
                            .straight("strap", 120)
                            .turnBack("buckle", bar, bar + 2 * thickness + 3, thickness, thickness * thinner, outside)
                            .straight("leg", 50)
                            .fitting("near", "strap", From.END, 8, "leg")
                            .fitting("far", "leg", From.END, 6, "strap")
                            .fitting("prong", "buckle", From.MIDDLE, 0)
                            .fitting("beside", "buckle", From.MIDDLE, 1.5)
                            .fitting("at-contact", "buckle", From.END, 0.5);
                    assertTrue(made.worstMiss(made.asked()) < MEETS_MM, () -> made.worst + " mm off: " + made.asked());
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} mm leather")
    @ValueSource(doubles = {0.8, 2, 3.5})
    void holesMeetInAStrapThatIsDoubledAndFoldedAsOne(double t) {
        double bar = 6;
        Case made = new Case(t)
                .straight("upper", 60)
                .bend("over", new Core.AroundBend("under"), bar / 2 + t, 180, Face.GRAIN, Straps.DRY)
                .straight("back", 45)
                .bend("end", new Core.OwnLayers(0, Optional.empty(), Optional.empty()), 0, 180, Face.GRAIN, Straps.DRY)
                .straight("inner-back", 45)
                .bend("under", new Core.RoundBar(mm(bar)), bar / 2, 180, Face.FLESH, Straps.DRY)
                .straight("inner", 60)
                .fitting("rivet", "upper", From.END, 20, "back", "inner-back", "inner")
                .fitting("post", "inner-back", From.MIDDLE, 5, "upper", "back", "inner");
        assertTrue(made.worstMiss(made.asked()) < MEETS_MM, () -> made.worst + " mm off");
        assertEquals(8, made.answered.features().size());
    }

    @Test
    void holesMeetRoundFlatBarsAndTheirOwnLayers() {
        for (double t : new double[] {1, 2.5, 4}) {
            for (int corners = 1; corners <= 4; corners++) {
                Case made = new Case(t).straight("a", 50);
                made.sections.add(
                        bend("ring", new Core.FlatBar(mm(4), mm(9), mm(0.8)), 90.0 * corners, Face.GRAIN, Straps.DRY));
                double[] sides = {4 - 1.6, 9 - 1.6, 4 - 1.6};
                made.folder.corners("ring", 0.8, t, 0.6, true, Arrays.copyOf(sides, corners - 1));
                made.straight("b", 60)
                        .bend(
                                "tuck",
                                new Core.OwnLayers(2, Optional.empty(), Optional.empty()),
                                t,
                                180,
                                Face.FLESH,
                                Straps.DRY)
                        .straight("c", 40)
                        .fitting("x", "a", From.END, 12, "b", "c")
                        .fitting("y", "b", From.END, 9, "a", "c")
                        .fitting("z", "ring", From.MIDDLE, 0.2);
                assertTrue(made.worstMiss(made.asked()) < MEETS_MM, () -> made.worst + " mm off");
            }
        }
    }

    @Test
    void aNeutralLineMovedByATwentiethMakesHolesMiss() {
        Random random = new Random(5);
        for (double thickness : new double[] {1.5, 2.5, 4}) {
            for (double turn : new double[] {90, 120, 180, 240, 330}) {
                Case made = new Case(thickness)
                        .straight("a", 60)
                        .bend("one", new Core.RoundBar(mm(4)), 2, turn, Face.GRAIN, Straps.DRY)
                        .straight("b", 60 + random.nextInt(20))
                        .fitting("on-b", "b", From.START, 20, "a");
                assertTrue(made.worstMiss(made.asked()) < MEETS_MM);
                assertTrue(made.worstMiss(Straps.measured(made.asked(), 0.65)) > MEETS_MM, thickness + " mm, " + turn);
                assertTrue(made.worstMiss(Straps.measured(made.asked(), 0.55)) > MEETS_MM, thickness + " mm, " + turn);
            }
        }
    }

    @Test
    void gluedLayersLieAGlueLineFurtherApart() {
        double t = 2;
        double glue = 0.2;
        Case made = new Case(t)
                .straight("a", 60)
                .bend(
                        "fold",
                        new Core.OwnLayers(1, Optional.empty(), Optional.empty()),
                        (t + 2 * glue) / 2,
                        180,
                        Face.GRAIN,
                        Straps.DRY)
                .straight("b", 40)
                .bend("round", new Core.AroundBend("fold"), (t + 2 * glue) / 2 + t + glue, 180, Face.GRAIN, Straps.DRY)
                .straight("c", 20)
                .fitting("x", "a", From.END, 10, "b", "c");
        assertTrue(made.worstMiss(Straps.glued(made.asked(), glue)) < MEETS_MM, () -> made.worst + " mm off");
        assertTrue(made.worstMiss(made.asked()) > MEETS_MM, "without the glue line the folds are shorter");
        assertEquals(Length.ZERO, made.asked().glueGap());
        assertEquals(straight("a", 60), made.sections.get(0));
    }
}
