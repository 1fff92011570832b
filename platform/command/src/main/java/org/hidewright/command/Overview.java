package org.hidewright.command;

import java.util.Collection;
import java.util.List;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.catalogue.Installed;

/** What can be done: the commands, and the calculators that are installed. */
final class Overview {
    private final Session session;

    Overview(Session session) {
        this.session = session;
    }

    void print(Collection<String> commands) {
        CommandTexts texts = session.texts();
        session.out().println(texts.text("overview.head"));
        session.out().println();
        for (String command : commands) {
            session.out().println("  " + texts.text(command + ".usage"));
            session.out().println("      " + texts.text(command + ".about"));
        }
        session.out().println();
        calculators();
        session.out().println();
        session.out().println(texts.text("overview.next"));
        session.out().println(texts.text("overview.exit-codes"));
    }

    void calculators() {
        CommandTexts texts = session.texts();
        if (session.catalogue().ids().isEmpty()) {
            session.out().println(none());
            return;
        }
        session.out().println(texts.text("overview.calculators"));
        int widest = session.catalogue().ids().stream()
                .mapToInt(String::length)
                .max()
                .orElse(0);
        for (String id : session.catalogue().ids()) {
            session.catalogue()
                    .find(id)
                    .ifPresent(installed -> session.out()
                            .println("  " + id + " ".repeat(widest - id.length() + 2) + purpose(installed)));
        }
    }

    /** Why there is none: every bundle is turned off, or there is no bundle. */
    private String none() {
        List<String> off = session.addOns().get().all().stream()
                .filter(addOn -> addOn.state() == State.OFF)
                .map(AddOn::id)
                .toList();
        return off.isEmpty()
                ? session.texts().text("overview.no-calculators")
                : session.texts().text("overview.all-off", String.join(", ", off));
    }

    private String purpose(Installed installed) {
        Declaration declaration = installed.calculator().declaration();
        return session.wording().text(installed.calculator().texts(), declaration.purposeKey());
    }
}
