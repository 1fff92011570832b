package org.hidewright.window.look;

import org.eclipse.swt.widgets.Control;

/**
 * Names for things that GTK brings itself, such as fields and tables: the toolkit asks its listeners only for what it paints
 * itself. They are properties of the object that GTK keeps for screen readers, named as in the reference of ATK. Other systems
 * ask listeners for everything.
 */
final class GtkNames {
    static final String NAME = "accessible-name";
    static final String ABOUT = "accessible-description";

    private GtkNames() {}

    static void set(Control control, String property, String text) {
        GtkProperties.text(control, "gtk_widget_get_accessible", property, text);
    }
}
