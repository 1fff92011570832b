package org.hidewright.core.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/**
 * The calculators that bundles publish as services.
 *
 * <p>Their ids are read off the services' properties, so that listing them loads no class of theirs. Of two with one id
 * the one installed first is used and the other is told.
 */
@Component
public final class ServiceCatalogue implements Catalogue {
    private final BundleContext context;
    private final List<ServiceReference<?>> published = new CopyOnWriteArrayList<>();
    private final Map<ServiceReference<?>, Optional<Installed>> looked = new ConcurrentHashMap<>();
    private final List<Remark> problems = new CopyOnWriteArrayList<>();

    @Activate
    public ServiceCatalogue(BundleContext context) {
        this.context = context;
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
        looked.remove(reference);
    }

    @Override
    public Optional<Installed> find(String id) {
        return Optional.ofNullable(byId().get(id)).flatMap(this::look);
    }

    @Override
    public List<String> ids() {
        return List.copyOf(byId().keySet());
    }

    @Override
    public List<Remark> problems() {
        return List.copyOf(problems);
    }

    private Map<String, ServiceReference<?>> byId() {
        Map<String, ServiceReference<?>> byId = new TreeMap<>();
        List<ServiceReference<?>> oldestFirst = new ArrayList<>(published);
        oldestFirst.sort(
                Comparator.comparing(ServiceReference::getBundle, Comparator.comparingLong(b -> b.getBundleId())));
        for (ServiceReference<?> reference : oldestFirst) {
            String id = id(reference);
            ServiceReference<?> holder = byId.putIfAbsent(id, reference);
            if (holder != null && !holder.equals(reference)) {
                say(CatalogueNotices.ID_TAKEN.with(bundle(reference), id, bundle(holder)));
            }
        }
        return byId;
    }

    private String id(ServiceReference<?> reference) {
        Object property = reference.getProperty(Calculates.ID_PROPERTY);
        return property instanceof String id
                ? id
                : look(reference).map(Installed::id).orElse("");
    }

    private Optional<Installed> look(ServiceReference<?> reference) {
        return looked.computeIfAbsent(reference, this::load);
    }

    private Optional<Installed> load(ServiceReference<?> reference) {
        try {
            if (context.getService(reference) instanceof Calculator<?, ?> calculator) {
                return Optional.of(new Installed(RecordCalculator.of(calculator), bundle(reference)));
            }
            say(CatalogueNotices.DID_NOT_START.with(bundle(reference), ""));
        } catch (InvalidDeclaration e) {
            say(CatalogueNotices.INVALID_DECLARATION.with(bundle(reference), e.getMessage()));
        } catch (RuntimeException | LinkageError e) {
            say(CatalogueNotices.DID_NOT_START.with(bundle(reference), e.toString()));
        }
        return Optional.empty();
    }

    private void say(Notice notice) {
        Remark remark = Remark.of(notice, CoreTexts.TEXTS);
        if (!problems.contains(remark)) {
            problems.add(remark);
        }
    }

    private static String bundle(ServiceReference<?> reference) {
        return reference.getBundle() == null ? "" : reference.getBundle().getSymbolicName();
    }
}
