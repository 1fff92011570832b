package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/**
 * Starts the framework, hands the program’s first thread and its arguments to the entry service, and leaves with the
 * exit code the entry service gives. The first thread matters: a window toolkit may insist on it.
 *
 * <p>The entry service is a {@code java.util.function.ToIntFunction} with the property {@code hidewright.entry=main}. It
 * takes the arguments as a {@code String[]}. A type of the JDK keeps the launcher free of the platform’s packages: the
 * launcher lies outside the framework, so a shared type of ours would have to be exported by the system bundle.
 *
 * <p>This package is written without lambdas, streams and records where every start passes: the first use of each costs
 * a start some milliseconds.
 */
public final class Launcher {

    /** The exit code when something broke that the maker could not have prevented. */
    static final int BROKEN = 70;

    private static final String ENTRY = "(hidewright.entry=main)";

    private final ProgramHome home;
    private final Timings timings;
    private final PrintStream told;

    private Launcher(ProgramHome home, Timings timings, PrintStream told) {
        this.home = home;
        this.timings = timings;
        this.told = told;
    }

    /**
     * Runs the program. Always leaves by {@code System.exit}: threads of the framework or of a bundle must not keep it
     * alive.
     *
     * @param arguments handed to the entry service as they are
     */
    public static void main(String[] arguments) {
        int code = BROKEN;
        Timings timings = new Timings();
        timings.reached("launcher entered");
        PrintStream told = System.err;
        Messages.speak(arguments);
        EndedFromInside.watch(told);
        Thread.setDefaultUncaughtExceptionHandler(new BrokenThreads(told));
        PrintedByBundles printed = PrintedByBundles.divert(told);
        try {
            code = new Launcher(new ProgramHome(home()), timings, told).run(arguments);
        } catch (Throwable thrown) {
            told.println(Messages.text("program.broken", thrown));
        }
        printed.end();
        timings.reached("framework stopped");
        timings.tell(told);
        EndedFromInside.leaving();
        System.exit(code);
    }

    private int run(String[] arguments) throws BundleException, IOException {
        try (Host host = Host.start(LineUp.of(home, arguments), CacheFolder.ofUser(), timings)) {
            for (String failure : host.failures()) {
                told.println(failure);
            }
            int code = 0;
            for (String[] command : Rehearsal.commands(arguments)) {
                code = Math.max(code, enter(host.context(), command));
            }
            timings.reached("entry returned");
            return code;
        }
    }

    private int enter(BundleContext context, String[] arguments) {
        ToIntFunction<String[]> entry = entry(context);
        timings.reached("entry found");
        if (entry == null) {
            told.println(Messages.text("entry.missing", home.bundleFolders()));
            return BROKEN;
        }
        return entry.applyAsInt(arguments);
    }

    /** The service promises by its property to take an array of texts. */
    @SuppressWarnings("unchecked")
    private static ToIntFunction<String[]> entry(BundleContext context) {
        try {
            ServiceReference<?>[] found = context.getServiceReferences(ToIntFunction.class.getName(), ENTRY);
            return found == null ? null : (ToIntFunction<String[]>) context.getService(found[0]);
        } catch (InvalidSyntaxException wrongFilter) {
            throw new IllegalStateException(wrongFilter);
        }
    }

    private static File home() {
        String told = System.getProperty("hidewright.home");
        if (told == null) {
            throw new IllegalStateException(Messages.text("home.unknown"));
        }
        return new File(told).getAbsoluteFile();
    }
}
