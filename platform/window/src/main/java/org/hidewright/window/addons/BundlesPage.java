package org.hidewright.window.addons;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.TakenId;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Tools;
import org.hidewright.window.words.WindowTexts;

/** What is installed, each bundle with its maker, what it brings and how it stands; added, taken away, turned on and off. */
public final class BundlesPage extends Composite {
    private final WindowTexts texts;
    private final AddOns addOns;
    private final Titles titles;
    private final Executor work;
    private final Runnable changed;
    private final BundleTable table;
    private final Link turn;
    private List<BundleLine> lines = List.of();

    /** Something that changes what is installed. */
    private interface Change {
        /** @return what is to be told of it beside what comes of it */
        Told make() throws FileTrouble;
    }

    /**
     * What is told of a change.
     *
     * @param done what was done, where that cannot be seen in the lines
     * @param remarks what is to be thought of
     */
    private record Told(List<String> done, List<Remark> remarks) {}

    /**
     * A page of bundles.
     *
     * @param titles of what they bring
     * @param work where bundles are started
     * @param jar asks the maker for a jar
     * @param index shows what an index offers, once the maker has said which
     * @param leave called when the maker has seen enough
     * @param changed called when bundles have come or gone
     */
    public BundlesPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            AddOns addOns,
            Titles titles,
            Executor work,
            Supplier<Optional<Path>> jar,
            Runnable index,
            Runnable leave,
            Runnable changed) {
        super(parent, SWT.NONE);
        this.texts = texts;
        this.addOns = addOns;
        this.titles = titles;
        this.work = work;
        this.changed = changed;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        setLayout(layout);
        Tools tools = new Tools(this, inks);
        tools.words(texts.text("page.back"), "bundles.back", leave);
        turn = tools.words(texts.text("bundles.turn-off"), "bundles.turn", this::turn);
        tools.words(texts.text("bundles.add"), "bundles.add", () -> jar.get().ifPresent(this::add));
        tools.words(texts.text("bundles.index"), "bundles.index", index);
        tools.words(texts.text("bundles.remove"), "bundles.remove", this::remove);
        tools.words(texts.text("bundles.undo"), "bundles.undo", () -> change(this::takeBack));
        table = new BundleTable(this, "bundles", inks, texts, this::chosen);
        show();
    }

    /** Chooses the bundle that brings a calculator, where it is there. */
    public void choose(String calculator) {
        lines.stream()
                .filter(line -> line.calculators().contains(calculator))
                .findFirst()
                .ifPresent(line -> {
                    table.choose(lines.indexOf(line));
                    chosen();
                });
    }

    /** Shows what is installed now. */
    public void show() {
        List<AddOn> all = addOns.all();
        List<TakenId> taken = TakenId.in(all);
        lines = all.stream()
                .map(addOn -> BundleLine.of(addOn, all, titles, taken, texts))
                .toList();
        table.show(lines.stream().map(BundleLine::line).toList());
        chosen();
    }

    private Optional<BundleLine> line() {
        int index = table.index();
        return index < 0 || index >= lines.size() ? Optional.empty() : Optional.of(lines.get(index));
    }

    private void chosen() {
        boolean off = line().filter(BundleLine::off).isPresent();
        Inks.say(turn, texts.text(off ? "bundles.turn-on" : "bundles.turn-off"));
        turn.getParent().layout();
    }

    private void turn() {
        line().ifPresent(line -> change(() -> {
            List<Remark> needed = line.off() ? List.of() : addOns.dependents(line.id());
            addOns.turn(line.id(), line.off());
            return new Told(List.of(), needed);
        }));
    }

    private void add(Path jar) {
        change(() -> {
            addOns.install(List.of(jar), false, false);
            return new Told(List.of(), List.of());
        });
    }

    private void remove() {
        line().ifPresent(line -> change(() -> {
            List<Remark> needed = addOns.dependents(line.id());
            addOns.remove(line.id());
            return new Told(List.of(), needed);
        }));
    }

    /** Turning on and off is a choice of its own, and stays: who takes it for the last change would wait for it to come back. */
    private Told takeBack() throws FileTrouble {
        List<AddOn> before = addOns.all();
        AddOnChange change = addOns.indexes().back();
        List<String> done = new ArrayList<>();
        done.add(texts.text(
                "bundles.taken-back.help",
                change.words().stream().map(texts::phrase).collect(Collectors.joining(", "))));
        List<String> off = change.staysOff(before);
        if (!off.isEmpty()) {
            done.add(texts.text("bundles.off-kept.help", String.join(", ", off), texts.text("bundles.turn-on")));
        }
        return new Told(done, List.of());
    }

    /** Makes a change and lets it take effect, away from the thread of the window: a bundle may take its time. */
    private void change(Change change) {
        table.tell("");
        work.execute(() -> {
            Told came;
            try {
                Told made = change.make();
                List<Remark> remarks = new ArrayList<>(made.remarks());
                remarks.addAll(addOns.takeEffect());
                came = new Told(made.done(), remarks);
            } catch (FileTrouble e) {
                came = new Told(List.of(), e.remarks());
            }
            Told told = came;
            if (!isDisposed()) {
                getDisplay().asyncExec(() -> {
                    if (!isDisposed()) {
                        tell(told);
                        show();
                        changed.run();
                    }
                });
            }
        });
    }

    private void tell(Told told) {
        String words = Stream.concat(
                        told.done().stream(), told.remarks().stream().map(texts::told))
                .collect(Collectors.joining("\n"));
        if (told.remarks().isEmpty()) {
            table.tellDone(words);
        } else {
            table.tell(words);
        }
    }
}
