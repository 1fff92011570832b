package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.Hashtable;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.wiring.BundleRevision;

/**
 * The running framework with the bundles of the program’s folders. A bundle that does not start is told in a sentence
 * and leaves the others alone. The sentences are also a service, a {@code java.util.List} of texts with the property
 * {@code hidewright.failed=true}, so that the platform can show them.
 */
final class Host implements AutoCloseable {

    private static final long STOP_WITHIN_MS = 5000;

    private final Framework framework;
    private final CacheFolder cache;
    private final List<String> failures = new CopyOnWriteArrayList<>();

    private Host(Framework framework, CacheFolder cache) {
        this.framework = framework;
        this.cache = cache;
    }

    static Host start(ProgramHome home, File caches, Timings timings) throws BundleException, IOException {
        List<BundleFile> files = home.bundles();
        CacheFolder cache = CacheFolder.take(caches, home, files);
        boolean current = cache.isCurrent();
        if (!current) {
            cache.renew();
        }
        timings.reached("folders read");
        SystemExports exports = current ? cache.systemExports() : SystemExports.ofLibraries(home.libraries());
        Settings settings = new Settings(home, files).cache(cache, current).exports(exports, current);
        Framework framework = factory().newFramework(settings.asMap());
        Host host = new Host(framework, cache);
        framework.init();
        timings.reached("framework made");
        host.publishFailures();
        List<Bundle> bundles = host.install(files);
        timings.reached("bundles installed");
        framework.start();
        timings.reached("framework started");
        for (Bundle bundle : bundles) {
            host.start(bundle);
        }
        timings.reached("bundles started");
        if (!current) {
            cache.keep(exports.asResolved(framework));
        }
        return host;
    }

    /** By name, not by the service loader: opening every jar of the class path to look for one costs 10 ms. */
    private static FrameworkFactory factory() {
        try {
            return (FrameworkFactory) Class.forName("org.apache.felix.framework.FrameworkFactory")
                    .getConstructor()
                    .newInstance();
        } catch (ReflectiveOperationException incomplete) {
            throw new IllegalStateException(incomplete);
        }
    }

    BundleContext context() {
        return framework.getBundleContext();
    }

    List<String> failures() {
        return Collections.unmodifiableList(failures);
    }

    @Override
    public void close() throws IOException {
        try {
            framework.stop();
            framework.waitForStop(STOP_WITHIN_MS);
        } catch (BundleException | InterruptedException leavingAnyway) {
            Thread.currentThread().interrupt();
        } finally {
            cache.close();
        }
    }

    private void publishFailures() {
        Hashtable<String, Object> properties = new Hashtable<>();
        properties.put("hidewright.failed", true);
        context().registerService(List.class, failures(), properties);
    }

    /** Removes what no longer lies in the folders before anything new comes, so that old and new never meet. */
    private List<Bundle> install(List<BundleFile> files) throws BundleException {
        Set<String> wanted = new HashSet<>();
        for (BundleFile file : files) {
            wanted.add(file.location());
        }
        for (Bundle known : context().getBundles()) {
            if (known.getBundleId() != 0 && !wanted.contains(known.getLocation())) {
                known.uninstall();
            }
        }
        List<Bundle> bundles = new ArrayList<>();
        for (BundleFile file : files) {
            try {
                Bundle bundle = context().installBundle(file.location());
                if (bundle.getSymbolicName() == null) {
                    failures.add(explain().notABundle(file));
                    bundle.uninstall();
                } else {
                    bundle.adapt(BundleStartLevel.class).setStartLevel(file.level());
                    bundles.add(bundle);
                }
            } catch (BundleException refused) {
                failures.add(explain().notInstalled(file, refused));
            }
        }
        return bundles;
    }

    private void start(Bundle bundle) {
        int types = bundle.adapt(BundleRevision.class).getTypes();
        if ((types & BundleRevision.TYPE_FRAGMENT) == 0) {
            try {
                bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY);
            } catch (BundleException refused) {
                failures.add(explain().notStarted(bundle, refused));
            }
        }
    }

    private Explanation explain() {
        return new Explanation(context());
    }
}
