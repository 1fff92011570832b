package org.hidewright.addons;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.startlevel.FrameworkStartLevel;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * The bundles that run now, started and stopped without a new start of the program. A bundle that is stopped is uninstalled,
 * since even one that only lies there offers its packages and its texts. Nothing of it is kept by the framework: the next start
 * of the program goes by the folders and choices alone.
 */
final class RunningBundles {
    private final BundleContext context;
    private final int seconds;

    /** @param seconds after which a bundle that does not come back from its start or stop is left to itself */
    RunningBundles(BundleContext context, int seconds) {
        this.context = context;
        this.seconds = seconds;
    }

    /** As the launcher names it: a reference to the jar where it lies, with a plus sign that Felix does not take for a space. */
    static String location(Path jar) {
        return "reference:" + jar.toFile().toURI().toASCIIString().replace("+", "%2B");
    }

    private Bundle system() {
        return context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION);
    }

    private Optional<Bundle> bundle(Path jar) {
        return Optional.ofNullable(context.getBundle(location(jar)));
    }

    boolean runs(Path jar) {
        return bundle(jar).filter(bundle -> bundle.getState() == Bundle.ACTIVE).isPresent();
    }

    /**
     * Stops a bundle for as long as the program runs; one that does not run stays as it is.
     *
     * @return what kept it from stopping, in its own words; empty where nothing did
     */
    Optional<String> stop(Path jar) {
        Optional<Bundle> bundle = bundle(jar);
        if (bundle.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> kept = inTime("stop of " + bundle.get().getSymbolicName(), bundle.get()::uninstall);
        refresh();
        return kept;
    }

    /**
     * Starts a bundle at a start level.
     *
     * @return what kept it from starting, in its own words; empty where nothing did
     */
    Optional<String> start(Path jar, int level) {
        try {
            Bundle bundle = context.installBundle(location(jar));
            if (bundle.getSymbolicName() == null) {
                bundle.uninstall();
                return Optional.of(Constants.BUNDLE_SYMBOLICNAME);
            }
            int reached = system().adapt(FrameworkStartLevel.class).getStartLevel(); // nothing starts above it
            bundle.adapt(BundleStartLevel.class).setStartLevel(Math.min(level, reached));
            return inTime(
                    "start of " + bundle.getSymbolicName(),
                    () -> bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY));
        } catch (BundleException e) {
            return Optional.of(reason(e));
        }
    }

    /** What a bundle’s own code has a part in. */
    private interface Turn {
        void done() throws BundleException;
    }

    /** On a thread of its own, which is left to itself when its time is up: it may be anybody’s code. */
    private Optional<String> inTime(String name, Turn turn) {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread thread = new Thread(
                () -> {
                    try {
                        turn.done();
                    } catch (BundleException | RuntimeException | Error e) {
                        thrown.set(e);
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(seconds));
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
        if (thread.isAlive()) {
            thread.interrupt();
            return Optional.of(seconds + " s");
        }
        return Optional.ofNullable(thrown.get()).map(RunningBundles::reason);
    }

    private static String reason(Throwable thrown) {
        Throwable cause = thrown;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        return cause.getMessage() == null
                ? cause.getClass().getName()
                : cause.getMessage().replaceAll("\\s+", " ").strip();
    }

    /** Lets go of what was uninstalled: others may still be wired to it. */
    private void refresh() {
        CountDownLatch done = new CountDownLatch(1);
        system().adapt(FrameworkWiring.class).refreshBundles(null, event -> done.countDown());
        try {
            done.await(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }
}
