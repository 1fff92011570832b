package org.hidewright.command;

import java.util.List;
import java.util.Locale;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.addons.TrustedMakers.Maker;
import org.hidewright.core.store.FileTrouble;

/** Names whose signature add-ons have to carry, and says who is named. */
final class TrustPrinter {
    private final Session session;

    TrustPrinter(Session session) {
        this.session = session;
    }

    private TrustedMakers makers() {
        return session.addOns().get().makers();
    }

    void trust(List<String> certificates) throws FileTrouble, BadArgument {
        if (certificates.isEmpty()) {
            list();
            return;
        }
        for (String certificate : certificates) {
            Maker maker = makers().trust(FileText.named(certificate, session.texts()));
            session.out().println(session.texts().text("addons.trusted", maker.name(), fingerprint(maker)));
        }
        session.out().println(session.texts().text("addons.trust-demands"));
    }

    void distrust(String named) throws FileTrouble {
        Maker maker = makers().distrust(named);
        session.out().println(session.texts().text("addons.distrusted", maker.name(), fingerprint(maker)));
        if (makers().all().isEmpty()) {
            session.out().println(session.texts().text("addons.trust-nobody"));
            List<String> installed = session.addOns().get().all().stream()
                    .filter(addOn -> addOn.origin() == Origin.MAKER && addOn.state() == State.ON && addOn.code())
                    .map(AddOn::id)
                    .toList();
            if (!installed.isEmpty()) {
                session.out().println(session.texts().text("addons.trust-go-on", String.join(", ", installed)));
                session.out().println(session.texts().text("addons.rights"));
            }
        }
    }

    /** As keytool prints it. */
    private static String fingerprint(Maker maker) {
        return maker.fingerprint().toUpperCase(Locale.ROOT).replaceAll("..(?!$)", "$0:");
    }

    private void list() throws FileTrouble {
        List<Maker> all = makers().all();
        if (all.isEmpty()) {
            session.out().println(session.texts().text("addons.trust-nobody"));
            return;
        }
        session.out().println(session.texts().text("addons.trust-demands"));
        all.forEach(maker -> session.out().println("    " + maker.name() + "  " + fingerprint(maker)));
    }
}
