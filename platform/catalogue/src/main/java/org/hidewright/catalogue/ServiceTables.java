package org.hidewright.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.workshop.WorkshopTable;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.standard.StandardTables;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/**
 * The tables of the workshop that bundles publish as services, after those every workshop has; the bundle installed first
 * comes first. None is looked at before tables are asked for.
 */
@Component(service = ServiceTables.class)
public final class ServiceTables {
    private final Services services;
    private final List<ServiceReference<?>> published = new CopyOnWriteArrayList<>();
    /** Null where something has come or gone since they were asked for. */
    private Looked looked;

    private long changes;

    private record Looked(Tables tables, List<Remark> problems) {}

    @Activate
    public ServiceTables(BundleContext context, @Reference Guard guard) {
        this.services = new Services(context, guard);
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
        long from;
        synchronized (this) {
            if (looked != null) {
                return looked;
            }
            from = changes;
        }
        // Not while this is held: a bundle that is just taken away waits for it, and what is called here for the bundle
        List<Brought> brought = new ArrayList<>(StandardTables.brought());
        List<Remark> problems = new ArrayList<>();
        Services.oldestFirst(published).forEach(reference -> look(reference, brought, problems));
        Tables tables = Tables.of(brought);
        problems.addAll(tables.problems());
        Looked fresh = new Looked(tables, List.copyOf(problems));
        synchronized (this) {
            if (from == changes) {
                looked = fresh;
            }
        }
        return fresh;
    }

    private void look(ServiceReference<?> reference, List<Brought> brought, List<Remark> problems) {
        services.declared(
                        reference,
                        WorkshopTable.class,
                        table -> DeclaredTable.of((WorkshopTable<?>) table),
                        (by, why) -> CatalogueNotices.INVALID_TABLE.with(by, why),
                        problems::add)
                .ifPresent(table -> brought.add(new Brought(table, Services.bundle(reference))));
    }
}
