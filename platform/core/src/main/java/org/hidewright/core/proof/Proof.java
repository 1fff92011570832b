package org.hidewright.core.proof;

import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.wording.Remark;

/**
 * What a look at a text came to.
 *
 * @param remarks what is wrong, each with its place where it has one
 * @param asked how many sets of answers were asked, or how many rows or texts were looked at
 * @param says what a template says, by the keys that a file beside it says it by in another language; nothing of one that cannot be read
 */
public record Proof(List<Remark> remarks, int asked, Map<String, String> says) {
    public Proof {
        remarks = List.copyOf(remarks);
        says = Map.copyOf(says);
    }

    Proof(List<Remark> remarks, int asked) {
        this(remarks, asked, Map.of());
    }

    /** Whether there is nothing its author has to mend; what is only worth knowing may be told. */
    public boolean sound() {
        return remarks.stream().noneMatch(remark -> remark.stops() || remark.severity() == Severity.CHECK);
    }
}
