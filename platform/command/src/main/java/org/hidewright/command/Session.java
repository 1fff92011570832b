package org.hidewright.command;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.jobcard.RangeCheck;
import org.hidewright.core.window.ProjectWindow;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;

/**
 * What a command works with.
 *
 * @param catalogue what is installed
 * @param addOns the bundles that can be turned on and off, looked up when asked for
 * @param paper writers, and readers of drawings, loaded when asked for
 * @param window the program as a window, made when asked for; empty where no bundle brings one
 * @param texts texts in the language and units asked for
 * @param in where a maker answers what is asked
 * @param out where answers go
 * @param err where trouble goes
 * @param stops what was told, and of it what stops the work
 */
record Session(
        Catalogue catalogue,
        Supplier<AddOns> addOns,
        PaperServices paper,
        Supplier<Optional<ProjectWindow>> window,
        CommandTexts texts,
        BufferedReader in,
        PrintStream out,
        PrintStream err,
        StopsTold stops) {
    Wording wording() {
        return texts.wording();
    }

    Session in(Wording wording) {
        return new Session(catalogue, addOns, paper, window, new CommandTexts(wording), in, out, err, stops);
    }

    /** Says what is the matter, why and what to do, each on a line of its own, with where it stands. */
    void tell(PrintStream to, Remark remark) {
        tell(to, remark, wording().where(remark).orElse(""));
    }

    /** The same right after it was typed, where nobody needs to be told where it stands. */
    void tellAtOnce(PrintStream to, Remark remark) {
        tell(to, remark, "");
    }

    private void tell(PrintStream to, Remark remark, String where) {
        stops.heard(remark);
        if (remark.stops()) {
            stops.add(where, wording().what(remark));
        }
        tell(
                to,
                remark.severity(),
                where,
                wording().what(remark),
                wording().why(remark),
                wording().next(remark));
    }

    /** The same of part of a range of a slip; its id is empty where that is plain. */
    void tell(PrintStream to, RangeCheck check, String slip) {
        String where = slip.isEmpty() ? "" : wording().host("where.slip", slip);
        tell(to, check.severity(), where, check.what(), check.why(), check.next());
    }

    private void tell(PrintStream to, Severity severity, String where, String what, String why, String next) {
        String label = wording().host("severity." + severity.name().toLowerCase(Locale.ROOT));
        to.println(label + (where.isEmpty() ? "" : " (" + where + ")") + ": " + what);
        to.println("    " + why);
        to.println("    " + next);
    }
}
