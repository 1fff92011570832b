package org.hidewright.window.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.store.StoreNotices;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.store.WriteFault;
import org.hidewright.core.wording.Remark;

/** The file of a project that is open, or that has none yet. */
public final class SavedProject {
    private Path path;
    /** Null as long as there is none. */
    private ProjectFile file;
    /** What could be had again as it is, and so need not be saved. */
    private final String known;

    private SavedProject(Path path, ProjectFile file, String known) {
        this.path = path;
        this.file = file;
        this.known = known;
    }

    static SavedProject in(Path path, ProjectFile file) {
        return new SavedProject(path, file, "");
    }

    /**
     * A project that nobody has saved yet.
     *
     * @param suggested where it could be saved
     * @param known the text of a sample that it is as long as nobody changes it; empty for one that is the maker’s own
     */
    public static SavedProject untitled(Path suggested, String known) {
        return new SavedProject(suggested, null, known);
    }

    boolean isUntitled() {
        return file == null;
    }

    Path path() {
        return path;
    }

    /** Whether a project is in it as it is, or need not be. */
    boolean holds(Project project) {
        return project.text().equals(file == null ? known : file.project().text());
    }

    /** Saves a project; what is to be told. */
    List<Remark> save(Project project) {
        if (file == null) {
            return saveAs(path, project);
        }
        try {
            file = file.save(project);
            return file.remarks();
        } catch (FileTrouble e) {
            return e.remarks();
        }
    }

    /** Saves a project as another file, and goes on with that one. */
    List<Remark> saveAs(Path other, Project project) {
        try {
            WholeFile.write(other, project.text().getBytes(StandardCharsets.UTF_8));
            file = ProjectFile.open(other);
            path = other;
            return file.remarks();
        } catch (FileTrouble e) {
            return e.remarks();
        } catch (IOException e) {
            return List.of(
                    Remark.of(StoreNotices.NOT_SAVED.with(other.toString(), WriteFault.reason(e)), CoreTexts.TEXTS));
        }
    }
}
