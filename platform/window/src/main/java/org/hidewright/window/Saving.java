package org.hidewright.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.wording.Remark;
import org.hidewright.window.model.OpenProject;

/** Puts the project that is open into a file, or into the pages of its packet. */
final class Saving {
    private final MainWindow window;
    private final Workroom room;
    private final Copies copies;

    /** @param copies of what is not saved; none is needed of what is */
    Saving(MainWindow window, Workroom room, Copies copies) {
        this.window = window;
        this.room = room;
        this.copies = copies;
    }

    private OpenProject project() {
        return window.view().project();
    }

    /** Saves the project, asking where to as long as it has no file; whether it is in its file now. */
    boolean save() {
        return project().isUntitled() ? saveAs() : saved(project().save());
    }

    /** Saves the project where the maker says; whether it is in its file now. */
    boolean saveAs() {
        Optional<Path> path = room.asks()
                .toSave(room.texts().text("deed.save-as"), project().path().toAbsolutePath());
        if (path.isEmpty() || !saved(project().saveAs(path.get()))) {
            return false;
        }
        copies.of(project());
        room.memory().opened(path.get());
        return true;
    }

    private boolean saved(List<Remark> remarks) {
        window.tell(remarks);
        boolean whole = !project().unsaved();
        if (whole) {
            copies.drop();
            project().face().ifPresent(window::show);
            window.tell(room.texts().text("told.saved.help", project().path()));
        }
        return whole;
    }

    /** Asks for a folder and writes the packet into it. */
    void export() {
        Path beside = project().path().toAbsolutePath().resolveSibling("out");
        room.asks()
                .folder(room.texts().text("deed.export"), beside)
                .ifPresent(folder -> project()
                        .worked()
                        .ifPresent(worked -> new PacketExport(room, project().wording())
                                .write(
                                        worked,
                                        project().path(),
                                        folder,
                                        said -> window.onWindow(() -> window.tell(said)))));
    }
}
