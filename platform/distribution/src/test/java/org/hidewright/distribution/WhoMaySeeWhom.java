package org.hidewright.distribution;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import org.osgi.framework.Constants;

/**
 * The rule of the house: which bundle may import which packages. Plug-ins and samples see the contract alone, the core
 * sees the contract, the rest of the platform sees both, and toolkits stay in one place each. Read from the manifest of
 * a built bundle, so that what counts is what the framework will wire.
 */
final class WhoMaySeeWhom {

    private static final String OURS = "org.hidewright.";
    private static final String API = OURS + "api";
    private static final String CORE = OURS + "core";

    /** The platform’s bundles, and which of our packages besides the contract each may see. */
    private static final Map<String, Set<String>> PLATFORM = Map.of(
            CORE,
            Set.of(),
            OURS + "catalogue",
            Set.of(CORE),
            OURS + "command",
            Set.of(CORE),
            OURS + "documents",
            Set.of(CORE),
            OURS + "addons",
            Set.of(CORE),
            OURS + "window",
            Set.of(CORE, OURS + "documents.page"));

    private WhoMaySeeWhom() {}

    /** What the bundle imports or requires and must not, as sentences; empty when it keeps to the rule. */
    static List<String> breaches(Manifest manifest) {
        Attributes headers = manifest.getMainAttributes();
        String bundle = headers.getValue(Constants.BUNDLE_SYMBOLICNAME).replaceAll(";.*", "");
        List<String> breaches = new ArrayList<>();
        for (String header : List.of(Constants.IMPORT_PACKAGE, Constants.DYNAMICIMPORT_PACKAGE)) {
            for (String seen : names(headers.getValue(header))) {
                if (!maySee(bundle, seen)) {
                    breaches.add(bundle + " must not see " + seen);
                }
            }
        }
        for (String required : names(headers.getValue(Constants.REQUIRE_BUNDLE))) {
            if (required.startsWith(OURS)) {
                breaches.add(bundle + " must not require " + required + " whole");
            }
        }
        return breaches;
    }

    private static boolean maySee(String bundle, String seen) {
        if (within(seen, "org.eclipse.swt") || within(seen, "org.eclipse.jface")) {
            return bundle.equals(OURS + "window") || within(bundle, "org.eclipse.swt"); // the toolkit its own parts
        }
        if (within(seen, "org.osgi.framework.launch")) {
            return false; // the launcher alone, and it is no bundle
        }
        if (bundle.equals(CORE) && within(seen, "org.osgi")) {
            return false; // a library on the class path, which no service is published from
        }
        if (isContract(bundle)) {
            return within(seen, "java") || within(seen, API);
        }
        if (seen.endsWith("*")) {
            return false; // anything, ours among it
        }
        return !seen.startsWith(OURS)
                || within(seen, API)
                || within(seen, bundle)
                || PLATFORM.getOrDefault(bundle, Set.of()).stream().anyMatch(allowed -> within(seen, allowed));
    }

    private static boolean isContract(String bundle) {
        return within(bundle, API);
    }

    private static boolean within(String name, String parent) {
        return name.equals(parent) || name.startsWith(parent + ".");
    }

    /** The names of a header’s clauses, each without its attributes; commas inside quotes part nothing. */
    private static List<String> names(String header) {
        if (header == null) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        for (String clause : header.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
            for (String part : clause.split(";(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
                if (!part.contains("=")) {
                    names.add(part.strip());
                }
            }
        }
        return names;
    }
}
