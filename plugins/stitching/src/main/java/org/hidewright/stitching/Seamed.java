package org.hidewright.stitching;

import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;

/** A seam to be sewn. */
public sealed interface Seamed permits Seamed.Measured, Seamed.OfItem {
    NoticeKind NO_SEAM = NoticeKind.stop("no-such-seam");
    NoticeKind NO_HOLES = NoticeKind.stop("seam-without-holes");
    NoticeKind NO_STACK = NoticeKind.stop("seam-without-stack");

    /** What of a seam the thread hangs on, millimetres; how many stitches, and whether it joins parts or is for looks. */
    record Sizes(double length, double stack, double pitch, int stitches, boolean joins) {}

    /** By its measures. */
    record Measured(
            @Asked(unit = "mm", min = "2 mm", max = "50 m", usual = "50 mm-3 m", example = "500 mm")
            Length length,

            @Asked(
                    unit = "mm",
                    min = "0.8 mm",
                    max = "15 mm",
                    usual = "2-6 mm",
                    preset = "3.85 mm",
                    picture = "pitch#pitch")
            Length pitch,

            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "60 mm",
                    usual = "1-12 mm",
                    example = "5 mm",
                    picture = "seam-layers")
            Length stack)
            implements Seamed {
        @Override
        public Sizes sizes() {
            int stitches = (int) Math.max(1, Math.round(length.mm() / pitch.mm()));
            return new Sizes(length.mm(), stack.mm(), pitch.mm(), stitches, true);
        }
    }

    /** A seam of an item, with its length, holes and stack. */
    record OfItem(
            @Asked Item item,
            @Asked(example = "side") String seam,

            @Asked(unit = "mm", min = "0.3 mm", max = "60 mm", usual = "1-12 mm", example = "4 mm")
            Optional<Length> stack)
            implements Seamed {
        @Override
        public Sizes sizes() throws Refusal {
            Seam found = item.seams().stream()
                    .filter(one -> one.id().equals(seam.strip()))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(NO_SEAM.at(
                            "seam",
                            seam,
                            item.seams().stream().map(Seam::id).sorted().collect(Collectors.joining(", ")))));
            StitchLine seen = item.stitchLine(found.lines().get(0)).orElseThrow();
            if (seen.holes().size() < 2) {
                throw new Refusal(NO_HOLES.at("seam", seam));
            }
            int stitches =
                    seen.line().isClosed() ? seen.holes().size() : seen.holes().size() - 1;
            double length = Curve.of(seen.line()).length();
            return new Sizes(length, stackOf(found), length / stitches, stitches, found.joins());
        }

        private double stackOf(Seam found) throws Refusal {
            if (stack.isPresent()) {
                return stack.get().mm();
            }
            double sum = 0;
            for (OnPart on : found.lines()) {
                Part part = item.part(on.part()).orElseThrow();
                sum += part.thickness().orElseThrow(() -> new Refusal(NO_STACK.at("seam", seam, part.name())));
            }
            return sum;
        }
    }

    Sizes sizes() throws Refusal;
}
