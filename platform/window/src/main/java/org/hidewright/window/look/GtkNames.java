package org.hidewright.window.look;

import java.nio.charset.StandardCharsets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

/**
 * Names for things that GTK brings itself, such as fields and tables: the toolkit asks its listeners only for what it paints
 * itself. They are properties of the object that GTK keeps for screen readers, named as in the reference of ATK.
 */
final class GtkNames {
    static final String NAME = "accessible-name";
    static final String ABOUT = "accessible-description";
    private static final String PACKAGE = "org.eclipse.swt.internal.";

    private GtkNames() {}

    /** Nothing on other systems, where listeners are asked for everything. */
    static void set(Control control, String property, String text) {
        if (!"gtk".equals(SWT.getPlatform())) {
            return;
        }
        try {
            ClassLoader toolkit = Control.class.getClassLoader();
            Object thing = toolkit.loadClass(PACKAGE + "gtk3.GTK3")
                    .getMethod("gtk_widget_get_accessible", long.class)
                    .invoke(null, control.handle);
            toolkit.loadClass(PACKAGE + "gtk.OS")
                    .getMethod("g_object_set", long.class, byte[].class, byte[].class, long.class)
                    .invoke(null, thing, ended(property), ended(text), 0L);
        } catch (ReflectiveOperationException e) {
            control.setData("unnamed", e); // another version of the toolkit: the label beside it still names it
        }
    }

    private static byte[] ended(String text) {
        return (text + '\0').getBytes(StandardCharsets.UTF_8);
    }
}
