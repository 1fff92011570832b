package org.hidewright.addons;

import java.io.File;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/**
 * What the launcher tells by a service of types of the JDK.
 *
 * @param states what became of each bundle that can be turned off: {@code on}, {@code off}, {@code left-out} or a sentence, by
 *     the path of its jar
 * @param platform symbolic names of what cannot be turned off
 * @param look gives the key of what is wrong with how a jar is packed; empty where nothing is
 * @param finish does a decided change of a folder of settings to its end, and gives what kept it from that; empty where nothing
 *     did
 * @param consent whether a jar has to wait until the maker was told what a bundle may do; empty where it need not
 */
record ToldByLauncher(
        Map<String, String> states,
        Set<String> platform,
        Function<File, String> look,
        Function<File, String> finish,
        Function<File, String> consent) {

    /** The launcher promises texts by texts, and functions from files to texts. */
    @SuppressWarnings("unchecked")
    static ToldByLauncher to(BundleContext context) {
        ServiceReference<?> reference = reference(context);
        return new ToldByLauncher(
                (Map<String, String>) context.getService(reference),
                Set.copyOf(List.of((String[]) reference.getProperty("hidewright.platform"))),
                (Function<File, String>) reference.getProperty("hidewright.look"),
                (Function<File, String>) reference.getProperty("hidewright.finish"),
                (Function<File, String>) reference.getProperty("hidewright.consent"));
    }

    private static ServiceReference<?> reference(BundleContext context) {
        try {
            ServiceReference<?>[] found = context.getServiceReferences(Map.class.getName(), "(hidewright.addons=true)");
            if (found == null) {
                throw new IllegalStateException("the launcher has not told what it started");
            }
            return found[0];
        } catch (InvalidSyntaxException wrongFilter) {
            throw new IllegalStateException(wrongFilter);
        }
    }
}
