package org.hidewright.distribution;

import com.sun.management.UnixOperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.management.ObjectName;
import org.osgi.framework.Bundle;
import org.osgi.framework.wiring.BundleWiring;

/** Counts what bundles that have gone have left behind in this process. */
final class LeftBehind {
    private static final Pattern LOADERS =
            Pattern.compile("(?m)^\\s*\\d+:\\s+(\\d+)\\s+\\d+\\s+\\S*BundleWiringImpl\\$BundleClassLoader\\b.*$");

    private final List<WeakReference<ClassLoader>> loaders = new ArrayList<>();

    /** What this process holds, garbage collected. */
    record Held(long bundleLoaders, long classes, long heap, long threads, long openFiles) {

        static Held now() throws Exception {
            collect();
            return new Held(
                    bundleLoadersOfTheJdk(),
                    ManagementFactory.getClassLoadingMXBean().getLoadedClassCount(),
                    ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed(),
                    ManagementFactory.getThreadMXBean().getThreadCount(),
                    ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                            ? unix.getOpenFileDescriptorCount()
                            : 0);
        }
    }

    /** Keeps an eye on the class loader of a bundle that runs. */
    void watch(Bundle bundle) {
        loaders.add(new WeakReference<>(bundle.adapt(BundleWiring.class).getClassLoader()));
    }

    int watched() {
        return loaders.size();
    }

    /** How many of the class loaders are still there, after as many collections as it takes. */
    long stillThere() throws InterruptedException {
        long there = loaders.size();
        for (int i = 0; i < 20 && there > 0; i++) {
            collect();
            there = loaders.stream().filter(loader -> loader.get() != null).count();
        }
        return there;
    }

    private static void collect() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(20); // references are cleared and queued by another thread
        }
    }

    /** The JDK’s own count, by the diagnostic command that {@code jcmd PID GC.class_histogram} asks too. */
    private static long bundleLoadersOfTheJdk() throws Exception {
        String histogram = (String) ManagementFactory.getPlatformMBeanServer()
                .invoke(
                        new ObjectName("com.sun.management:type=DiagnosticCommand"),
                        "gcClassHistogram",
                        new Object[] {new String[0]},
                        new String[] {String[].class.getName()});
        Matcher line = LOADERS.matcher(histogram);
        return line.find() ? Long.parseLong(line.group(1)) : 0;
    }
}
