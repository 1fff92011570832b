package org.hidewright.window.look;

import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** What a screen reader is told of a control, where the control does not say it by itself. */
public final class Spoken {
    private static final String NAME = "spoken name";
    private static final String ABOUT = "spoken about";

    private Spoken() {}

    /** What it is called. */
    public static void name(Control control, Supplier<String> name) {
        control.setData(NAME, name);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
        control.addListener(SWT.FocusIn, event -> tell(control));
    }

    /** What else is to be known of it. */
    public static void about(Control control, Supplier<String> about) {
        control.setData(ABOUT, about);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = about.get();
            }
        });
        control.addListener(SWT.FocusIn, event -> tell(control));
    }

    /** Tells both anew, after something of it has changed. */
    public static void tell(Control control) {
        if (!(control instanceof Canvas) && !(control instanceof Link) && !(control instanceof Label)) {
            tell(control, NAME, GtkNames.NAME);
            tell(control, ABOUT, GtkNames.ABOUT);
        }
    }

    private static void tell(Control control, String which, String property) {
        if (control.getData(which) instanceof Supplier<?> text) {
            GtkNames.set(control, property, String.valueOf(text.get()));
        }
    }

    /** By which label it is called. */
    public static void labelled(Control control, Label label) {
        control.getAccessible().addRelation(ACC.RELATION_LABELLED_BY, label.getAccessible());
        label.getAccessible().addRelation(ACC.RELATION_LABEL_FOR, control.getAccessible());
        name(control, label::getText);
    }

    /** That what is painted by the toolkit is not there while it is hidden, which it does not say by itself. */
    static void hides(Control control) {
        control.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getState(AccessibleControlEvent event) {
                if (!control.isVisible()) {
                    event.detail |= ACC.STATE_INVISIBLE | ACC.STATE_OFFSCREEN;
                }
            }
        });
    }

    /** That words do something. */
    static void does(Link words) {
        words.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PUSHBUTTON;
            }
        });
    }
}
