package org.hidewright.launcher;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.BundleCapability;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;

/** Why a bundle did not start: which one, what is wrong with it, and a way out. */
final class Explanation {

    private static final String JAVA = "osgi.ee";
    private static final String BUNDLE = "osgi.wiring.bundle";
    private static final String HOST = "osgi.wiring.host";

    /** A chain of causes can be made a circle. */
    private static final int DEEPEST = 50;

    private static final int LONGEST = 200;
    private static final int LONGEST_NAME = 100;

    /** Characters that steer a screen instead of standing on it. */
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cntrl}\\p{Cf}]+");

    private final BundleContext system;
    private final FrameworkWiring wiring;
    private final TurnedOff off;
    private final boolean withWayOut;

    /**
     * An explanation.
     *
     * @param off what is turned off
     * @param withWayOut whether the bundle can be turned off
     */
    Explanation(BundleContext system, TurnedOff off, boolean withWayOut) {
        this.system = system;
        this.off = off;
        this.withWayOut = withWayOut;
        this.wiring = system.getBundle().adapt(FrameworkWiring.class);
    }

    String nameTaken(BundleFile file, String name, BundleFile holder) {
        return Messages.text("bundle.name-taken", file.name(), name, holder.name());
    }

    String nameOfProgram(BundleFile file, String name) {
        return Messages.text(
                "bundle.name-of-program", file.name(), name, file.jar().getParent());
    }

    String notABundle(BundleFile file) {
        return Messages.text("bundle.not-a-bundle", file.name(), file.jar().getParent());
    }

    /** @param fault what {@link JarLook} found */
    String notSound(BundleFile file, String fault) {
        return Messages.text("bundle." + fault, file.name(), file.jar().getParent());
    }

    /** Of one that was copied into the folder, before it starts for the first time. */
    String waits(BundleFile file) {
        return Messages.text("bundle.waits-for-word", file.name(), file.jar().getParent());
    }

    String partOfProgram(BundleFile file, String host) {
        return Messages.text(
                "bundle.part-of-program", file.name(), host, file.jar().getParent());
    }

    String notInstalled(BundleFile file, BundleException refused) {
        return refused.getType() == BundleException.DUPLICATE_BUNDLE_ERROR
                ? Messages.text("bundle.twice", file.name())
                : Messages.text("bundle.unreadable", file.name(), file.jar().getParent());
    }

    String notStarted(Bundle bundle, BundleException refused) {
        if (refused.getType() != BundleException.RESOLVE_ERROR) {
            return broke(bundle, innermost(refused));
        }
        return notResolved(bundle);
    }

    /** The framework numbers its bundles in its reasons; a maker and an author know a bundle by its name alone. */
    String broke(Bundle bundle, String reason) {
        return wayOut(
                Messages.text("bundle.broke", name(bundle), reason.replace(" [" + bundle.getBundleId() + "]", "")),
                bundle);
    }

    /** Of one that nobody starts, since it becomes a part of another. */
    String notResolved(Bundle bundle) {
        return wayOut(unmet(bundle), bundle);
    }

    String neverStarted(Bundle bundle, int seconds) {
        return wayOut(Messages.text("bundle.never-started", name(bundle), seconds), bundle);
    }

    /** With the name that the command knows the bundle by. */
    private String wayOut(String sentence, Bundle bundle) {
        return withWayOut ? sentence + " " + Messages.text("bundle.way-out", bundle.getSymbolicName()) : sentence;
    }

    private String unmet(Bundle bundle) {
        return requirements(bundle).stream()
                .filter(need -> wiring.findProviders(need).isEmpty())
                .findFirst()
                .map(missing -> missing(bundle, missing))
                .orElseGet(() -> waiting(bundle));
    }

    private String missing(Bundle bundle, BundleRequirement missing) {
        Wanted wanted = Wanted.of(missing);
        String turnedOff = turnedOff(missing.getNamespace(), wanted.name());
        if (turnedOff != null) {
            return Messages.text("bundle.turned-off", name(bundle), wanted.name(), turnedOff);
        }
        return switch (missing.getNamespace()) {
            case Wanted.PACKAGE -> {
                String offered = offered(wanted.name());
                yield offered.isEmpty()
                        ? Messages.text("bundle.package", name(bundle), wanted.nameAndVersions())
                        : Messages.text("bundle.version", name(bundle), wanted.nameAndVersions(), offered);
            }
            case BUNDLE, HOST -> Messages.text("bundle.package", name(bundle), wanted.name());
            case JAVA ->
                Messages.text(
                        "bundle.java",
                        name(bundle),
                        wanted.versions(),
                        Runtime.version().feature());
            default -> Messages.text("bundle.requires", name(bundle), missing.getNamespace(), wanted.filter());
        };
    }

    /** The name of one that is turned off and offers it, or null. */
    private String turnedOff(String namespace, String wanted) {
        return switch (namespace) {
            case Wanted.PACKAGE -> offered(wanted).isEmpty() ? off.exporting(wanted) : null;
            case BUNDLE, HOST -> off.called(wanted);
            default -> null;
        };
    }

    /** Each need of this bundle is met by some bundle, but by one that does not start itself, or by two that clash. */
    private String waiting(Bundle bundle) {
        String others = requirements(bundle).stream()
                .flatMap(need -> wiring.findProviders(need).stream())
                .map(capability -> capability.getRevision().getBundle())
                .filter(other -> other != bundle && other.getState() == Bundle.INSTALLED)
                .map(Explanation::name)
                .distinct()
                .collect(Collectors.joining(", "));
        return others.isEmpty()
                ? Messages.text("bundle.clash", name(bundle))
                : Messages.text("bundle.waits", name(bundle), others);
    }

    private static List<BundleRequirement> requirements(Bundle bundle) {
        List<BundleRequirement> needed =
                new ArrayList<>(bundle.adapt(BundleRevision.class).getDeclaredRequirements(null));
        needed.removeIf(need -> List.of("optional", "dynamic")
                .contains(need.getDirectives().getOrDefault(Constants.RESOLUTION_DIRECTIVE, "mandatory")));
        return needed;
    }

    private String offered(String wanted) {
        return Arrays.stream(system.getBundles())
                .flatMap(bundle -> bundle.adapt(BundleRevision.class).getDeclaredCapabilities(Wanted.PACKAGE).stream())
                .map(BundleCapability::getAttributes)
                .filter(exported -> wanted.equals(exported.get(Wanted.PACKAGE)))
                .map(exported -> String.valueOf(exported.get(Constants.VERSION_ATTRIBUTE)))
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static String name(Bundle bundle) {
        String named = bundle.getHeaders().get(Constants.BUNDLE_NAME);
        String name = named != null ? named : bundle.getSymbolicName();
        String line = UNSEEN.matcher(name).replaceAll(" ").strip();
        return line.length() > LONGEST_NAME ? line.substring(0, LONGEST_NAME) + "…" : line;
    }

    /** What its author wrote, as one line that is not longer than a line should be. */
    static String innermost(Throwable thrown) {
        Throwable cause = thrown;
        for (int depth = 0; depth < DEEPEST && cause.getCause() != null; depth++) {
            cause = cause.getCause();
        }
        String said = cause.getMessage() != null
                ? cause.getMessage().replaceAll("\\s+", " ").strip()
                : cause.getClass().getName();
        return said.length() > LONGEST ? said.substring(0, LONGEST) + "…" : said;
    }
}
