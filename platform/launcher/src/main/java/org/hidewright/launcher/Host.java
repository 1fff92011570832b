package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Hashtable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.wiring.BundleRevision;

/**
 * The running framework with the bundles of a line-up. A bundle that does not start is told in a sentence and leaves the
 * others alone. What became of those that can be turned off is also a service, a {@code java.util.Map} of
 * {@link LineUp#states()} with the property {@code hidewright.addons=true}, so that the platform can show it; the names of
 * the bundles that cannot be turned off are its property {@code hidewright.platform}.
 */
final class Host implements AutoCloseable {

    /** A stop takes some milliseconds, unless it waits for a call that never ends; nothing is lost if it is not waited for. */
    private static final long STOP_WITHIN_MS = 1000;

    private final Framework framework;
    private final LineUp lineUp;
    private final CacheFolder cache;
    private final List<String> failures;
    private final List<String> platform = new ArrayList<>();
    private boolean oneIsStillStarting;

    private Host(Framework framework, LineUp lineUp, CacheFolder cache) {
        this.framework = framework;
        this.lineUp = lineUp;
        this.cache = cache;
        this.failures = new ArrayList<>(lineUp.told());
    }

    static Host start(LineUp lineUp, File caches, Timings timings) throws BundleException, IOException {
        CacheFolder cache = CacheFolder.take(caches, lineUp);
        boolean current = cache.isCurrent();
        if (!current) {
            cache.renew();
        }
        timings.reached("folders read");
        SystemExports exports = current
                ? cache.systemExports()
                : SystemExports.ofLibraries(lineUp.home().libraries());
        Settings settings = new Settings(lineUp).cache(cache, current).exports(exports, current);
        Framework framework = factory().newFramework(settings.asMap());
        Host host = new Host(framework, lineUp, cache);
        framework.init();
        EndedFromInside.among(host.context());
        timings.reached("framework made");
        Map<Bundle, BundleFile> bundles = host.install();
        timings.reached("bundles installed");
        framework.start();
        timings.reached("framework started");
        for (Map.Entry<Bundle, BundleFile> bundle : bundles.entrySet()) {
            host.start(bundle.getKey(), bundle.getValue());
        }
        host.publishStates();
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
        return failures;
    }

    @Override
    public void close() throws IOException {
        try {
            if (!oneIsStillStarting) { // or its stop would wait for the end of its start
                framework.stop();
                framework.waitForStop(STOP_WITHIN_MS);
            }
        } catch (BundleException | InterruptedException leavingAnyway) {
            Thread.currentThread().interrupt();
        } finally {
            cache.close();
        }
    }

    private void publishStates() {
        Hashtable<String, Object> properties = new Hashtable<>();
        properties.put("hidewright.addons", true);
        properties.put("hidewright.platform", platform.toArray(new String[0]));
        context().registerService(Map.class, lineUp.states(), properties);
    }

    /** Removes what no longer lies in the folders before anything new comes, so that old and new never meet. */
    private Map<Bundle, BundleFile> install() throws BundleException {
        Set<String> wanted = new HashSet<>();
        for (BundleFile file : lineUp.files()) {
            wanted.add(file.location());
        }
        for (Bundle known : context().getBundles()) {
            if (known.getBundleId() != 0 && !wanted.contains(known.getLocation())) {
                known.uninstall();
            }
        }
        Map<Bundle, BundleFile> bundles = new LinkedHashMap<>();
        Map<String, BundleFile> names = new HashMap<>();
        for (BundleFile file : lineUp.files()) {
            try {
                Bundle bundle = context().installBundle(file.location());
                String name = bundle.getSymbolicName();
                if (name == null) {
                    bundle.uninstall();
                    failed(file, explain(file).notABundle(file));
                } else if (names.putIfAbsent(name, file) != null
                        && !names.get(name).isLibrary()) {
                    bundle.uninstall();
                    failed(file, explain(file).nameTaken(file, name, names.get(name)));
                } else {
                    bundle.adapt(BundleStartLevel.class).setStartLevel(file.level());
                    bundles.put(bundle, file);
                    if (!file.isLibrary() && !file.mayBeTurnedOff()) {
                        platform.add(name);
                    }
                }
            } catch (BundleException refused) {
                failed(file, explain(file).notInstalled(file, refused));
            }
        }
        return bundles;
    }

    private void start(Bundle bundle, BundleFile file) {
        int types = bundle.adapt(BundleRevision.class).getTypes();
        if ((types & BundleRevision.TYPE_FRAGMENT) != 0) {
            return;
        }
        String failure;
        if (file.mayBeTurnedOff()) {
            Start start = Start.within(bundle, explain(file));
            failure = start.failure();
            oneIsStillStarting |= !start.cameBack();
        } else {
            failure = Start.here(bundle, explain(file));
        }
        if (!failure.isEmpty()) {
            failed(file, failure);
        }
    }

    private void failed(BundleFile file, String sentence) {
        failures.add(sentence);
        lineUp.failed(file, sentence);
    }

    private Explanation explain(BundleFile file) {
        return new Explanation(context(), file.mayBeTurnedOff());
    }
}
