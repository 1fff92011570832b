package org.hidewright.window.look;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;

/** Colours and fonts of one window, made once each and disposed with its display. For the thread of the window. */
public final class Inks {
    private static final String COLOUR = "colour";

    private final Display display;
    private final Palette palette;
    private int em;
    private final Map<String, Font> fonts = new HashMap<>();

    public Inks(Display display, Palette palette) {
        this.display = display;
        this.palette = palette;
        display.disposeExec(() -> fonts.values().forEach(Font::dispose));
    }

    /** How high a line of text is, in pixels: room is measured by it, so that larger letters get more. */
    public int em() {
        if (em == 0) {
            GC gc = new GC(display);
            gc.setFont(display.getSystemFont());
            em = gc.getFontMetrics().getHeight();
            gc.dispose();
        }
        return em;
    }

    public Palette palette() {
        return palette;
    }

    /** A colour by its number; colours hold nothing of the system’s. */
    public Color color(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** The system’s font, larger by a factor, perhaps bold. */
    public Font font(double larger, boolean bold) {
        return fonts.computeIfAbsent(larger + "/" + bold, key -> {
            FontData data = display.getSystemFont().getFontData()[0];
            return new Font(
                    display,
                    data.getName(),
                    Math.max(1, (int) Math.round(data.getHeight() * larger)),
                    bold ? SWT.BOLD : SWT.NORMAL);
        });
    }

    /** The system’s font, slanted. */
    public Font slanted() {
        return fonts.computeIfAbsent("slanted", key -> {
            FontData data = display.getSystemFont().getFontData()[0];
            return new Font(display, data.getName(), data.getHeight(), SWT.ITALIC);
        });
    }

    /** The system’s font in a height of its own, in points. */
    public Font fontOf(int points, boolean bold) {
        return fonts.computeIfAbsent(points + "pt/" + bold, key -> {
            FontData data = display.getSystemFont().getFontData()[0];
            return new Font(display, data.getName(), Math.max(1, points), bold ? SWT.BOLD : SWT.NORMAL);
        });
    }

    /** Words that do something when they are clicked, or entered from the keyboard. */
    public Link words(Composite parent, String text, Runnable does) {
        Link link = dress(new Link(parent, SWT.NONE), palette.ink(), palette.paper());
        colour(link, palette.accent());
        say(link, text);
        link.addListener(SWT.Selection, event -> does.run());
        link.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN) {
                event.doit = false; // Enter is for the words that have the focus, and not for the button of the page
            }
        });
        Spoken.does(link);
        Spoken.hides(link);
        link.addListener(SWT.FocusIn, event -> shade(link, true));
        link.addListener(SWT.FocusOut, event -> shade(link, false));
        return link;
    }

    /** Gives words that do something another colour. */
    public void colour(Link link, int rgb) {
        link.setData(COLOUR, rgb);
        shade(link, link.isFocusControl());
    }

    /** What the keyboard works on is light on dark where the others are dark on light. */
    private void shade(Link link, boolean focus) {
        int rgb = (Integer) link.getData(COLOUR);
        link.setLinkForeground(color(focus ? palette.paper() : rgb));
        link.setBackground(color(focus ? rgb : palette.paper()));
    }

    /** Gives such words another text. */
    public static void say(Link link, String text) {
        String words = "<a>" + text.replace("&", "&&").replace("<", "‹") + "</a>";
        if (!link.getText().equals(words)) {
            link.setText(words);
        }
    }

    /** Gives a control its letters and what is behind them. */
    public <C extends Control> C dress(C control, int letters, int behind) {
        control.setForeground(color(letters));
        control.setBackground(color(behind));
        return control;
    }
}
