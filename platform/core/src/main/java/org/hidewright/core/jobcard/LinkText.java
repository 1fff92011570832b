package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** Links in words. */
public final class LinkText {
    private LinkText() {}

    /** The title of the slip it comes from and the label of its answer; as it is written where there is no such slip. */
    public static String of(Link link, WorkedProject worked, Wording wording) {
        WorkedSlip from = worked.slips().get(link.slip());
        if (from == null) {
            return link.toString();
        }
        SlipWording words = new SlipWording(from, wording);
        String label = words.labelOf(true, link.answer()).orElse(link.answer());
        List<String> inside = new ArrayList<>();
        if (!link.row().isEmpty()) {
            inside.add(words.rowName(link.answer(), link.row()));
        }
        if (!link.column().isEmpty()) {
            inside.add(words.columnLabel(link));
        }
        return wording.host(
                "job-card.linked",
                words.title(),
                inside.isEmpty() ? label : label + " (" + String.join(", ", inside) + ")");
    }
}
