package org.hidewright.core.work;

import java.util.List;
import org.hidewright.core.range.RangeStudy;
import org.hidewright.core.wording.Remark;

/**
 * What becomes of the answers of one slip over the ranges typed on it and on the slips it hangs on.
 *
 * @param inputs in the order in which the study counts them
 * @param study by the places of {@link AnswerPlaces}
 */
public record SlipRanges(List<RangedInput> inputs, RangeStudy<Remark> study) {
    public SlipRanges {
        inputs = List.copyOf(inputs);
    }
}
