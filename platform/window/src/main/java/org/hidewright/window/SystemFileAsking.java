package org.hidewright.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks with the dialogs of the system. */
final class SystemFileAsking implements FileAsking {
    private final Shell shell;

    SystemFileAsking(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Optional<Path> toOpen(String title, String... endings) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(title);
        dialog.setFilterExtensions(new String[] {
            String.join(";", Stream.of(endings).map(ending -> "*." + ending).toList())
        });
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    @Override
    public Optional<Path> toSave(String title, Path suggested) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(title);
        dialog.setFileName(String.valueOf(suggested.getFileName()));
        if (suggested.getParent() != null) {
            dialog.setFilterPath(suggested.getParent().toString());
        }
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    @Override
    public Optional<Path> folder(String title, Path suggested) {
        DirectoryDialog dialog = new DirectoryDialog(shell);
        dialog.setText(title);
        dialog.setMessage(title);
        Path there = Files.isDirectory(suggested)
                ? suggested
                : suggested.toAbsolutePath().getParent();
        dialog.setFilterPath(there.toString());
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }
}
