package org.hidewright.window.addons;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.TakenId;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Tools;
import org.hidewright.window.words.WindowTexts;

/** What an index offers, each bundle with its maker, what it brings and how it stands to what is here; installed, brought up to date. */
public final class OffersPage extends Composite {
    private static final int MARGIN = 12;

    private final WindowTexts texts;
    private final AddOns addOns;
    private final Titles titles;
    private final Executor work;
    private final Path from;
    private final Runnable changed;
    private final BundleTable table;
    private List<Offer> offers = List.of();

    /** Something that is brought from the index. */
    private interface Bringing {
        AddOnChange bring() throws FileTrouble;
    }

    /**
     * What came of it.
     *
     * @param offers what is offered now; empty where nothing changed
     */
    private record Shown(String words, Optional<List<Offer>> offers) {}

    /**
     * A page of offers.
     *
     * @param titles of what they bring
     * @param work where indexes are read and bundles started
     * @param from the index
     * @param leave called when the maker has seen enough
     * @param changed called when bundles have come or gone
     */
    public OffersPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            AddOns addOns,
            Titles titles,
            Executor work,
            Path from,
            Runnable leave,
            Runnable changed) {
        super(parent, SWT.NONE);
        this.texts = texts;
        this.addOns = addOns;
        this.titles = titles;
        this.work = work;
        this.from = from;
        this.changed = changed;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = MARGIN;
        setLayout(layout);
        Tools tools = new Tools(this, inks);
        tools.words(texts.text("page.back"), "offers.back", leave);
        tools.words(texts.text("offers.install"), "offers.install", this::install);
        tools.words(
                texts.text("offers.update"),
                "offers.update",
                () -> bring(() -> addOns.indexes().update(from, List.of())));
        table = new BundleTable(this, "offers", inks, texts, () -> {});
        bring(() -> new AddOnChange(List.of(), List.of(), List.of(), false));
    }

    private void install() {
        int index = table.index();
        if (index >= 0 && index < offers.size()) {
            Offer offer = offers.get(index);
            bring(() -> addOns.indexes().install(from, List.of(offer.id() + "@" + offer.version()), false));
        }
    }

    /** Away from the thread of the window: jars are read and looked over, and bundles take their time to start. */
    private void bring(Bringing bringing) {
        table.tell("");
        work.execute(() -> {
            Shown shown;
            try {
                AddOnChange change = bringing.bring();
                String said = change.isNothing() ? "" : took(change);
                shown = new Shown(said, Optional.of(addOns.indexes().read(from).offers()));
            } catch (FileTrouble e) {
                shown = new Shown(told(e.remarks()), Optional.empty());
            }
            Shown last = shown;
            if (!isDisposed()) {
                getDisplay().asyncExec(() -> show(last));
            }
        });
    }

    /** What did not start, and whose calculators others keep. */
    private String took(AddOnChange change) {
        Stream<String> notStarted = addOns.takeEffect().stream().map(texts::told);
        Stream<String> taken = TakenId.after(addOns.all(), change).stream()
                .map(one -> texts.text("offers.id-taken.help", one.id(), name(one.left()), name(one.keeps())));
        return Stream.concat(notStarted, taken).collect(Collectors.joining("\n"));
    }

    private String name(String bundle) {
        return BundleLine.name(bundle, addOns.all(), texts);
    }

    private void show(Shown shown) {
        if (isDisposed()) {
            return;
        }
        table.tell(shown.words());
        shown.offers().ifPresent(now -> {
            offers = now;
            table.show(now.stream()
                    .map(offer -> OfferLines.of(offer, titles, texts))
                    .toList());
            changed.run();
        });
    }

    private String told(List<Remark> remarks) {
        return remarks.stream().map(texts::told).collect(Collectors.joining("\n"));
    }
}
