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

    /** @param documents names of the files of pages that were written with it */
    public static String write(WorkedProject worked, Wording wording, LocalDate date, List<String> documents) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("project", worked.project().name());
        worked.project().about().ifPresent(about -> tree.put("about", about));
        tree.put("date", date.toString());
        tree.put("documents", documents);
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
