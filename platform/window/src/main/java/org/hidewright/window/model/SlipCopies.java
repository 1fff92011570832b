package org.hidewright.window.model;

import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;

/** Copies of slips, right after what they are copies of: to be made as well, or to try something out on. */
final class SlipCopies {
    private SlipCopies() {}

    /** An id that no slip has yet. */
    static String freeId(Project project, String wanted) {
        String free = wanted;
        for (int i = 2; project.index().containsKey(free); i++) {
            free = wanted + "-" + i;
        }
        return free;
    }

    /** The project with a copy of a slip. */
    static Project copied(Project project, Slip of, String id, String title) throws JsonTrouble {
        return after(project, of, of.called(id).titled(title));
    }

    /** The project with a copy of a slip that tries something out for it, or for the slip that it tries out for itself. */
    static Project tried(Project project, Slip of, String id, String title) throws JsonTrouble {
        return after(
                project, of, of.called(id).titled(title).asWhatIf(of.whatIf().orElse(of.id())));
    }

    private static Project after(Project project, Slip of, Slip copy) throws JsonTrouble {
        return project.adding(project.index().get(of.id()) + 1, copy.text());
    }

    /** The project with what was tried out taken over into the slip it was tried out for. */
    static Project takenOver(Project project, Slip tried) throws JsonTrouble {
        Slip real = tried.whatIf().flatMap(project::slip).orElseThrow(() -> new Gone(tried.id()));
        return project.with(real.answeredAs(tried)).removing(tried.id());
    }
}
