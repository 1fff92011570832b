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
import java.util.regex.Pattern;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.hooks.resolver.ResolverHookFactory;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * The running framework with the bundles of a line-up. A bundle that does not start is told in a sentence and leaves the
 * others alone. What became of those that can be turned off is also a service, a {@code java.util.Map} of
 * {@link LineUp#states()} with the property {@code hidewright.addons=true}, so that the platform can show it; the names of
 * the bundles that cannot be turned off are its property {@code hidewright.platform}, and what looks a jar over before
 * anything of it runs is {@code hidewright.look}, a {@code java.util.function.Function} from a file to the key of what is
 * wrong with it. What does a decided change of the add-ons to its end is {@code hidewright.finish}, a function from the
 * folder of settings to what kept it from that; whether a jar has to wait for a word of the maker is {@code hidewright.consent}.
 */
final class Host implements AutoCloseable {

    /** A stop takes some milliseconds, unless it waits for a call that never ends; nothing is lost if it is not waited for. */
    private static final long STOP_WITHIN_MS = 1000;

    /** OSGi Core 8, section 1.3.2: a symbolic name. Felix takes any. */
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]+(?:\\.[A-Za-z0-9_-]+)*");

    private final Framework framework;
    private final LineUp lineUp;
    private final CacheFolder cache;
    private final List<String> failures;
    private final List<String> platform = new ArrayList<>();
    private final Map<String, BundleFile> names = new HashMap<>();
    private final Set<String> sound;
    private final JarLook look;
    private final Consent consent;
    private boolean oneIsStillStarting;

    private Host(Framework framework, LineUp lineUp, CacheFolder cache, Set<String> sound) {
        this.sound = sound;
        this.framework = framework;
        this.lineUp = lineUp;
        this.look = new JarLook(lineUp.settings());
        this.consent = new Consent(lineUp.settings());
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
        Host host = new Host(framework, lineUp, cache, current ? cache.soundAddOns() : new HashSet<>());
        framework.init();
        EndedFromInside.among(host.context());
        host.context().registerService(ResolverHookFactory.class, new ProgramFirst(lineUp.settings()), null);
        timings.reached("framework made");
        Map<Bundle, BundleFile> bundles = host.install();
        timings.reached("bundles installed");
        framework.start();
        timings.reached("framework started");
        // Together, since the resolver begins each time with everything that all of them and the JDK offer
        framework.adapt(FrameworkWiring.class).resolveBundles(bundles.keySet());
        for (Map.Entry<Bundle, BundleFile> bundle : bundles.entrySet()) {
            host.start(bundle.getKey(), bundle.getValue());
        }
        for (Map.Entry<Bundle, BundleFile> bundle : bundles.entrySet()) {
            host.mustHaveBecomePart(bundle.getKey(), bundle.getValue());
        }
        host.publishStates();
        timings.reached("bundles started");
        if (!current) {
            cache.keep(exports.asResolved(framework), host.sound);
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
        platform.addAll(lineUp.home().libraryNames());
        platform.add(Constants.SYSTEM_BUNDLE_SYMBOLICNAME);
        properties.put("hidewright.platform", platform.toArray(new String[0]));
        properties.put("hidewright.look", look);
        properties.put("hidewright.finish", new DecidedChange());
        properties.put("hidewright.consent", consent);
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
        for (BundleFile file : lineUp.files()) {
            String refused = file.isAddOn() ? refused(file) : "";
            if (refused.equals(LineUp.WAITING)) {
                failures.add(explain(file).waits(file));
                lineUp.failed(file, refused);
            } else if (refused.isEmpty()) {
                install(file, bundles);
            } else {
                failed(file, refused);
            }
        }
        return bundles;
    }

    private void install(BundleFile file, Map<Bundle, BundleFile> bundles) {
        try {
            Bundle bundle = context().installBundle(file.location());
            String name = bundle.getSymbolicName();
            if (name == null || file.isAddOn() && !NAME.matcher(name).matches()) {
                bundle.uninstall();
                failed(file, explain(file).notABundle(file));
            } else if (file.isAddOn() && isOnClassPath(name)) {
                bundle.uninstall();
                failed(file, explain(file).nameOfProgram(file, name));
            } else if (names.putIfAbsent(name, file) != null && !names.get(name).isLibrary()) {
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

    /** Why the framework is not even shown an add-on, or {@link LineUp#WAITING}; empty where it is shown. */
    private String refused(BundleFile file) {
        if (!sound.contains(file.jar().getPath())) {
            String fault = look.apply(file.jar());
            if (!fault.isEmpty()) {
                return explain(file).notSound(file, fault);
            }
            String host = JarLook.host(file.jar());
            BundleFile holder = names.get(host);
            if (isOnClassPath(host) || holder != null && !holder.isAddOn()) {
                return explain(file).partOfProgram(file, host);
            }
            if (!consent.apply(file.jar()).isEmpty()) {
                return LineUp.WAITING;
            }
        }
        sound.add(file.jar().getPath());
        return "";
    }

    private boolean isOnClassPath(String name) {
        return name.equals(Constants.SYSTEM_BUNDLE_SYMBOLICNAME)
                || lineUp.home().libraryNames().contains(name);
    }

    private void start(Bundle bundle, BundleFile file) {
        if (isPart(bundle)) {
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

    /** A part that found no bundle to become a part of brings nothing. */
    private void mustHaveBecomePart(Bundle bundle, BundleFile file) {
        if (file.isAddOn() && isPart(bundle) && bundle.getState() == Bundle.INSTALLED) {
            failed(file, explain(file).notResolved(bundle));
        }
    }

    private static boolean isPart(Bundle bundle) {
        return (bundle.adapt(BundleRevision.class).getTypes() & BundleRevision.TYPE_FRAGMENT) != 0;
    }

    private void failed(BundleFile file, String sentence) {
        failures.add(sentence);
        lineUp.failed(file, sentence);
    }

    private Explanation explain(BundleFile file) {
        return new Explanation(context(), new TurnedOff(lineUp.turnedOff()), file.mayBeTurnedOff());
    }
}
