package org.hidewright.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.store.FileTrouble;

/** Makes a picture of the window in each of its main states. */
final class StatePictures {
    private static final long SETTLE_MS = 350;
    private static final int FAILED = 1;

    private final MainWindow window;
    private final Workroom room;
    private final Path folder;
    private int number;

    StatePictures(MainWindow window, Workroom room, Path folder) {
        this.window = window;
        this.room = room;
        this.folder = folder;
    }

    /** Makes them all; the exit code of the program. */
    int make() {
        try {
            Files.createDirectories(folder);
            new States(window, room, SETTLE_MS, this::picture).walk();
            return 0;
        } catch (IOException | FileTrouble e) {
            window.tell(String.valueOf(e.getMessage()));
            return FAILED;
        } finally {
            window.shell().dispose();
        }
    }

    private void picture(String state) throws IOException {
        Shell shell = window.shell();
        Display display = shell.getDisplay();
        Rectangle inside = display.map(shell, null, shell.getClientArea());
        Rectangle all =
                inside.union(new Rectangle(shell.getLocation().x, shell.getLocation().y, 1, 1)); // with the menus
        Image image = new Image(display, all.width, all.height);
        GC gc = new GC(display);
        gc.copyArea(image, all.x, all.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData(shell.getMonitor().getZoom())};
        image.dispose();
        number++;
        loader.save(folder.resolve(String.format("%02d-%s.png", number, state)).toString(), SWT.IMAGE_PNG);
    }
}
