package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;

/**
 * What the system bundle offers besides the JDK: the libraries on the program’s class path, as their own manifests say.
 * They are bundles that lie there because the classes of the class path start much faster than those of a bundle.
 *
 * <p>Finding it out is dear, so that it is kept in the cache between starts, as one text of three lines: packages,
 * capabilities, activators.
 */
final class SystemExports {

    private static final String LIST = ",";

    private final String packages;
    private final String capabilities;
    private final String activators;

    private SystemExports(String packages, String capabilities, String activators) {
        this.packages = packages;
        this.capabilities = capabilities;
        this.activators = activators;
    }

    /** Reads the manifests of the bundles on the class path, all but Felix’s own. */
    static SystemExports ofLibraries(File folder) throws IOException {
        List<String> packages = new ArrayList<>();
        List<String> capabilities = new ArrayList<>();
        List<String> activators = new ArrayList<>();
        for (File library : ProgramHome.jarsIn(folder)) {
            try (JarFile jar = new JarFile(library)) {
                Manifest manifest = jar.getManifest();
                Attributes headers = manifest == null ? new Attributes() : manifest.getMainAttributes();
                String name = headers.getValue(Constants.BUNDLE_SYMBOLICNAME);
                if (name != null && !name.equals("org.apache.felix.framework")) {
                    add(packages, headers.getValue(Constants.EXPORT_PACKAGE));
                    add(capabilities, headers.getValue(Constants.PROVIDE_CAPABILITY));
                    add(activators, headers.getValue(Constants.BUNDLE_ACTIVATOR));
                }
            }
        }
        return new SystemExports(
                String.join(LIST, packages), String.join(LIST, capabilities), String.join(LIST, activators));
    }

    /** What a started framework offers altogether, the JDK’s packages among it. */
    SystemExports asResolved(Bundle system) {
        return new SystemExports(
                system.getHeaders("").get(Constants.EXPORT_PACKAGE),
                system.getHeaders("").get(Constants.PROVIDE_CAPABILITY),
                activators);
    }

    static SystemExports read(String text) {
        String[] lines = text.split("\n", -1);
        return new SystemExports(lines[0], lines[1], lines[2]);
    }

    @Override
    public String toString() {
        return packages + "\n" + capabilities + "\n" + activators;
    }

    String packages() {
        return packages;
    }

    String capabilities() {
        return capabilities;
    }

    /** Instances of the libraries’ activators, for Felix to start with the system bundle. */
    List<Object> activators() {
        List<Object> made = new ArrayList<>();
        for (String name : activators.split(LIST)) {
            try {
                if (!name.isEmpty()) {
                    made.add(Class.forName(name).getConstructor().newInstance());
                }
            } catch (ReflectiveOperationException incomplete) {
                throw new IllegalStateException(incomplete);
            }
        }
        return made;
    }

    private static void add(List<String> all, String header) {
        if (header != null) {
            all.add(header.strip());
        }
    }
}
