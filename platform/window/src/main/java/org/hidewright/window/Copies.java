package org.hidewright.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Predicate;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.store.WriteFault;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.UnsavedCopy;

/** Keeps a copy of what is not saved, and offers what the last time has left. For the thread of the window. */
final class Copies {
    private final Workroom room;
    private final TellBar told;
    private final ProjectLine line;
    private final Executor onWindow;
    private final String said;
    private UnsavedCopy unsaved;
    /** The file that copies are of; empty where there is none. */
    private String file = "";

    /** @param said key of what is said when something of a name is offered */
    Copies(Workroom room, TellBar told, ProjectLine line, Executor onWindow, String said) {
        this.room = room;
        this.told = told;
        this.line = line;
        this.onWindow = onWindow;
        this.said = said;
    }

    /** From now on copies are of this project. */
    void of(OpenProject project) {
        if (project.isUntitled()) {
            unsaved = untitled();
            file = "";
        } else {
            of(project.path());
        }
    }

    /** From now on copies are of what is in this file. */
    void of(Path path) {
        unsaved = new UnsavedCopy(room.settings(), path);
        file = String.valueOf(path.getFileName());
    }

    /** Copies of what has no file yet lie in a place of their own. */
    private UnsavedCopy untitled() {
        return new UnsavedCopy(room.settings(), room.settings().resolve("untitled.json"));
    }

    /** Offers what was not saved the last time; it is taken over only if the maker says so. */
    void offerLeft(OpenProject project) {
        if (!project.isUntitled()) {
            offerLeft(project.project().text(), project::takeOver);
        }
    }

    /** Offers what was not saved the last time, where it is another text than is saved. */
    void offerLeft(String saved, Predicate<String> takes) {
        offer(unsaved, file, saved, takes);
    }

    /** Offers what was left of a project that had no file. */
    void offerUntitled(Predicate<String> opens) {
        offer(untitled(), "", "", opens);
    }

    private void offer(UnsavedCopy copy, String of, String saved, Predicate<String> takes) {
        with(() ->
                copy.left(saved).ifPresent(text -> offerText(copy, named(text).orElse(of), text, takes)));
    }

    /** What a project or a workshop is called by its maker; empty where it has no name. */
    private static Optional<String> named(String text) {
        try {
            return JsonText.read(text).root() instanceof JsonObject whole
                    ? whole.text("name").filter(name -> !name.isBlank())
                    : Optional.empty();
        } catch (JsonTrouble e) {
            return Optional.empty(); // whether it can be taken over is seen when it is
        }
    }

    private void offerText(UnsavedCopy copy, String name, String text, Predicate<String> takes) {
        told.tell(
                name.isEmpty()
                        ? room.texts().text("told.unsaved-unnamed.help")
                        : room.texts().text(said, name),
                List.of(
                        new TellBar.Choice("take", room.texts().text("told.take"), () -> {
                            if (takes.test(text)) {
                                with(() -> {
                                    copy.want(text);
                                    copy.write();
                                    copy.dropLeft();
                                });
                            } else {
                                line.tell(room.texts().text("told.no-project.help"));
                            }
                        }),
                        new TellBar.Choice("leave", room.texts().text("told.leave"), () -> with(copy::dropLeft))));
    }

    /** Keeps a copy of a project as it is now, or drops it where what was changed has been taken back. */
    void keep(OpenProject project) {
        keep(project.unsaved(), project.project().text());
    }

    /** Keeps a copy of a text, or drops it where it is saved. */
    void keep(boolean notSaved, String text) {
        if (!notSaved) {
            drop();
            return;
        }
        UnsavedCopy to = unsaved;
        to.want(text);
        room.work().execute(() -> {
            try {
                to.write();
            } catch (IOException e) {
                onWindow.execute(() -> line.tell(room.texts().text("told.no-copy.help", WriteFault.reason(e))));
            }
        });
    }

    /** Nothing is to be kept. */
    void drop() {
        Optional.ofNullable(unsaved).ifPresent(copy -> with(copy::drop));
    }

    /** Something done to a copy. */
    private interface CopyDeed {
        void run() throws IOException;
    }

    private void with(CopyDeed deed) {
        try {
            deed.run();
        } catch (IOException e) {
            line.tell(room.texts().text("told.no-copy.help", WriteFault.reason(e)));
        }
    }
}
