package org.hidewright.catalogue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/**
 * Which of two bundles keeps an id that both bring: what came with the program before what was installed, then by name. It says
 * the same at each start, whenever a bundle came, and in a window that goes on running.
 */
final class Precedence {
    private Precedence() {}

    static Comparator<Bundle> of(BundleContext context) {
        Optional<String> installed = Optional.ofNullable(context.getProperty("hidewright.settings"))
                .map(settings -> "reference:"
                        + Path.of(settings, "addons")
                                .toFile()
                                .toURI()
                                .toASCIIString()
                                .replaceAll("/$", "") + "/");
        return Comparator.<Bundle, Boolean>comparing(bundle -> installed
                        .filter(folder -> String.valueOf(bundle.getLocation()).startsWith(folder))
                        .isPresent())
                .thenComparing(bundle -> String.valueOf(bundle.getSymbolicName()))
                .thenComparing(Bundle::getBundleId);
    }
}
