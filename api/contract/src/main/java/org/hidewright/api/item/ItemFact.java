package org.hidewright.api.item;

import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;

/**
 * What a link can take from an item: one row for each part, for each edge, stitch line and fold of it, each seam, fitting
 * and operation,
 * and each kind of edge. The host works them out; nobody answers them.
 *
 * @param id {@code part}, {@code part.edge}, a seam’s or a fitting’s own, {@code edges.kind}, or {@code all}
 * @param length of an edge, line or fold; of a part, all its edges once round; of a kind, all such edges of all pieces
 * @param area of a part, as finished; of {@code all}, of all pieces
 * @param cut area of a part as it is cut, with what is left standing to be trimmed; of {@code all}, of all pieces
 * @param count of a part, how many pieces; of a line or seam, its holes; of a fitting, the layers it goes through
 * @param handsOn of an operation; of {@code all}, of all operations together
 * @param stack thickness of all layers of a seam or fitting, where each of its parts says how thick it is
 */
public record ItemFact(
        @RowId String id,
        @Answered(unit = "mm", step = "0.1 mm") Optional<Length> length,
        @Answered(unit = "cm²", step = "0.1 cm²") Optional<Area> area,
        @Answered(unit = "cm²", step = "0.1 cm²") Optional<Area> cut,
        @Answered Optional<Integer> count,
        @Answered(unit = "mm", step = "0.1 mm") Optional<Length> stack,
        @Answered(unit = "min", step = "1 min") Optional<Duration> handsOn) {}
