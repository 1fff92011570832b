package org.hidewright.window;

import java.util.List;
import org.eclipse.swt.widgets.Event;
import org.hidewright.window.begin.BeginPage;

/** Leaves what is open behind, and asks first where something of it would be lost. */
final class Leaving {
    private final MainWindow window;
    private final Workroom room;
    private final Copies copies;

    /** @param copies of what is not saved; none is needed of what is given up */
    Leaving(MainWindow window, Workroom room, Copies copies) {
        this.window = window;
        this.room = room;
        this.copies = copies;
    }

    /** Does something that leaves the project behind; asks first where it is not saved. */
    void before(Runnable does) {
        keepBegun();
        if (!unsaved()) {
            does.run();
            return;
        }
        window.ask(
                room.texts().text("told.leaving.help"),
                List.of(
                        new TellBar.Choice("save", room.texts().text("told.save-first"), () -> {
                            if (window.saving().save()) {
                                does.run();
                            }
                        }),
                        new TellBar.Choice("lose", room.texts().text("told.lose"), () -> {
                            copies.drop();
                            does.run();
                        }),
                        new TellBar.Choice("stay", room.texts().text("told.stay"), () -> {})));
    }

    private boolean unsaved() {
        return window.view() != null
                && !window.view().isDisposed()
                && window.view().project().unsaved();
    }

    /** What is begun in steps and not at its end is a project all the same, and is not lost. */
    private void keepBegun() {
        window.steps().filter(BeginPage::isAnswered).ifPresent(page -> window.begun(page.begun()));
    }

    /** The window is about to close. */
    void closing(Event event) {
        event.doit = window.workshop().mayLeave(window.shell()::close);
        if (!event.doit) {
            return;
        }
        keepBegun();
        if (unsaved()) {
            event.doit = false;
            before(window.shell()::dispose);
        } else {
            copies.drop();
        }
    }
}
