package org.hidewright.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.kit.NetsBundles;
import org.hidewright.window.look.Palette;

/** The window in every state of {@link States}, as it is with a language, a theme and letters of a size, on a small screen. */
final class EveryState {
    static final Locale PSEUDO = Locale.forLanguageTag("en-XA");
    static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN, PSEUDO);
    /** All of a screen as many small portable computers have it. */
    private static final Point SCREEN = new Point(1366, 768);

    /**
     * How a desktop is set up.
     *
     * @param letters in hundredths of the usual size
     */
    record Setting(Locale language, boolean dark, int letters) {
        static final Setting USUAL = new Setting(Locale.ENGLISH, false, 100);

        @Override
        public String toString() {
            return language.toLanguageTag() + (dark ? " dark " : " light ") + letters + " %";
        }
    }

    /** What is looked for in a state. */
    interface Look {
        void at(RealWindow real, String state) throws Exception;
    }

    private EveryState() {}

    /** Walks through all states; says how many there were. */
    static int walk(Path folder, Setting setting, Look look) throws Exception {
        GtkSettings.letters(setting.letters());
        GtkSettings.dark(setting.dark());
        int[] states = {0};
        NetsBundles bundles = new NetsBundles();
        try (RealWindow real = new RealWindow(
                folder.resolve("settings"),
                new CatalogueWithAddOns(bundles, () -> bundles),
                Stock.of(bundles::tables),
                bundles,
                FakeWriters.all(),
                setting.language(),
                setting.dark() ? Palette.DARK : Palette.LIGHT)) {
            real.shell.setBounds(new Rectangle(0, 0, SCREEN.x, SCREEN.y));
            real.window.open(Nets.everything(folder));
            new States(real.window, real.room, 0, state -> {
                        states[0]++;
                        try {
                            look.at(real, state);
                            if (state.equals("bundles")) {
                                real.files.add(folder.resolve("index.xml"));
                                real.press("bundles.index");
                                states[0]++;
                                look.at(real, "offers");
                                real.press("offers.back");
                            }
                        } catch (RuntimeException e) {
                            throw e;
                        } catch (Exception e) {
                            throw new IllegalStateException(setting + ", " + state, e);
                        }
                    })
                    .walk();
        } finally {
            GtkSettings.letters(100);
            GtkSettings.dark(false);
        }
        return states[0];
    }

    /** All that can be seen on something, and on what lies on it. */
    static List<Control> controls(Composite in) {
        List<Control> all = new ArrayList<>();
        for (Control control : in.getChildren()) {
            if (control.isVisible() && !(control instanceof Shell)) {
                all.add(control);
                if (control instanceof Composite more && !(control instanceof Combo)) {
                    all.addAll(controls(more));
                }
            }
        }
        return all;
    }
}
