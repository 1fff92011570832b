package org.hidewright.addons;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.BundleWiring;
import org.osgi.resource.Resource;
import org.osgi.resource.Wiring;
import org.osgi.service.resolver.Resolver;

/** What the running framework knows: its resolver, and how the bundles of the program are wired. */
final class Framework {
    private Framework() {}

    /** @param addOns the folder of what is not the program’s */
    static Needs needs(BundleContext context, Path addOns) {
        return new Needs(() -> resolver(context), () -> program(context, addOns));
    }

    private static Resolver resolver(BundleContext context) {
        ServiceReference<Resolver> reference = context.getServiceReference(Resolver.class);
        if (reference == null) {
            throw new IllegalStateException("the framework has no resolver");
        }
        return context.getService(reference);
    }

    private static Map<Resource, Wiring> program(BundleContext context, Path addOns) {
        String theirs = RunningBundles.location(addOns).replaceFirst("/?$", "/");
        Map<Resource, Wiring> program = new HashMap<>();
        for (Bundle bundle : context.getBundles()) {
            BundleWiring wiring = bundle.adapt(BundleWiring.class);
            if (wiring != null && !bundle.getLocation().startsWith(theirs)) {
                program.put(bundle.adapt(BundleRevision.class), wiring);
            }
        }
        return program;
    }
}
