package org.hidewright.command;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.Supplier;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;

/**
 * What a command works with.
 *
 * @param catalogue what is installed
 * @param addOns the bundles that can be turned on and off, looked up when asked for
 * @param paper writers, loaded when asked for
 * @param texts texts in the language and units asked for
 * @param out where answers go
 * @param err where trouble goes
 */
record Session(
        Catalogue catalogue,
        Supplier<AddOns> addOns,
        PaperServices paper,
        CommandTexts texts,
        PrintStream out,
        PrintStream err) {
    Wording wording() {
        return texts.wording();
    }

    Session in(Wording wording) {
        return new Session(catalogue, addOns, paper, new CommandTexts(wording), out, err);
    }

    /** Says what is the matter, why and what to do, each on a line of its own, with where it stands. */
    void tell(PrintStream to, Remark remark) {
        String severity = wording().host("severity." + remark.severity().name().toLowerCase(Locale.ROOT));
        String where = wording().where(remark).map(place -> " (" + place + ")").orElse("");
        to.println(severity + where + ": " + wording().what(remark));
        to.println("    " + wording().why(remark));
        to.println("    " + wording().next(remark));
    }
}
