package org.hidewright.window.find;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.hidewright.core.find.Findable;
import org.hidewright.core.find.Finder;
import org.hidewright.core.find.Goal;
import org.hidewright.core.find.Group;
import org.hidewright.window.look.Hint;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.words.WindowTexts;

/** One field for everything: what is found stands below it in groups; Enter leads to it. */
public final class FindPage extends Composite {
    private final Inks inks;
    private final WindowTexts texts;
    private final Consumer<Goal> goes;
    private final Runnable leave;
    private final Text words;
    private final Label count;
    private final Tree found;
    private final Label about;
    private final Link go;
    private List<Findable> onBench = List.of();
    private List<Findable> installed = List.of();
    private Finder finder = new Finder(List.of());

    /**
     * A page with nothing found yet.
     *
     * @param goes leads to what was chosen
     * @param leave called when the maker has seen enough
     */
    public FindPage(Composite parent, Inks inks, WindowTexts texts, Consumer<Goal> goes, Runnable leave) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.texts = texts;
        this.goes = goes;
        this.leave = leave;
        dressed(this);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        setLayout(layout);
        inks.words(this, texts.text("page.back"), leave).setData("id", "find.back");
        count = line(new Label(this, SWT.RIGHT | SWT.WRAP), 1);
        count.setData("id", "find.count");
        words = line(new Text(this, SWT.SINGLE | SWT.BORDER), 2);
        words.setData("id", "find.words");
        Hint.on(words, inks);
        Hint.say(words, inks, texts.text("find.words.help"));
        Spoken.name(words, () -> texts.text("find.words.help"));
        Spoken.tell(words);
        words.addListener(SWT.Modify, event -> searchAnew());
        words.addListener(SWT.DefaultSelection, event -> first().ifPresent(this::chosen));
        words.addListener(SWT.KeyDown, this::key);
        found = dressed(new Tree(this, SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL));
        found.setData("id", "find.found");
        found.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        Spoken.name(found, () -> texts.text("find.found.help"));
        Spoken.tell(found);
        found.addListener(SWT.Selection, event -> tell());
        found.addListener(SWT.DefaultSelection, event -> selected().ifPresent(this::chosen));
        found.addListener(SWT.KeyDown, this::key);
        about = line(new Label(this, SWT.WRAP), 2);
        about.setData("id", "find.about");
        go = inks.words(this, "", () -> selected().ifPresent(thing -> goes.accept(thing.goal())));
        go.setData("id", "find.go");
        go.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        search();
    }

    private <C extends Control> C dressed(C control) {
        return inks.dress(control, inks.palette().ink(), inks.palette().paper());
    }

    private <C extends Control> C line(C control, int columns) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, columns, 1);
        data.widthHint = 1; // as wide as the page, and not as what stands in it
        dressed(control).setLayoutData(data);
        return control;
    }

    /** What is on the bench, as it is now. */
    public void onBench(List<Findable> things) {
        if (!things.equals(onBench)) {
            onBench = things;
            changed();
        }
    }

    /**
     * What is installed, which takes a while to look up the first time.
     *
     * @param lookUp looks it up
     * @param work the thread that does
     */
    public void installed(Supplier<List<Findable>> lookUp, Executor work) {
        work.execute(() -> {
            List<Findable> things = lookUp.get();
            if (!isDisposed()) {
                getDisplay().asyncExec(() -> {
                    if (!isDisposed()) {
                        installed = things;
                        changed();
                    }
                });
            }
        });
    }

    private void changed() {
        finder = new Finder(Stream.concat(onBench.stream(), installed.stream()).toList());
        search();
    }

    @Override
    public boolean setFocus() {
        return words.setFocus();
    }

    /** Other words have another first thing. */
    private void searchAnew() {
        found.deselectAll();
        search();
    }

    private void search() {
        Optional<Findable> before = selected();
        Map<Group, List<Findable>> groups = finder.find(words.getText());
        found.setRedraw(false);
        found.removeAll();
        groups.forEach(this::group);
        found.setRedraw(true);
        before.flatMap(this::item).or(this::firstItem).ifPresent(found::setSelection);
        count.setText(said(groups));
        tell();
    }

    private String said(Map<Group, List<Findable>> groups) {
        if (words.getText().isBlank()) {
            return "";
        }
        long all = groups.values().stream().mapToLong(List::size).sum();
        return all > 0
                ? texts.many("find.count", all)
                : finder.meant(words.getText())
                        .map(word -> texts.text("find.meant", word))
                        .orElseGet(() -> texts.text("find.count.none"));
    }

    private void group(Group group, List<Findable> things) {
        TreeItem head = new TreeItem(found, SWT.NONE);
        head.setText(
                texts.text("find.group." + group.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        head.setFont(inks.font(1, true));
        for (Findable thing : things) {
            TreeItem item = new TreeItem(head, SWT.NONE);
            item.setText(thing.where().isEmpty() ? thing.title() : thing.title() + " – " + thing.where());
            item.setData(thing);
        }
        head.setExpanded(true);
    }

    private Stream<TreeItem> items() {
        return Stream.of(found.getItems()).flatMap(head -> Stream.of(head.getItems()));
    }

    private Optional<TreeItem> item(Findable thing) {
        return items().filter(item -> thing.equals(item.getData())).findFirst();
    }

    private Optional<TreeItem> firstItem() {
        return items().findFirst();
    }

    private Optional<Findable> first() {
        return firstItem().map(item -> (Findable) item.getData());
    }

    private Optional<Findable> selected() {
        return Stream.of(found.getSelection())
                .map(TreeItem::getData)
                .filter(Findable.class::isInstance)
                .map(Findable.class::cast)
                .findFirst();
    }

    private void tell() {
        Optional<Findable> thing = selected();
        about.setText(
                thing.map(one -> (one.title() + "\n" + one.help()).strip()).orElse(""));
        Inks.say(
                go,
                thing.map(one -> texts.text(one.goal().slip().isEmpty() ? "find.add" : "find.go"))
                        .orElse(""));
        go.setVisible(thing.isPresent());
        layout();
    }

    /** What stands on the bench is gone to; what does not is first offered. */
    private void chosen(Findable thing) {
        item(thing).ifPresent(found::setSelection);
        tell();
        if (thing.goal().slip().isEmpty()) {
            go.setFocus();
        } else {
            goes.accept(thing.goal());
        }
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ESC) {
            leave.run();
        } else if (event.keyCode == SWT.ARROW_DOWN && event.widget == words) {
            found.setFocus();
            event.doit = false;
        }
    }
}
