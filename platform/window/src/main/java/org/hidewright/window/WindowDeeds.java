package org.hidewright.window;

import java.nio.file.Files;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Submenus;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.workshop.OpenWorkshop;

/** The menus of the window: which deeds there are, and what each does. */
final class WindowDeeds {
    private final MainWindow window;
    private final Workroom room;
    private final Deeds deeds;

    WindowDeeds(MainWindow window, Workroom room, Shell shell) {
        this.window = window;
        this.room = room;
        this.deeds = new Deeds(shell, room.texts());
    }

    void build() {
        BooleanSupplier always = () -> true;
        BooleanSupplier open = () -> window.project().isPresent();
        Menu project = deeds.menu("project");
        deeds.deed(project, "begin", SWT.MOD1 | SWT.MOD2 | 'N', always, window::askToBegin);
        deeds.deed(project, "new", SWT.MOD1 | 'N', always, window::askForNew);
        deeds.deed(project, "open", SWT.MOD1 | 'O', always, window::askToOpen);
        deeds.list(project, "recent", this::recent);
        deeds.line(project);
        deeds.deed(project, "save", SWT.MOD1 | 'S', () -> open.getAsBoolean() || shown().isPresent(), this::save);
        deeds.deed(project, "save-as", SWT.MOD1 | SWT.MOD2 | 'S', open, window.saving()::saveAs);
        deeds.line(project);
        deeds.deed(project, "papers", 0, open, window::showPapers);
        deeds.deed(project, "print", SWT.MOD1 | 'P', open, window::print);
        deeds.deed(project, "export", SWT.MOD1 | 'E', open, window.saving()::export);
        deeds.line(project);
        deeds.deed(project, "close", SWT.MOD1 | 'W', open, window::close);
        deeds.line(project);
        deeds.deed(project, "quit", SWT.MOD1 | 'Q', always, () -> window.shell().close());

        Menu change = deeds.menu("change");
        deeds.deed(change, "undo", SWT.MOD1 | 'Z', this::canUndo, this::undo);
        deeds.deed(change, "redo", SWT.MOD1 | 'Y', this::canRedo, this::redo);
        deeds.line(change);
        deeds.deed(change, "units", SWT.MOD1 | 'U', window::hasUnits, window::switchUnits);

        Menu slips = deeds.menu("slips");
        deeds.list(slips, "add", this::calculators);
        deeds.deed(slips, "find", SWT.MOD1 | 'F', open, () -> window.view().find());
        deeds.deed(slips, "fold-all", 0, open, () -> window.view().foldAll(true));
        deeds.deed(slips, "unfold-all", 0, open, () -> window.view().foldAll(false));
        deeds.deed(
                slips, "next-urgent", SWT.MOD1 | 'J', open, () -> window.view().revealUrgent());

        Menu drawing = deeds.menu("drawing");
        deeds.deed(drawing, "fit", SWT.MOD1 | '0', open, () -> window.view().fit());
        deeds.deed(
                drawing,
                "true-size",
                SWT.MOD1 | '1',
                open,
                () -> window.view().piece().trueSize());
        deeds.deed(drawing, "larger", SWT.MOD1 | '+', open, () -> window.view().larger());
        deeds.deed(drawing, "smaller", SWT.MOD1 | '-', open, () -> window.view().smaller());
        deeds.deed(
                drawing,
                "likeness",
                SWT.MOD1 | 'K',
                open,
                () -> window.view().piece().likeness());
        deeds.deed(drawing, "wider", 0, open, () -> window.view().widen(1));
        deeds.deed(drawing, "narrower", 0, open, () -> window.view().widen(-1));
        deeds.deed(drawing, "measure-screen", 0, open, () -> window.view().measureScreen());

        Menu workshop = deeds.menu("workshop");
        deeds.deed(workshop, "workshop", SWT.MOD1 | 'T', always, window.workshop()::show);
        deeds.deed(
                workshop,
                "record",
                SWT.MOD1 | 'R',
                always,
                () -> window.workshop().record(Map.of()));
        PuttingAway puttingAway = new PuttingAway(window, room.texts());
        deeds.deed(workshop, "put-away", 0, puttingAway::can, puttingAway::run);
        DrawnHide drawnHide = window.workshop().drawnHide();
        deeds.deed(workshop, "hide-drawn", 0, drawnHide::can, drawnHide::ask);
        deeds.line(workshop);
        deeds.deed(workshop, "workshop-open", 0, always, window.workshop()::askToOpen);
        deeds.deed(workshop, "workshop-new", 0, always, window.workshop()::askForNew);

        Menu bundles = deeds.menu("bundles");
        deeds.deed(
                bundles,
                "bundles",
                SWT.MOD1 | 'B',
                () -> open.getAsBoolean() && room.addOns().isPresent(),
                () -> window.view().installed(""));
    }

    /** The workshop while it is what is seen. */
    private Optional<OpenWorkshop> shown() {
        return window.workshop().shown();
    }

    private void save() {
        if (shown().isPresent()) {
            window.workshop().save();
        } else {
            window.saving().save();
        }
    }

    private boolean canUndo() {
        return shown().map(OpenWorkshop::canUndo).orElseGet(() -> is(OpenProject::canUndo));
    }

    private boolean canRedo() {
        return shown().map(OpenWorkshop::canRedo).orElseGet(() -> is(OpenProject::canRedo));
    }

    private void undo() {
        shown().ifPresentOrElse(OpenWorkshop::undo, () -> opened().undo());
    }

    private void redo() {
        shown().ifPresentOrElse(OpenWorkshop::redo, () -> opened().redo());
    }

    private interface Asked {
        boolean of(OpenProject project);
    }

    private boolean is(Asked asked) {
        return window.project().filter(asked::of).isPresent();
    }

    private OpenProject opened() {
        return window.project().orElseThrow();
    }

    private void recent(Menu menu) {
        room.memory().recent().stream().filter(Files::isRegularFile).forEach(path -> {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(path.toString().replace("&", "&&"));
            item.setData("id", "recent");
            item.addListener(SWT.Selection, event -> window.open(path));
        });
    }

    /** Templates by themselves, since a project begins with one; calculators by the bundle they come with. */
    private void calculators(Menu menu) {
        Wording wording = new Wording(room.texts().language(), UnitSystem.METRIC);
        Map<String, String> bundles = new HashMap<>();
        room.addOns()
                .ifPresent(addOns -> addOns.all()
                        .forEach(addOn ->
                                bundles.put(addOn.id(), addOn.name(room.texts().language()))));
        Map<String, List<Installed>> groups =
                new TreeMap<>(Collator.getInstance(room.texts().language()));
        List<Installed> templates = new ArrayList<>();
        room.catalogue().ids().stream()
                .flatMap(id -> room.catalogue().find(id).stream())
                .sorted(Comparator.comparing(
                        installed -> title(installed, wording),
                        Collator.getInstance(room.texts().language())))
                .forEach(installed -> (makes(installed)
                                ? templates
                                : groups.computeIfAbsent(
                                        bundles.getOrDefault(installed.bundle(), installed.bundle()),
                                        name -> new ArrayList<>()))
                        .add(installed));
        templates.forEach(installed -> add(menu, installed, wording));
        if (!templates.isEmpty() && !groups.isEmpty()) {
            new MenuItem(menu, SWT.SEPARATOR);
        }
        groups.forEach((name, group) -> {
            MenuItem item = new MenuItem(menu, SWT.CASCADE);
            item.setText(name.replace("&", "&&"));
            Menu inside = Submenus.of(window.shell()).under(item);
            group.forEach(installed -> add(inside, installed, wording));
            Mnemonics.give(inside);
        });
    }

    private static boolean makes(Installed installed) {
        return installed.calculator().declaration().answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM);
    }

    private void add(Menu menu, Installed installed, Wording wording) {
        String id = installed.id();
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(title(installed, wording).replace("&", "&&"));
        item.setData("id", "add." + id);
        item.setToolTipText(wording.text(
                installed.calculator().texts(),
                installed.calculator().declaration().purposeKey()));
        item.setEnabled(window.project().isPresent());
        item.addListener(
                SWT.Selection, event -> window.view().revealOnceShown(opened().addSlip(id, installed.bundle())));
    }

    private static String title(Installed installed, Wording wording) {
        return wording.text(
                installed.calculator().texts(),
                installed.calculator().declaration().titleKey());
    }
}
