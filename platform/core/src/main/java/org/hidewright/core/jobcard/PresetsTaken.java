package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedSlip;

/** What a slip was worked with though nobody chose it: leather is cut by these values as by those that were typed. */
public final class PresetsTaken {
    private final WorkedSlip slip;
    private final SlipWording words;

    public PresetsTaken(WorkedSlip slip, Wording wording) {
        this.slip = slip;
        this.words = new SlipWording(slip, wording);
    }

    /** Each as “label value”, in the order they are asked; what stands in rows is told with its slip alone. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        int inside = Integer.MAX_VALUE; // how deep lines stand that the group before them has said
        for (AskedLine line : slip.asked()) {
            if (line.depth() >= inside) {
                continue;
            }
            inside = Integer.MAX_VALUE;
            if (line.preset() && line.row().isEmpty() && line.value().isPresent()) {
                lines.add(words.label(line.question()) + " "
                        + words.text(line.question(), line.value().get()));
                inside = line.question().kind() == Kind.GROUP ? line.depth() + 1 : inside;
            }
        }
        return lines;
    }
}
