package org.hidewright.straps.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Which straight sections of a folded strap lie on which.
 *
 * <p>Two sections lie on each other where they are parallel and their faces are no further apart than the glue and half
 * a millimetre that stitching pulls together.
 */
public final class Stack {
    /** What stitching or pressing closes without being asked. */
    public static final double PRESSED_MM = 0.5;

    private static final double PARALLEL = Math.sin(Math.toRadians(1));

    private final FoldedStrap strap;
    private final double glueMm;

    public Stack(FoldedStrap strap, double glueMm) {
        this.strap = strap;
        this.glueMm = glueMm;
    }

    /**
     * One section where an axis goes through it.
     *
     * @param lowMm its lower face, measured along the axis from the grain of the section asked about, grain side positive
     * @param highMm its upper face
     */
    public record Layer(PlacedPiece piece, double lowMm, double highMm, double alongMm) {}

    /** The section itself and every straight one an axis square to it goes through, from the flesh side upwards. */
    public List<Layer> through(PlacedPiece section, double alongMm) {
        List<Layer> layers = new ArrayList<>();
        Pose axis = section.poseAt(alongMm);
        layers.add(new Layer(section, -section.thickness(), 0, alongMm));
        for (PlacedPiece other : strap.pieces()) {
            if (other == section || !other.straight() || !parallel(section, other)) {
                continue;
            }
            FoldedStrap.crossing(axis, other)
                    .ifPresent(at -> layers.add(new Layer(
                            other,
                            at.besideMm() - (at.sameWay() ? other.thickness() : 0),
                            at.besideMm() + (at.sameWay() ? 0 : other.thickness()),
                            at.alongMm())));
        }
        layers.sort(Comparator.comparingDouble(layer -> layer.lowMm() + layer.highMm()));
        return layers;
    }

    /** Those of {@link #through} that lie on the section without a gap, or in each other, itself among them. */
    public List<Layer> touching(PlacedPiece section, double alongMm) {
        List<Layer> layers = through(section, alongMm);
        Layer own = layers.get(own(layers, section));
        double bottom = own.lowMm();
        double top = own.highMm();
        for (int round = 1; round < layers.size(); round++) {
            for (Layer layer : layers) {
                if (touches(layer, bottom, top)) {
                    bottom = Math.min(bottom, layer.lowMm());
                    top = Math.max(top, layer.highMm());
                }
            }
        }
        double lowest = bottom;
        double highest = top;
        return layers.stream().filter(layer -> touches(layer, lowest, highest)).toList();
    }

    /** Layers that lie in each other count as well: they have to find room beside each other. */
    private boolean touches(Layer layer, double bottomMm, double topMm) {
        double pressed = glueMm + PRESSED_MM;
        return layer.lowMm() - topMm <= pressed && bottomMm - layer.highMm() <= pressed;
    }

    private static int own(List<Layer> layers, PlacedPiece section) {
        int own = 0;
        while (layers.get(own).piece() != section) {
            own++;
        }
        return own;
    }

    /**
     * The layers that a fitting draws together: those it goes through, and what lies against each of them.
     *
     * @param through the sections it goes through, each with its place along the section
     */
    public List<Layer> drawnTogether(List<Layer> through) {
        List<Layer> drawn = new ArrayList<>();
        for (Layer pierced : through) {
            List<Layer> beside =
                    pierced.piece().straight() ? touching(pierced.piece(), pierced.alongMm()) : List.of(pierced);
            for (Layer layer : beside) {
                if (drawn.stream().noneMatch(known -> known.piece() == layer.piece())) {
                    drawn.add(layer);
                }
            }
        }
        return drawn;
    }

    /**
     * How far a fitting has to draw apart layers together: the widest gap between two that follow each other on its
     * axis, beyond what glue and pressing close. 0 where all lie on each other.
     */
    public double apartMm(List<Layer> through) {
        double apart = 0;
        List<PlacedPiece> pieces = through.stream().map(Layer::piece).toList();
        for (Layer pierced : through) {
            if (!pierced.piece().straight()) {
                continue;
            }
            List<Layer> axis = through(pierced.piece(), pierced.alongMm());
            int from = 0;
            while (!pieces.contains(axis.get(from).piece())) {
                from++;
            }
            int to = axis.size() - 1;
            while (!pieces.contains(axis.get(to).piece())) {
                to--;
            }
            for (int i = from; i < to; i++) {
                double gap = axis.get(i + 1).lowMm() - axis.get(i).highMm();
                if (gap > glueMm + PRESSED_MM) {
                    apart = Math.max(apart, gap);
                }
            }
        }
        return apart;
    }

    /** Leather and glue of layers pressed on each other. */
    public Pile pile(List<Layer> layers) {
        return new Pile(
                layers.stream()
                        .mapToDouble(layer -> layer.highMm() - layer.lowMm())
                        .sum(),
                layers.size(),
                glueMm);
    }

    /** The thickest place of the whole strap as it lies; of a strap with bends only, its thickest section. */
    public Pile thickest() {
        Pile thickest = new Pile(
                strap.pieces().stream()
                        .flatMap(piece -> piece.stretches().stream())
                        .mapToDouble(placed -> placed.stretch().thicknessMm())
                        .max()
                        .orElse(0),
                1,
                glueMm);
        for (PlacedPiece section : strap.pieces()) {
            if (section.straight()) {
                for (Part part : parts(section)) {
                    thickest = thickest.thicker(pile(touching(section, part.middleMm())));
                }
            }
        }
        return thickest;
    }

    /** Length of a straight section over which nothing lies on one of its faces. */
    public double openMm(PlacedPiece section, Face face) {
        double open = 0;
        for (Part part : parts(section)) {
            List<Layer> layers = touching(section, part.middleMm());
            int own = own(layers, section);
            boolean covered = face == Face.GRAIN ? own + 1 < layers.size() : own > 0;
            if (!covered) {
                open += part.lengthMm();
            }
        }
        return open;
    }

    private record Part(double fromMm, double toMm) {
        double middleMm() {
            return (fromMm + toMm) / 2;
        }

        double lengthMm() {
            return toMm - fromMm;
        }
    }

    /** The section cut where another one begins or ends beside it, so that each part has the same layers all along. */
    private List<Part> parts(PlacedPiece section) {
        Pose start = section.start();
        double[] cuts = DoubleStream.concat(
                        DoubleStream.of(0, section.outsideLength()),
                        strap.pieces().stream()
                                .filter(other -> other != section && other.straight())
                                .flatMapToDouble(
                                        other -> DoubleStream.of(start.along(other.start()), start.along(other.end()))))
                .filter(cut -> cut >= 0 && cut <= section.outsideLength())
                .sorted()
                .toArray();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            if (cuts[i + 1] - cuts[i] > 1e-6) {
                parts.add(new Part(cuts[i], cuts[i + 1]));
            }
        }
        return parts;
    }

    private static boolean parallel(PlacedPiece one, PlacedPiece other) {
        return Math.abs(Math.sin(one.start().heading() - other.start().heading())) < PARALLEL;
    }

    /**
     * How far apart the facing faces of two straight sections are, negative where they would lie in each other; empty
     * where they are not parallel.
     */
    public static OptionalDouble gapMm(PlacedPiece one, PlacedPiece other) {
        if (!parallel(one, other)) {
            return OptionalDouble.empty();
        }
        double beside = one.start().beside(other.start());
        boolean sameWay = Math.cos(one.start().heading() - other.start().heading()) > 0;
        double low = beside - (sameWay ? other.thickness() : 0);
        double high = beside + (sameWay ? 0 : other.thickness());
        return OptionalDouble.of(low + high > -one.thickness() ? low : -one.thickness() - high);
    }
}
