package org.hidewright.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/**
 * The calculators that bundles publish as services, and the templates that they carry as texts.
 *
 * <p>Their ids are read off the services' properties, so that listing them loads no class of theirs. Of two with one id,
 * be they code or texts, the one with {@link Precedence} is used and the other is told.
 */
@Component
public final class ServiceCatalogue implements Catalogue {
    private final BundleContext context;
    private final Guard guard;
    private final Services services;
    private final ServiceTables tables;
    private final ServiceSections sections;
    private final TemplateBundles templates;
    private final List<ServiceReference<?>> published = new CopyOnWriteArrayList<>();
    private final Map<ServiceReference<?>, Optional<Installed>> looked = new ConcurrentHashMap<>();
    private final Map<ServiceReference<?>, Remark> faults = new ConcurrentHashMap<>();

    @Activate
    public ServiceCatalogue(
            BundleContext context,
            @Reference ServiceTables tables,
            @Reference ServiceSections sections,
            @Reference Guard guard) {
        this.context = context;
        this.guard = guard;
        this.services = new Services(context, guard);
        this.tables = tables;
        this.sections = sections;
        this.templates = new TemplateBundles(context, id -> published(id).map(Installed::calculator));
    }

    @Reference(
            service = Calculator.class,
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            bind = "bind",
            unbind = "unbind")
    void bind(ServiceReference<Calculator<?, ?>> reference) {
        published.add(reference);
    }

    void unbind(ServiceReference<Calculator<?, ?>> reference) {
        published.remove(reference);
        forget(reference);
    }

    private void forget(ServiceReference<?> reference) {
        looked.remove(reference);
        faults.remove(reference);
    }

    @Override
    public Optional<Installed> find(String id) {
        return Optional.ofNullable(byId(new ArrayList<>()).get(id)).flatMap(this::look);
    }

    /** What draws, or is asked by a text, is code. */
    private Optional<Installed> published(String id) {
        return services.inOrder(published).stream()
                .filter(reference -> id(reference).equals(id))
                .findFirst()
                .flatMap(this::look);
    }

    @Override
    public List<String> ids() {
        return List.copyOf(byId(new ArrayList<>()).keySet());
    }

    @Override
    public Tables tables() {
        return tables.tables();
    }

    @Override
    public List<Contributor> contributors() {
        return sections.contributors();
    }

    @Override
    public List<Remark> problems() {
        List<Remark> taken = new ArrayList<>();
        byId(taken);
        List<Remark> problems = new ArrayList<>();
        published.stream().map(faults::get).filter(Objects::nonNull).forEach(problems::add);
        problems.addAll(taken);
        problems.addAll(templates.problems());
        problems.addAll(tables.problems());
        return List.copyOf(problems);
    }

    /** What brings a calculator: a service, or where that is null a text. */
    private record Claim(String id, Bundle bundle, ServiceReference<?> service, CarriedText text) {}

    /** What brings each id; of those whose id another keeps, a word each is added. */
    private Map<String, Claim> byId(List<Remark> taken) {
        List<Claim> claims = new ArrayList<>();
        for (ServiceReference<?> reference : services.inOrder(published)) {
            Bundle bundle = reference.getBundle();
            if (bundle != null) { // it may have gone meanwhile
                claims.add(new Claim(id(reference), bundle, reference, null));
            }
        }
        templates
                .all()
                .forEach(named -> claims.add(new Claim(named.id(), named.file().bundle(), null, named.file())));
        claims.sort(Comparator.comparing(Claim::bundle, Precedence.of(context)));
        Map<String, Claim> byId = new TreeMap<>();
        for (Claim claim : claims) {
            Claim keeps = claim.id().isEmpty() ? claim : byId.putIfAbsent(claim.id(), claim);
            if (keeps != null && keeps != claim) {
                taken.add(Services.remark(CatalogueNotices.ID_TAKEN.with(
                        claim.bundle().getSymbolicName(),
                        claim.id(),
                        keeps.bundle().getSymbolicName())));
            }
        }
        return byId;
    }

    private Optional<Installed> look(Claim claim) {
        return claim.service() == null ? templates.find(claim.id(), claim.text()) : look(claim.service());
    }

    private String id(ServiceReference<?> reference) {
        Object property = reference.getProperty(Calculates.ID_PROPERTY);
        return property instanceof String id && !id.isEmpty()
                ? id
                : look(reference).map(Installed::id).orElse("");
    }

    private Optional<Installed> look(ServiceReference<?> reference) {
        Optional<Installed> known = looked.get(reference);
        if (known != null) {
            return known;
        }
        // Not while the map is held: a bundle that is just taken away waits for the map, and what is called here for
        // the bundle
        Optional<Installed> loaded = load(reference);
        Optional<Installed> before = looked.putIfAbsent(reference, loaded);
        if (!published.contains(reference)) {
            forget(reference); // it went while it was looked at: nobody else lets go of it, and of its class loader
        }
        return before == null ? loaded : before;
    }

    private Optional<Installed> load(ServiceReference<?> reference) {
        String bundle = Services.bundle(reference);
        Optional<Installed> found = services.declared(
                        reference,
                        Calculator.class,
                        calculator -> RecordCalculator.of((Calculator<?, ?>) calculator),
                        (by, why) -> CatalogueNotices.INVALID_DECLARATION.with(by, why),
                        fault -> faults.put(reference, fault))
                .map(calculator -> new Installed(new GuardedCalculator(calculator, bundle, guard), bundle));
        Object published = reference.getProperty(Calculates.ID_PROPERTY);
        if (found.isPresent()
                && published != null
                && !published.equals(found.get().id())) {
            faults.put(
                    reference,
                    Services.remark(CatalogueNotices.OTHER_ID.with(
                            bundle, String.valueOf(published), found.get().id())));
            return Optional.empty();
        }
        return found;
    }
}
