package org.hidewright.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Guard;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/**
 * What bundles publish to add sections to the job card, by the names of their components. Each is made, under guard like its
 * work, when sections are first asked for, so that a command which writes no card loads nothing of it.
 */
@Component(service = ServiceSections.class)
public final class ServiceSections {
    private static final String NAME = "component.name";

    private final BundleContext context;
    private final Guard guard;
    private final List<ServiceReference<SectionContributor>> published = new CopyOnWriteArrayList<>();

    @Activate
    public ServiceSections(BundleContext context, @Reference Guard guard) {
        this.context = context;
        this.guard = guard;
    }

    @Reference(
            service = SectionContributor.class,
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            bind = "bind",
            unbind = "unbind")
    void bind(ServiceReference<SectionContributor> reference) {
        published.add(reference);
    }

    void unbind(ServiceReference<SectionContributor> reference) {
        published.remove(reference);
    }

    List<Contributor> contributors() {
        return published.stream()
                .sorted(Comparator.comparing(ServiceSections::name).thenComparing(Comparator.reverseOrder()))
                .map(this::contributor)
                .toList();
    }

    /** The name of its component, which usually is that of its class. */
    private static String name(ServiceReference<?> reference) {
        return String.valueOf(reference.getProperty(NAME));
    }

    private Contributor contributor(ServiceReference<SectionContributor> reference) {
        String bundle = Services.bundle(reference);
        return new Contributor(bundle, job -> sections(bundle, reference, job));
    }

    private List<?> sections(String bundle, ServiceReference<SectionContributor> reference, JobView job) {
        SectionContributor contributor = guard.call(bundle, () -> context.getService(reference));
        if (contributor == null) {
            throw BundleFault.once(Phrase.of("fault-not-made"));
        }
        return guard.call(bundle, () -> {
            List<?> given = contributor.sections(job);
            return given == null ? null : new ArrayList<>(given); // its own list may run its own code
        });
    }
}
