package org.hidewright.command;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.core.wording.Remark;

/** What was told, and of it what stops the work, to be said once more where it may have been pushed out of sight. */
final class StopsTold {
    /** More of them say no more than that there are more. */
    private static final int SHOWN = 8;

    private final Set<String> stops = new LinkedHashSet<>();
    private final Set<Remark> told = new HashSet<>();
    private Session asked;

    void heard(Remark remark) {
        told.add(remark);
    }

    /** Whether it was told already, at the same place and of the same: what is looked over may be installed as well. */
    boolean isHeard(Remark remark) {
        return told.contains(remark);
    }

    void add(String where, String what) {
        stops.add(where.isEmpty() ? what : where + ": " + what);
    }

    /** Has them said again once all else is. */
    void sayAgain(Session session) {
        asked = session;
    }

    /** Says how many there are and where, if that was asked for and there are any. */
    void atTheEnd() {
        if (asked != null && !stops.isEmpty()) {
            say(asked);
        }
    }

    private void say(Session session) {
        List<String> all = new ArrayList<>(stops);
        session.err().println();
        session.err().println(session.texts().text("stops.told", all.size()));
        all.stream().limit(SHOWN).forEach(stop -> session.err().println("    " + stop));
        if (all.size() > SHOWN) {
            session.err().println("    " + session.texts().text("stops.more", all.size() - SHOWN));
        }
    }
}
