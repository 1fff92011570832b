package org.hidewright.core.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;

/**
 * A project and the file it was opened from, saved whole or not at all as {@link KeptFile} tells. Immutable; a save gives
 * another one, from which the next save goes on.
 */
public final class ProjectFile {
    private final KeptFile file;
    private final Project project;
    private final List<Remark> remarks;

    private ProjectFile(KeptFile file, Project project, List<Remark> remarks) {
        this.file = file;
        this.project = project;
        this.remarks = List.copyOf(remarks);
    }

    /**
     * Opens a project file, after putting right what a save that was cut short has left.
     *
     * @throws FileTrouble if there is none, it cannot be read, or it holds no project; the remarks say which, and name the
     *     version before the last save where there is one
     */
    public static ProjectFile open(Path file) throws FileTrouble {
        KeptFile.Opened opened = KeptFile.open(file, ProjectFile::isWhole);
        ProjectReader.Result result = ProjectReader.read(opened.text());
        if (result.project().isEmpty()) {
            throw opened.refused(result.remarks());
        }
        return new ProjectFile(opened.file(), result.project().get(), opened.remarks());
    }

    /** A project that was cut anywhere is none: the brace that closes it is missing. */
    private static boolean isWhole(String text) {
        return ProjectReader.read(text).project().isPresent();
    }

    public Project project() {
        return project;
    }

    /** What was noticed about the file when it was opened or saved; what is said of the project the project has. */
    public List<Remark> remarks() {
        return remarks;
    }

    /** Of what lay in the file's place when it was opened or saved; empty if nothing did. */
    public Optional<Fingerprint> fingerprint() {
        return file.fingerprint();
    }

    /**
     * Saves the project as it is now; a text that is the same as what was opened writes nothing.
     *
     * @return the file as saved, when the disk has it
     * @throws FileTrouble if it was not saved; the remarks say why, and where the text is put when another program has
     *     changed the file or taken it away
     */
    public ProjectFile save(Project changed) throws FileTrouble {
        return save(changed, Disk.REAL);
    }

    ProjectFile save(Project changed, Disk disk) throws FileTrouble {
        KeptFile.Saved saved = file.save(changed.text(), disk);
        return new ProjectFile(saved.file(), changed, saved.remarks());
    }
}
