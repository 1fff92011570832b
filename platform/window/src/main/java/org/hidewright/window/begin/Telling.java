package org.hidewright.window.begin;

import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;

/** What there is to put right or to look at in a project that is begun, beside what stands at its questions. */
final class Telling {
    private Telling() {}

    static String of(ProjectFace face) {
        List<SlipFace> slips = face.slips();
        return slips.stream()
                .flatMap(slip -> slip.told().stream())
                .filter(told -> told.how() == Severity.STOP || told.how() == Severity.CHECK)
                .map(told -> told.severity() + ": " + told.what() + (told.next().isEmpty() ? "" : " → " + told.next()))
                .collect(Collectors.joining("\n"));
    }
}
