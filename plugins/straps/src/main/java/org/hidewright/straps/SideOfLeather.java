package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;

/** Draws the leather of a folded strap cut through: its section, its grain face and its flesh face. */
record SideOfLeather(FoldedStrap strap, Skives skives) {
    void draw(Drawing.Builder drawing) {
        drawing.add(face(Face.GRAIN, faces(Face.FLESH)).closed(Role.SECTION));
        drawing.add(face(Face.GRAIN, List.of()).open(Role.GRAIN));
        drawing.add(face(Face.FLESH, List.of()).open(Role.FLESH));
    }

    static Point point(Pose pose) {
        return Point.of(pose.x(), pose.y());
    }

    /** One step of a face: a straight line to its end, or an arc round a centre to it. */
    private record Step(Point from, Point to, Point centre, double sweep) {
        Step back() {
            return new Step(to, from, centre, -sweep);
        }
    }

    private Path.Builder face(Face face, List<Step> thenBack) {
        List<Step> steps = faces(face);
        Path.Builder path = Path.from(steps.get(0).from());
        steps.forEach(step -> add(path, step));
        List<Step> back = new ArrayList<>(thenBack);
        Collections.reverse(back);
        back.forEach(step -> add(path, step.back()));
        return path;
    }

    private static void add(Path.Builder path, Step step) {
        if (path.pen().distanceTo(step.from()) > 1e-6) {
            path.lineTo(step.from());
        }
        if (step.centre() != null) {
            path.arcAround(step.centre(), step.sweep());
        } else if (step.from().distanceTo(step.to()) > 1e-6) {
            path.lineTo(step.to());
        }
    }

    private List<Step> faces(Face face) {
        List<Step> steps = new ArrayList<>();
        for (PlacedPiece piece : strap.pieces()) {
            double flat = piece.flatStart();
            for (PlacedStretch placed : piece.stretches()) {
                if (placed.stretch() instanceof Stretch.Arc arc) {
                    arc(steps, placed, arc, face);
                } else if (piece.piece() instanceof Piece.TurnBack) {
                    leg(steps, piece, placed, face);
                } else {
                    level(steps, placed, flat, face);
                }
                flat += placed.stretch().flatMm();
            }
        }
        return steps;
    }

    private static void arc(List<Step> steps, PlacedStretch placed, Stretch.Arc arc, Face face) {
        double depth = face == Face.GRAIN ? 0 : arc.thicknessMm();
        double radius = face == Face.GRAIN ? arc.grainRadiusMm() : arc.fleshRadiusMm();
        Point from = point(placed.start().towardsGrain(-depth));
        Point to = point(placed.end().towardsGrain(-depth));
        Point centre = radius > 1e-6 ? point(arc.centre(placed.start())) : null;
        steps.add(new Step(from, to, centre, arc.sense() * arc.turnRad()));
    }

    /** A leg of a turn-back, drawn from the very place where both legs meet. */
    private static void leg(List<Step> steps, PlacedPiece piece, PlacedStretch placed, Face face) {
        double depth = face == Face.GRAIN ? 0 : placed.stretch().thicknessMm();
        boolean first = placed == piece.stretches().get(0);
        Pose from = first ? piece.start() : placed.start();
        Pose to = first ? placed.end() : piece.end();
        steps.add(new Step(point(from.towardsGrain(-depth)), point(to.towardsGrain(-depth)), null, 0));
    }

    /** The grain face runs straight; the flesh face follows the ramps of skives. */
    private void level(List<Step> steps, PlacedStretch placed, double flat, Face face) {
        double end = flat + placed.stretch().flatMm();
        List<Double> cuts = new ArrayList<>(List.of(flat, end));
        if (face == Face.FLESH) {
            for (Skives.Zone zone : skives.zones()) {
                for (double at : new double[] {zone.rampStart(), zone.rampEnd()}) {
                    if (at > flat && at < end) {
                        cuts.add(at);
                    }
                }
            }
        }
        Collections.sort(cuts);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            steps.add(new Step(at(placed, flat, cuts.get(i), face), at(placed, flat, cuts.get(i + 1), face), null, 0));
        }
    }

    private Point at(PlacedStretch placed, double stretchStart, double flat, Face face) {
        Pose pose = placed.start().ahead(flat - stretchStart);
        return point(
                face == Face.GRAIN
                        ? pose
                        : pose.towardsGrain(-thickness(placed.stretch().thicknessMm(), flat)));
    }

    /** Thickness with the ramps that run into a straight stretch. */
    private double thickness(double own, double flat) {
        double thickness = own;
        for (Skives.Zone zone : skives.zones()) {
            if (flat >= zone.rampStart() && flat <= zone.fullStart() && zone.fullStart() > zone.rampStart()) {
                double share = (zone.fullStart() - flat) / (zone.fullStart() - zone.rampStart());
                thickness = Math.min(thickness, zone.thicknessMm() + share * (own - zone.thicknessMm()));
            }
            if (flat >= zone.fullEnd() && flat <= zone.rampEnd() && zone.rampEnd() > zone.fullEnd()) {
                double share = (flat - zone.fullEnd()) / (zone.rampEnd() - zone.fullEnd());
                thickness = Math.min(thickness, zone.thicknessMm() + share * (own - zone.thicknessMm()));
            }
        }
        return thickness;
    }
}
