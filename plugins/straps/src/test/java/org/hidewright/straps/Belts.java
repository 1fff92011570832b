package org.hidewright.straps;

import static org.hidewright.straps.Straps.mm;

import java.util.Optional;
import org.hidewright.api.measure.Length;

/** A plain belt for tests, changed question by question. */
final class Belts {
    double size = 900;
    BeltMeasure datum = BeltMeasure.FRAME_END;
    double thickness = 3.5;
    Optional<Length> buckle = Optional.empty();
    int holes = 5;
    Optional<Integer> wornHole = Optional.empty();
    Optional<Length> shortest = Optional.empty();
    Optional<Length> longest = Optional.empty();
    double tipBeyond = 100;
    BeltTip tip = BeltTip.POINT;
    double tipLength = 20;
    double turnBack = 75;
    Optional<Length> turnBackThickness = Optional.empty();
    double contact = 15;
    Preparation preparation = new Preparation.None();
    double width = 38;
    double bar = 5;
    double frame = 30;
    double spacing = 25;
    double hole = 4.5;
    double slot = 25;
    double slotWidth = 5;
    boolean load;
    Optional<Length> prongBase = Optional.empty();
    Optional<Length> keeper = Optional.empty();
    Optional<Double> measured = Optional.empty();

    BeltLayout.Belt build() {
        return new BeltLayout.Belt(
                mm(size),
                datum,
                mm(width),
                mm(thickness),
                buckle,
                mm(bar),
                mm(frame),
                holes,
                mm(spacing),
                wornHole,
                mm(hole),
                shortest,
                longest,
                mm(tipBeyond),
                tip,
                mm(tipLength),
                mm(turnBack),
                turnBackThickness,
                mm(contact),
                preparation,
                mm(slot),
                mm(slotWidth),
                prongBase,
                keeper,
                mm(12),
                measured,
                load);
    }

    static BeltLayout.Belt belt(double size, int holes) {
        Belts belt = new Belts();
        belt.size = size;
        belt.holes = holes;
        return belt.build();
    }
}
