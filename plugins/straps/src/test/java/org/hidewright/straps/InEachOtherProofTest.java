package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.InEachOther;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Stretch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How deep sections lie in each other, held against strips walked in small steps and looked into point by point. */
class InEachOtherProofTest {
    private static final double ALONG_MM = 0.05;
    private static final double THROUGH_MM = 0.02;
    /** A step through at either end, a step along on a slope as steep as a face gets there, and the flats of the polygon. */
    private static final double COARSE_MM = 0.15;

    /** One section as it was walked: both faces, point by point. */
    private static final class Walked {
        final List<double[]> grain = new ArrayList<>();
        final List<double[]> flesh = new ArrayList<>();
        final Path2D leather = new Path2D.Double();

        void close() {
            leather.moveTo(grain.get(0)[0], grain.get(0)[1]);
            grain.forEach(point -> leather.lineTo(point[0], point[1]));
            for (int i = flesh.size() - 1; i >= 0; i--) {
                leather.lineTo(flesh.get(i)[0], flesh.get(i)[1]);
            }
            leather.closePath();
        }

        /** The longest way square through this strip that lies in the other. */
        double acrossMm(Walked other) {
            double most = 0;
            Rectangle2D box = other.leather.getBounds2D();
            // both ends touch the neighbour, so they are left out
            for (int i = 1; i + 1 < grain.size(); i++) {
                double[] from = grain.get(i);
                double[] to = flesh.get(i);
                double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
                int points = (int) Math.ceil(length / THROUGH_MM);
                int run = 0;
                for (int j = 0; j < points; j++) {
                    double share = (j + 0.5) / points;
                    double x = from[0] + share * (to[0] - from[0]);
                    double y = from[1] + share * (to[1] - from[1]);
                    run = box.contains(x, y) && other.leather.contains(x, y) ? run + 1 : 0;
                    most = Math.max(most, run * length / points);
                }
            }
            return most;
        }
    }

    private double x;
    private double y;
    private double heading;

    private void step(Walked walked, double forward, double turn, double thickness) {
        x += forward * Math.cos(heading + turn / 2);
        y += forward * Math.sin(heading + turn / 2);
        heading += turn;
        mark(walked, thickness);
    }

    private void mark(Walked walked, double thickness) {
        walked.grain.add(new double[] {x, y});
        walked.flesh.add(new double[] {x + thickness * Math.sin(heading), y - thickness * Math.cos(heading)});
    }

    private Walked straight(double length, double thickness) {
        Walked walked = new Walked();
        mark(walked, thickness);
        int steps = (int) Math.ceil(length / ALONG_MM);
        for (int i = 0; i < steps; i++) {
            step(walked, length / steps, 0, thickness);
        }
        walked.close();
        return walked;
    }

    private Walked bent(double turn, double radius, double thickness, Face outside) {
        Walked walked = new Walked();
        mark(walked, thickness);
        int steps = (int) Math.ceil(turn * (radius + thickness) / ALONG_MM);
        double grainRadius = outside == Face.GRAIN ? radius + thickness : radius;
        double each = (outside == Face.GRAIN ? -1 : 1) * turn / steps;
        for (int i = 0; i < steps; i++) {
            step(walked, 2 * grainRadius * Math.sin(Math.abs(each) / 2), each, thickness);
        }
        walked.close();
        return walked;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void sectionsLieAsDeepInEachOtherAsPointsOfThemDo(long seed) {
        Random random = new Random(seed);
        int deep = 0;
        int clear = 0;
        for (int i = 0; i < 25; i++) {
            List<Piece> pieces = new ArrayList<>();
            List<Walked> walked = new ArrayList<>();
            x = 0;
            y = 0;
            heading = 0;
            double thickness = 0.8 + 3 * random.nextDouble();
            for (int section = 0; section < 7; section++) {
                String id = "s" + section;
                double own = thickness * (random.nextInt(3) == 0 ? 0.6 : 1);
                if (section % 2 == 0) {
                    double length = 4 + 16 * random.nextDouble();
                    pieces.add(new Piece.Run(id, length, own));
                    walked.add(straight(length, own));
                } else {
                    double turn = Math.toRadians(20 + 330 * random.nextDouble());
                    double radius = 5 * random.nextDouble();
                    Face outside = random.nextInt(3) == 0 ? Face.FLESH : Face.GRAIN;
                    pieces.add(new Piece.Bend(id, List.of(new Stretch.Arc(turn, radius, own, 0.5, outside))));
                    walked.add(bent(turn, radius, own, outside));
                }
            }
            List<PlacedPiece> placed = new FoldedStrap(pieces).pieces();
            for (int one = 0; one < placed.size(); one++) {
                for (int other = one + 1; other < placed.size(); other++) {
                    double worked = InEachOther.deepMm(placed.get(one), placed.get(other));
                    double points = Math.min(
                            walked.get(one).acrossMm(walked.get(other)),
                            walked.get(other).acrossMm(walked.get(one)));
                    assertEquals(points, worked, COARSE_MM, "s" + one + " and s" + other + " of " + pieces);
                    assertEquals(
                            worked,
                            InEachOther.deepMm(placed.get(other), placed.get(one)),
                            1e-9,
                            "whichever is asked first");
                    deep += worked > 0.5 ? 1 : 0;
                    clear += worked == 0 ? 1 : 0;
                }
            }
        }
        assertTrue(deep > 30 && clear > 100, deep + " pairs deep in each other, " + clear + " clear");
    }

    /** Up and over a run, and down 14 mm to 4 mm above it: the crown of a bend of 5 mm outside radius is 1 mm in it. */
    @Test
    void aBendIsInARunAsFarAsItsCrownReaches() {
        FoldedStrap strap = new FoldedStrap(List.of(
                new Piece.Run("run", 100, 2),
                new Piece.Bend("up", List.of(new Stretch.Arc(Math.PI, 10, 2, 0.5, Face.FLESH))),
                new Piece.Run("back", 50, 2),
                new Piece.Bend("down", List.of(new Stretch.Arc(Math.PI / 2, 2, 2, 0.5, Face.FLESH))),
                new Piece.Run("drop", 14, 2), // from 20 - 2 to 4
                new Piece.Bend("crown", List.of(new Stretch.Arc(Math.PI, 3, 2, 0.5, Face.FLESH)))));
        PlacedPiece run = strap.piece("run").orElseThrow();
        assertEquals(1, InEachOther.deepMm(run, strap.piece("crown").orElseThrow()), 1e-9);
        assertEquals(0, InEachOther.deepMm(run, strap.piece("drop").orElseThrow()));
    }

    /** Two rings of 5 mm outside radius, their centres 9 mm apart: their crowns are 1 mm in each other. */
    @Test
    void bendsAreInEachOtherOnTheLineOfTheirCentres() {
        FoldedStrap strap = new FoldedStrap(List.of(
                new Piece.Bend("one", List.of(new Stretch.Arc(1.9 * Math.PI, 3, 2, 0.5, Face.GRAIN))),
                new Piece.Bend("back", List.of(new Stretch.Arc(0.1 * Math.PI, 3, 2, 0.5, Face.GRAIN))),
                new Piece.Run("on", 9, 0.1),
                new Piece.Bend("two", List.of(new Stretch.Arc(2 * Math.PI, 3, 2, 0.5, Face.GRAIN)))));
        assertEquals(
                1,
                InEachOther.deepMm(
                        strap.piece("one").orElseThrow(), strap.piece("two").orElseThrow()),
                1e-9);
    }
}
