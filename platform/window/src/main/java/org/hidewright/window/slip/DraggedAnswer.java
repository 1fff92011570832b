package org.hidewright.window.slip;

import java.util.Optional;
import org.eclipse.swt.widgets.Display;
import org.hidewright.core.project.Link;

/** The answer that is being dragged, if one is. Other programs get its text; ours gets to know which answer it is. */
final class DraggedAnswer {
    private static final String KEY = "org.hidewright.window.dragged-answer";

    private DraggedAnswer() {}

    static void set(Display display, Link answer) {
        display.setData(KEY, answer);
    }

    static Optional<Link> on(Display display) {
        return Optional.ofNullable((Link) display.getData(KEY));
    }
}
