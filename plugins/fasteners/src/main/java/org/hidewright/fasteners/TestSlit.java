package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** One of a row of slits to be tried in scrap, the shortest first: a slit can be lengthened. */
public record TestSlit(
        @RowId String id,

        @Answered(unit = "mm", step = "0.5 mm", by = "stud-habit")
        Length slit) {
    private static final List<Double> SHARES = List.of(0.5, 0.7, 0.85, 1.0);

    static List<TestSlit> upTo(Length longest) {
        List<TestSlit> row = new ArrayList<>();
        SHARES.forEach(share -> row.add(new TestSlit("s" + (row.size() + 1), longest.times(share))));
        return row;
    }
}
