package org.hidewright.catalogue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.brought.BroughtCheck;
import org.hidewright.core.brought.BroughtNotices;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TableFiles;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.osgi.framework.BundleContext;

/** The tables that bundles carry as texts: their columns, and once all columns are known their rows. */
final class TableBundles {
    private final BundleContext context;

    TableBundles(BundleContext context) {
        this.context = context;
    }

    /** A text that was read, with what it brings. */
    record Read(CarriedText text, BroughtTables brought) {}

    private List<CarriedText> texts() {
        return CarriedText.bundles(context)
                .flatMap(bundle -> TableFiles.paths(bundle.getHeaders("").get(TableFiles.HEADER)).stream()
                        .map(path -> new CarriedText(bundle, path)))
                .toList();
    }

    /** What all of it is read from now. */
    List<CarriedText.Stamp> stamps() {
        return texts().stream().map(CarriedText::stamp).toList();
    }

    /** Reads all of them; one that cannot be used is told. */
    List<Read> read(List<Remark> problems) {
        List<Read> read = new ArrayList<>();
        for (CarriedText text : texts()) {
            try {
                TablesReader.Result result = TablesReader.read(text.read(), text.name());
                Optional<BroughtTables> brought = result.tables();
                text.lost()
                        .ifPresent(folder -> problems.add(Services.remark(
                                CatalogueNotices.FOLLOWED_GONE.with(text.name(), text.path(), folder))));
                tell(
                        brought.isPresent()
                                ? BroughtNotices.BROUGHT_LEFT_OUT.with(text.name(), text.path())
                                : BroughtNotices.BROUGHT_UNUSABLE.with(text.name(), text.path()),
                        result.remarks(),
                        problems);
                brought.ifPresent(tables -> read.add(new Read(text, tables)));
            } catch (IOException e) {
                problems.add(Services.remark(BroughtNotices.BROUGHT_UNUSABLE.with(text.name(), text.path())));
                problems.add(Services.remark(CatalogueNotices.TABLES_NOT_THERE.with(text.path())));
            }
        }
        return read;
    }

    /** The tables with the rows of those texts; a row that cannot be used is told. */
    static Tables stocked(Tables tables, List<Read> all, List<Remark> problems) {
        List<BroughtRow> rows = new ArrayList<>();
        for (Read read : all) {
            BroughtCheck.Result result = BroughtCheck.of(read.brought(), tables);
            tell(
                    BroughtNotices.BROUGHT_LEFT_OUT.with(
                            read.text().name(), read.text().path()),
                    result.remarks(),
                    problems);
            rows.addAll(result.rows());
        }
        return tables.with(rows);
    }

    /** What stops something is told, under the text it is of; the rest is for its author, who asks for it. */
    private static void tell(Notice head, List<Remark> remarks, List<Remark> problems) {
        List<Remark> stops = remarks.stream().filter(Remark::stops).toList();
        if (!stops.isEmpty()) {
            problems.add(Services.remark(head));
            problems.addAll(stops);
        }
    }
}
