package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;

/** The job card as JSON. */
public final class JobCardJson {
    private JobCardJson() {}

    /** The key of the names of pages that were written with it. */
    public static final String DOCUMENTS = "documents";
    /** The key of the names of pages that lie there from before. */
    public static final String KEPT = "kept";

    /**
     * The job card.
     *
     * @param documents names of the files of pages that were written with it
     * @param kept names of files of pages that lie there from before, since what makes them cannot be worked now
     */
    public static String write(
            WorkedProject worked, Wording wording, LocalDate date, List<String> documents, List<String> kept) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("project", worked.project().name());
        worked.project().about().ifPresent(about -> tree.put("about", about));
        tree.put("date", date.toString());
        tree.put(DOCUMENTS, documents);
        if (!kept.isEmpty()) {
            tree.put(KEPT, kept);
        }
        tree.put(
                "notices",
                worked.general().stream()
                        .map(remark -> SlipJson.remark(remark, wording))
                        .toList());
        tree.put(
                "slips",
                worked.slips().values().stream()
                        .map(slip -> new SlipJson(worked, slip, wording).tree())
                        .toList());
        return JsonOut.write(tree);
    }
}
