package org.hidewright.core.proof;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.wording.Remark;

/**
 * What a look at a text came to.
 *
 * @param remarks what is wrong, each with its place where it has one
 * @param asked how many sets of answers were asked, or how many rows were looked at
 */
public record Proof(List<Remark> remarks, int asked) {
    public Proof {
        remarks = List.copyOf(remarks);
    }

    /** Whether there is nothing its author has to mend; what is only worth knowing may be told. */
    public boolean sound() {
        return remarks.stream().noneMatch(remark -> remark.stops() || remark.severity() == Severity.CHECK);
    }
}
