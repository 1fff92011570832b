package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.DeviceData;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Stock;
import org.hidewright.documents.svg.SvgReader;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.look.ClearLines;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.model.Memory;
import org.hidewright.window.papers.Writers;
import org.hidewright.window.words.WindowTexts;

/** A window on a screen, with a maker at it: what is there is found by its id, driven by events, and read back. */
final class RealWindow implements AutoCloseable {
    private static final int EVENTS_AT_ONCE = 100;
    private static final long PATIENCE_MS = 20_000;

    /** One display for all tests of a run: the toolkit allows no second on the same thread. */
    private static Display display;

    /** What the maker answers when asked for files, in order; nothing once they are used up. */
    final Deque<Path> files = new ArrayDeque<>();

    /** What presses and moves as a maker does, where events alone would not show what the screen makes of it. */
    final Hands hands = new Hands(this);

    final MainWindow window;
    final ExecutorService work = Executors.newSingleThreadExecutor();
    final Path settings;
    final Shell shell;
    final Workroom room;

    RealWindow(Path settings, Catalogue catalogue) {
        this(settings, catalogue, null, FakeWriters.all());
    }

    /** With a workshop to take from. */
    RealWindow(Path settings, Catalogue catalogue, Stock stock) {
        this(settings, catalogue, stock, null, FakeWriters.all(), Locale.ENGLISH, Palette.LIGHT);
    }

    /** What all windows of a run are on. */
    static Display screen() {
        if (display == null) {
            ClearLines.ask();
            DeviceData data = new DeviceData();
            data.tracking = true;
            display = new Display(data);
            for (int pointer = SWT.CURSOR_ARROW; pointer <= SWT.CURSOR_HAND; pointer++) {
                display.getSystemCursor(pointer); // the toolkit keeps it from when it is shown first
            }
        }
        return display;
    }

    /** @param addOns what can be turned on and off; null for nothing */
    RealWindow(Path settings, Catalogue catalogue, AddOns addOns, Writers writers) {
        this(settings, catalogue, Stock.of(catalogue::tables), addOns, writers, Locale.ENGLISH, Palette.LIGHT);
    }

    RealWindow(
            Path settings,
            Catalogue catalogue,
            Stock stock,
            AddOns addOns,
            Writers writers,
            Locale language,
            Palette palette) {
        this.settings = settings;
        shell = new Shell(screen());
        FileAsking asks = new FileAsking() {
            @Override
            public Optional<Path> toOpen(String title, String... endings) {
                return Optional.ofNullable(files.poll());
            }

            @Override
            public Optional<Path> toSave(String title, Path suggested) {
                return Optional.ofNullable(files.poll());
            }

            @Override
            public Optional<Path> folder(String title, Path suggested) {
                return Optional.ofNullable(files.poll());
            }
        };
        Memory memory = Memory.in(settings);
        room = new Workroom(
                catalogue,
                stock,
                settings,
                memory,
                new UnitsSeen(memory, Optional.empty()),
                new WindowTexts(language),
                asks,
                writers,
                List.of(new SvgReader()),
                Optional.ofNullable(addOns),
                settings.resolveSibling("samples"),
                work);
        window = new MainWindow(display, new Inks(display, palette), room, shell);
        window.open();
        settle();
    }

    /** With a project that is opened and worked out. */
    static RealWindow at(Path settings, Catalogue catalogue, Path project) {
        RealWindow real = new RealWindow(settings, catalogue);
        real.window.open(project);
        real.settle();
        return real;
    }

    /** Waits until all is worked out and shown. */
    void settle() {
        for (int i = 0; i < 2; i++) {
            try {
                work.submit(() -> {}).get(PATIENCE_MS, TimeUnit.MILLISECONDS);
            } catch (Exception e) {
                throw new IllegalStateException("the working thread did not come back", e);
            }
            while (!display.isDisposed() && display.readAndDispatch()) {
                continue;
            }
        }
    }

    /** Lets the window live until something is so. */
    void until(BooleanSupplier so) {
        long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (!so.getAsBoolean()) {
            if (System.nanoTime() > end) {
                fail("it did not come to be");
            }
            boolean any = false;
            for (int i = 0; i < EVENTS_AT_ONCE && display.readAndDispatch(); i++) { // a look takes longer than an event
                any = true;
            }
            if (!any) {
                display.timerExec(20, () -> {});
                display.sleep();
            }
        }
    }

    /** Works off what the screen and the working thread have sent. */
    void dispatch() {
        while (display.readAndDispatch()) {
            continue;
        }
    }

    /**
     * How many fonts, pictures and the like the program holds of the system. Of equal fonts one is not counted: it is kept for good
     * once a drawing needs it, which can be at any time.
     */
    int resources() {
        Set<FontData> kept = new HashSet<>();
        int count = 0;
        for (Object held : display.getDeviceData().objects) {
            count += held instanceof Font font && kept.add(font.getFontData()[0]) ? 0 : 1;
        }
        return count;
    }

    /** Everything that is there, menus as they were opened last. */
    List<Widget> everything() {
        List<Widget> found = new ArrayList<>();
        for (Shell each : display.getShells()) {
            collect(each, found, false);
        }
        return found;
    }

    Display display() {
        return display;
    }

    /** What has an id; menus are filled as if they were opened. */
    <W extends Widget> W find(Class<W> type, String id) {
        return all(type, id).stream().findFirst().orElseGet(() -> fail("no " + type.getSimpleName() + " " + id));
    }

    <W extends Widget> boolean has(Class<W> type, String id) {
        return !all(type, id).isEmpty();
    }

    <W extends Widget> List<W> all(Class<W> type, String id) {
        List<Widget> found = new ArrayList<>();
        for (Shell each : display.getShells()) {
            collect(each, found, true);
        }
        return found.stream()
                .filter(type::isInstance)
                .map(type::cast)
                .filter(widget -> id.equals(widget.getData("id")))
                .toList();
    }

    private static void collect(Widget widget, List<Widget> found, boolean opened) {
        found.add(widget);
        if (widget instanceof Menu menu) {
            if (opened) {
                menu.notifyListeners(SWT.Show, new Event());
            }
            for (MenuItem item : menu.getItems()) {
                collect(item, found, opened);
            }
        } else if (widget instanceof MenuItem item && item.getMenu() != null) {
            collect(item.getMenu(), found, opened);
        } else if (widget instanceof Control control) {
            if (control.getMenu() != null) {
                collect(control.getMenu(), found, opened);
            }
            if (control instanceof Shell shell && shell.getMenuBar() != null) {
                collect(shell.getMenuBar(), found, opened);
            }
            if (control instanceof Composite composite) {
                for (Control child : composite.getChildren()) {
                    collect(child, found, opened);
                }
            }
        }
    }

    /** Follows words, or a line of a menu. */
    void press(String id) {
        if (has(MenuItem.class, id)) {
            find(MenuItem.class, id).notifyListeners(SWT.Selection, new Event());
        } else {
            find(Link.class, id).notifyListeners(SWT.Selection, new Event());
        }
        settle();
    }

    /** Types into a field, letter by letter, as if it had been entered. */
    void type(String id, String text) {
        Text field = find(Text.class, id);
        field.setFocus();
        field.setText("");
        for (int i = 1; i <= text.length(); i++) {
            field.setText(text.substring(0, i));
        }
        settle();
    }

    void choose(String id, String choice) {
        Combo combo = find(Combo.class, id);
        combo.select(List.of(combo.getItems()).indexOf(choice));
        combo.notifyListeners(SWT.Selection, new Event());
        settle();
    }

    /** Presses a button with the pointer. */
    void push(String id) {
        find(Button.class, id).notifyListeners(SWT.Selection, new Event());
        settle();
    }

    String text(String id) {
        if (has(Text.class, id)) {
            return find(Text.class, id).getText();
        } else if (has(Combo.class, id)) {
            return find(Combo.class, id).getText();
        } else if (has(Link.class, id)) {
            return find(Link.class, id).getText().replaceAll("</?a>", "");
        }
        return find(Label.class, id).getText();
    }

    /** What a screen reader is told of a slip’s answers, which are what is drawn. */
    String answers(String slip) {
        return window.view().answers(slip);
    }

    @Override
    public void close() {
        for (Shell each : display.getShells()) {
            each.dispose();
        }
        settle();
        work.shutdownNow();
    }
}
