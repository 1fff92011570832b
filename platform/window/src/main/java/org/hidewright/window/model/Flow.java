package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** What takes from what in a project. */
final class Flow {
    private final Map<String, Set<String>> sources = new HashMap<>();
    private final Map<String, List<String>> takers = new HashMap<>();
    private final Set<String> drives = new HashSet<>();
    private final Map<String, String> triesFor = new HashMap<>();

    Flow(WorkedProject worked, Wording wording) {
        worked.slips().forEach((id, slip) -> {
            SlipWording words = new SlipWording(slip, wording);
            slip.slip().whatIf().ifPresent(of -> triesFor.put(id, of));
            for (AskedLine line : slip.asked()) {
                line.link().ifPresent(link -> {
                    sources.computeIfAbsent(id, any -> new HashSet<>()).add(link.slip());
                    takers.computeIfAbsent(answer(link.slip(), link.answer()), any -> new ArrayList<>())
                            .add(wording.host("job-card.linked", words.title(), words.label(line.question())));
                });
            }
        });
        List<String> makers = worked.slips().values().stream()
                .filter(Faces::makes)
                .map(WorkedSlip::slip)
                .map(slip -> slip.id())
                .toList();
        makers.forEach(this::drive);
        if (makers.isEmpty()) {
            worked.slips().keySet().stream()
                    .filter(id -> !sources.containsKey(id))
                    .forEach(drives::add);
        }
    }

    private void drive(String slip) {
        if (drives.add(slip)) {
            sources.getOrDefault(slip, Set.of()).forEach(this::drive);
        }
    }

    private static String answer(String slip, String key) {
        return new Link(slip, key, "", "").toString();
    }

    /**
     * Whether the piece hangs on a slip; where none is made, whether it takes from no other. What tries something out stands with
     * the slip it is for.
     */
    boolean drives(String slip) {
        return drives.contains(triesFor.getOrDefault(slip, slip));
    }

    /** The questions that take an answer, in words. */
    List<String> hangsOn(String slip, String key) {
        return List.copyOf(takers.getOrDefault(answer(slip, key), List.of()));
    }
}
