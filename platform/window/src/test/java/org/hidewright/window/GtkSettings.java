package org.hidewright.window;

import java.nio.charset.StandardCharsets;

/**
 * What a desktop tells programs of itself, changed while the tests run: how large letters are, and whether all is dark. The
 * names are those of GtkSettings in the reference of GTK 3.
 */
final class GtkSettings {
    private static final String GTK = "org.eclipse.swt.internal.gtk";
    /** The property gtk-xft-dpi counts in 1024ths of a dot to the inch; 96 is usual. */
    private static final int USUAL_DPI = 96 * 1024;

    private GtkSettings() {}

    /** Whether this toolkit is of GTK: the tests that need it run on Linux only. */
    static boolean are() {
        return "gtk".equals(org.eclipse.swt.SWT.getPlatform());
    }

    /** Letters of so many hundredths of the usual size. */
    static void letters(int percent) {
        RealWindow.screen();
        set("gtk-xft-dpi", int.class, USUAL_DPI * percent / 100);
        dispatch();
    }

    /** A dark or a light screen. */
    static void dark(boolean dark) {
        RealWindow.screen();
        set("gtk-application-prefer-dark-theme", boolean.class, dark);
        dispatch();
    }

    /** A caret that does not blink, and nothing else that moves: what makers can ask of their system. */
    static void still(boolean still) {
        RealWindow.screen();
        set("gtk-cursor-blink", boolean.class, !still);
        set("gtk-enable-animations", boolean.class, !still);
        dispatch();
    }

    private static void set(String name, Class<?> type, Object value) {
        try {
            Object settings = Class.forName(GTK + ".GTK")
                    .getMethod("gtk_settings_get_default")
                    .invoke(null);
            Class.forName(GTK + ".OS")
                    .getMethod("g_object_set", long.class, byte[].class, type, long.class)
                    .invoke(null, settings, (name + '\0').getBytes(StandardCharsets.US_ASCII), value, 0L);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("this toolkit is not of GTK", e);
        }
    }

    private static void dispatch() {
        while (RealWindow.screen().readAndDispatch()) {
            continue;
        }
    }
}
