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

/** The file of a project that is open. */
final class SavedProject {
    private Path path;
    private ProjectFile file;

    SavedProject(Path path, ProjectFile file) {
        this.path = path;
        this.file = file;
    }

    Path path() {
        return path;
    }

    /** Whether a project is in it as it is. */
    boolean holds(Project project) {
        return project.text().equals(file.project().text());
    }

    /** Saves a project; what is to be told. */
    List<Remark> save(Project project) {
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
