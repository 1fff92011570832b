package org.hidewright.command;

import java.util.List;
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
            session.out().println(session.texts().text("addons.trusted", maker.name(), maker.fingerprint()));
        }
        session.out().println(session.texts().text("addons.trust-demands"));
    }

    void distrust(String named) throws FileTrouble {
        Maker maker = makers().distrust(named);
        session.out().println(session.texts().text("addons.distrusted", maker.name(), maker.fingerprint()));
        if (makers().all().isEmpty()) {
            session.out().println(session.texts().text("addons.trust-nobody"));
        }
    }

    private void list() throws FileTrouble {
        List<Maker> all = makers().all();
        if (all.isEmpty()) {
            session.out().println(session.texts().text("addons.trust-nobody"));
            return;
        }
        session.out().println(session.texts().text("addons.trust-demands"));
        all.forEach(maker -> session.out().println("    " + maker.name() + "  " + maker.fingerprint()));
    }
}
