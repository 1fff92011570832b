package org.hidewright.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.workshop.WorkshopTable;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.standard.StandardTables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/**
 * The tables of the workshop that bundles publish as services or carry as texts, after those every workshop has; the bundle
 * with {@link Precedence} comes first. None is looked at before tables are asked for.
 */
@Component(service = ServiceTables.class)
public final class ServiceTables {
    private final BundleContext context;
    private final Services services;
    private final TableBundles texts;
    private final List<ServiceReference<?>> published = new CopyOnWriteArrayList<>();
    /** Null where something has come or gone since they were asked for. */
    private Looked looked;

    private long changes;

    private record Looked(List<CarriedText.Stamp> stamps, Tables tables, List<Remark> problems) {}

    @Activate
    public ServiceTables(BundleContext context, @Reference Guard guard) {
        this.context = context;
        this.services = new Services(context, guard);
        this.texts = new TableBundles(context);
    }

    @Reference(
            service = WorkshopTable.class,
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            bind = "bind",
            unbind = "unbind")
    void bind(ServiceReference<WorkshopTable<?>> reference) {
        published.add(reference);
        forget();
    }

    void unbind(ServiceReference<WorkshopTable<?>> reference) {
        published.remove(reference);
        forget();
    }

    private synchronized void forget() {
        looked = null;
        changes++;
    }

    Tables tables() {
        return looked().tables();
    }

    /** What is wrong with tables, if they were asked for. */
    synchronized List<Remark> problems() {
        return looked == null ? List.of() : looked.problems();
    }

    private Looked looked() {
        List<CarriedText.Stamp> stamps = texts.stamps();
        long from;
        synchronized (this) {
            if (looked != null && looked.stamps().equals(stamps)) {
                return looked;
            }
            from = changes;
        }
        // Not while this is held: a bundle that is just taken away waits for it, and what is called here for the bundle
        Looked fresh = look(stamps);
        synchronized (this) {
            if (from == changes) {
                looked = fresh;
            }
        }
        return fresh;
    }

    private Looked look(List<CarriedText.Stamp> stamps) {
        List<Remark> problems = new ArrayList<>();
        List<TableBundles.Read> read = texts.read(problems);
        Map<Bundle, List<Brought>> byBundle = new TreeMap<>(Precedence.of(context));
        for (ServiceReference<?> reference : services.inOrder(published)) {
            Bundle bundle = reference.getBundle();
            if (bundle != null) { // it may have gone meanwhile
                published(reference, problems)
                        .ifPresent(table -> byBundle.computeIfAbsent(bundle, fresh -> new ArrayList<>())
                                .add(table));
            }
        }
        read.forEach(text -> byBundle.computeIfAbsent(text.text().bundle(), fresh -> new ArrayList<>())
                .addAll(text.brought().columns()));
        List<Brought> brought = new ArrayList<>(StandardTables.brought());
        byBundle.values().forEach(brought::addAll);
        Tables tables = TableBundles.stocked(Tables.of(brought), read, problems);
        problems.addAll(tables.problems());
        return new Looked(stamps, tables, List.copyOf(problems));
    }

    private Optional<Brought> published(ServiceReference<?> reference, List<Remark> problems) {
        return services.declared(
                        reference,
                        WorkshopTable.class,
                        table -> DeclaredTable.of((WorkshopTable<?>) table),
                        (by, why) -> CatalogueNotices.INVALID_TABLE.with(by, why),
                        problems::add)
                .map(table -> new Brought(table, Services.bundle(reference)));
    }
}
