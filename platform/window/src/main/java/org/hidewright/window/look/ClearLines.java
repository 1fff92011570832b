package org.hidewright.window.look;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Has GTK paint edges, chosen lines and focus clearly: its usual theme paints them too faint for many eyes. Other systems have
 * a setting for that of their own.
 */
public final class ClearLines {
    /** Where the toolkit looks for more rules of GTK’s style sheets. */
    private static final String FILE = "org.eclipse.swt.internal.gtk.cssFile";

    private ClearLines() {}

    /** To be called before there is a display; what a maker has named there stays. */
    public static void ask() {
        if (System.getProperty(FILE) != null) {
            return;
        }
        try (InputStream rules = ClearLines.class.getResourceAsStream("clear.css")) {
            Path file = Files.createTempFile("hidewright", ".css");
            file.toFile().deleteOnExit();
            Files.copy(rules, file, StandardCopyOption.REPLACE_EXISTING);
            System.setProperty(FILE, file.toString());
        } catch (IOException e) {
            System.clearProperty(FILE); // it is painted as the system does it
        }
    }
}
