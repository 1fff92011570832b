package org.hidewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.core.jobcard.SlipJson;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** What searches come to: told while they run, or as JSON in the end with no word beside it. */
final class SearchPrinter {
    private final Session session;
    private final boolean json;
    private final List<Map<String, Object>> slips = new ArrayList<>();

    SearchPrinter(Session session, boolean json) {
        this.session = session;
        this.json = json;
    }

    /** That nothing in a project is searched for. */
    void nothing(String project) {
        say(session.texts().text("search.nothing", project));
    }

    /** That another answer has to be given first. */
    void notYet(WorkedProject worked, String id) {
        WorkedSlip slip = worked.slips().get(id);
        session.err().println(session.texts().text("search.not-yet", id));
        slip.remarks().stream().filter(Remark::stops).forEach(remark -> session.tell(session.err(), remark));
        if (json) {
            keep(worked, slip);
        }
    }

    /** A finding, by the answers that matter most. */
    void found(double seconds, WorkedSlip slip) {
        String after = String.format(session.wording().language(), "%.1f", seconds);
        say(session.texts().text("search.found", after, lead(slip)));
        session.out().flush();
    }

    private String lead(WorkedSlip slip) {
        SlipWording words = new SlipWording(slip, session.wording());
        return slip.answers().stream()
                .flatMap(answers -> slip.installed().orElseThrow().calculator().declaration().answers().stream()
                        .filter(answer -> answer.lead())
                        .flatMap(answer -> answers.get(answer.key()).stream()
                                .map(value -> words.label(answer).toLowerCase(Locale.ROOT) + " "
                                        + words.text(answer, value))))
                .reduce((one, other) -> one + ", " + other)
                .orElse("–");
    }

    void noBetter(String slip) {
        say(session.texts().text("search.no-better", slip));
    }

    /** The slip as it stands after its search. */
    void searched(WorkedProject worked, String id) {
        WorkedSlip slip = worked.slips().get(id);
        if (json) {
            keep(worked, slip);
        } else {
            session.out().println();
            new SlipPrinter(worked, slip, false, session).print();
        }
    }

    private void keep(WorkedProject worked, WorkedSlip slip) {
        slips.add(new SlipJson(worked, slip, session.wording()).tree());
    }

    private void say(String line) {
        if (!json) {
            session.out().println(line);
        }
    }

    /** Prints what is printed when all are searched; a program that was broken off ends right after it. */
    void end() {
        if (json) {
            session.out().print(JsonOut.write(slips));
        }
        session.out().flush();
        session.err().flush();
    }
}
