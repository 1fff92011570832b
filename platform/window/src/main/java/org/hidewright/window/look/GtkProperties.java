package org.hidewright.window.look;

import java.nio.charset.StandardCharsets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

/** Properties of what GTK keeps for a control, for which the toolkit has no word. Nothing on other systems. */
final class GtkProperties {
    /** Gives the window that a control is in. */
    static final String OF_WINDOW = "gtk_widget_get_toplevel";

    private static final String PACKAGE = "org.eclipse.swt.internal.";

    private GtkProperties() {}

    static boolean are() {
        return "gtk".equals(SWT.getPlatform());
    }

    static void text(Control control, String thing, String property, String text) {
        set(control, thing, property, byte[].class, ended(text));
    }

    static void flag(Control control, String thing, String property, boolean on) {
        set(control, thing, property, boolean.class, on);
    }

    /** @param thing the function of GTK that gives what has the property */
    private static void set(Control control, String thing, String property, Class<?> type, Object value) {
        if (!are()) {
            return;
        }
        try {
            ClassLoader toolkit = Control.class.getClassLoader();
            Object of = toolkit.loadClass(PACKAGE + "gtk3.GTK3")
                    .getMethod(thing, long.class)
                    .invoke(null, control.handle);
            boolean fits = !OF_WINDOW.equals(thing)
                    || Boolean.TRUE.equals(toolkit.loadClass(PACKAGE + "gtk.GTK")
                            .getMethod("GTK_IS_WINDOW", long.class)
                            .invoke(null, of));
            if (!fits) {
                return; // it is about to go, and in no window any more
            }
            toolkit.loadClass(PACKAGE + "gtk.OS")
                    .getMethod("g_object_set", long.class, byte[].class, type, long.class)
                    .invoke(null, of, ended(property), value, 0L);
        } catch (ReflectiveOperationException e) {
            control.setData("unset", e); // another version of the toolkit: all works without
        }
    }

    private static byte[] ended(String text) {
        return (text + '\0').getBytes(StandardCharsets.UTF_8);
    }
}
