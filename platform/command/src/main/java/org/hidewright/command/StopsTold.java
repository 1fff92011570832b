package org.hidewright.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What was told to stop the work, to be said once more where it may have been pushed out of sight. */
final class StopsTold {
    /** More of them say no more than that there are more. */
    private static final int SHOWN = 8;

    private final Set<String> stops = new LinkedHashSet<>();

    void add(String where, String what) {
        stops.add(where.isEmpty() ? what : where + ": " + what);
    }

    /** Says how many there are and where; nothing where there are none. */
    void sayAgain(Session session) {
        if (stops.isEmpty()) {
            return;
        }
        List<String> all = new ArrayList<>(stops);
        session.err().println();
        session.err().println(session.texts().text("stops.told", all.size()));
        all.stream().limit(SHOWN).forEach(stop -> session.err().println("    " + stop));
        if (all.size() > SHOWN) {
            session.err().println("    " + session.texts().text("stops.more", all.size() - SHOWN));
        }
    }
}
