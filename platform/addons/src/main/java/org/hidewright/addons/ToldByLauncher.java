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
 */
record ToldByLauncher(Map<String, String> states, Set<String> platform, Function<File, String> look) {

    /** The launcher promises texts by texts, and a function from files to texts. */
    @SuppressWarnings("unchecked")
    static ToldByLauncher to(BundleContext context) {
        ServiceReference<?> reference = reference(context);
        return new ToldByLauncher(
                (Map<String, String>) context.getService(reference),
                Set.copyOf(List.of((String[]) reference.getProperty("hidewright.platform"))),
                (Function<File, String>) reference.getProperty("hidewright.look"));
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
