package org.hidewright.core.outline;

import java.util.List;
import org.hidewright.core.wording.Remark;

/**
 * What is read of a drawing.
 *
 * @param lines in the order of the file
 * @param remarks what a maker has to know of the reading, such as a unit that was taken
 */
public record ReadDrawing(List<DrawnLine> lines, List<Remark> remarks) {
    public ReadDrawing {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }
}
