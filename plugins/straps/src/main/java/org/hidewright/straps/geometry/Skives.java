package org.hidewright.straps.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The thinner zones of a strap, on the flat: full depth from and to, and a ramp where a thicker neighbour follows. */
public final class Skives {
    /** A ramp is at least this many times as long as it rises; our own limit, at which it is 5 % longer than it lies. */
    public static final double RAMP_TO_RISE = 3;

    private static final double SAME_MM = 1e-9;

    private final List<Zone> zones = new ArrayList<>();
    private final List<Sharp> steps = new ArrayList<>();

    /**
     * One zone; without a ramp its ramp starts where the full depth does.
     *
     * @param sectionId the section it begins in
     * @param neighbourBefore the section its first ramp runs into, empty without one
     * @param neighbourAfter the section its last ramp runs into, empty without one
     */
    public record Zone(
            String sectionId,
            double rampStart,
            double fullStart,
            double fullEnd,
            double rampEnd,
            double thicknessMm,
            String neighbourBefore,
            String neighbourAfter) {}

    /**
     * A place where the thickness jumps, no ramp or too steep a one leading from the one to the other.
     *
     * @param sectionId the thinner section
     */
    public record Sharp(String sectionId, double atMm, double thinnerMm, double thickerMm) {}

    private record Slice(PlacedPiece piece, double from, double to, double thickness) {}

    /**
     * Finds the zones.
     *
     * @param fullMm thickness of the strap where nothing is taken off
     * @param rampMm the ramp that goes with each section
     */
    public Skives(FoldedStrap strap, double fullMm, ToDoubleFunction<PlacedPiece> rampMm) {
        List<Slice> slices = slices(strap);
        for (int first = 0; first < slices.size(); first++) {
            double thickness = slices.get(first).thickness();
            int last = first;
            while (last + 1 < slices.size() && same(slices.get(last + 1).thickness(), thickness)) {
                last++;
            }
            if (thickness < fullMm - SAME_MM) {
                zones.add(zone(slices, first, last, rampMm));
            }
            first = last;
        }
    }

    private Zone zone(List<Slice> slices, int first, int last, ToDoubleFunction<PlacedPiece> rampMm) {
        Slice start = slices.get(first);
        Slice end = slices.get(last);
        boolean thickerBefore = first > 0 && slices.get(first - 1).thickness() > start.thickness();
        boolean thickerAfter = last + 1 < slices.size() && slices.get(last + 1).thickness() > end.thickness();
        double before = thickerBefore ? rampMm.applyAsDouble(start.piece()) : 0;
        double after = thickerAfter ? rampMm.applyAsDouble(end.piece()) : 0;
        if (thickerBefore) {
            step(
                    start.piece(),
                    start.from(),
                    start.thickness(),
                    slices.get(first - 1).thickness(),
                    before);
        }
        if (thickerAfter) {
            step(end.piece(), end.to(), end.thickness(), slices.get(last + 1).thickness(), after);
        }
        return new Zone(
                start.piece().id(),
                start.from() - before,
                start.from(),
                end.to(),
                end.to() + after,
                start.thickness(),
                before > 0 ? slices.get(first - 1).piece().id() : "",
                after > 0 ? slices.get(last + 1).piece().id() : "");
    }

    private void step(PlacedPiece thinner, double at, double thin, double thick, double ramp) {
        if (ramp < RAMP_TO_RISE * (thick - thin) - SAME_MM) {
            steps.add(new Sharp(thinner.id(), at, thin, thick));
        }
    }

    private static List<Slice> slices(FoldedStrap strap) {
        List<Slice> slices = new ArrayList<>();
        for (PlacedPiece piece : strap.pieces()) {
            double flat = piece.flatStart();
            for (PlacedStretch placed : piece.stretches()) {
                double end = flat + placed.stretch().flatMm();
                slices.add(new Slice(piece, flat, end, placed.stretch().thicknessMm()));
                flat = end;
            }
        }
        return slices;
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME_MM;
    }

    public List<Zone> zones() {
        return List.copyOf(zones);
    }

    /** Where the thickness jumps without a ramp long enough, in the order of the flat strap. */
    public List<Sharp> steps() {
        return List.copyOf(steps);
    }

    /** Length of ramps that run into a section; it must have room for them. */
    public double rampsInto(String sectionId) {
        double ramps = 0;
        for (Zone zone : zones) {
            if (zone.neighbourBefore().equals(sectionId)) {
                ramps += zone.fullStart() - zone.rampStart();
            }
            if (zone.neighbourAfter().equals(sectionId)) {
                ramps += zone.rampEnd() - zone.fullEnd();
            }
        }
        return ramps;
    }
}
