package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.osgi.framework.Constants;

/** What the bundles that are turned off would offer, looked up where another does not start. */
final class TurnedOff {
    /** A comma that stands in no quotes. */
    private static final String COMMA = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private final List<File> jars;

    TurnedOff(List<File> jars) {
        this.jars = jars;
    }

    /** The one that is a bundle of this name, or null. */
    String called(String bundle) {
        for (File jar : jars) {
            if (bundle.equals(name(head(jar)))) {
                return bundle;
            }
        }
        return null;
    }

    /** The name of one that exports a package, or null. */
    String exporting(String wanted) {
        for (File jar : jars) {
            Attributes head = head(jar);
            String exports = head.getValue(Constants.EXPORT_PACKAGE);
            for (String export : exports == null ? new String[0] : exports.split(COMMA)) {
                for (String part : export.split(";")) {
                    if (wanted.equals(part.strip())) {
                        return name(head);
                    }
                }
            }
        }
        return null;
    }

    private static String name(Attributes head) {
        String name = head.getValue(Constants.BUNDLE_SYMBOLICNAME);
        return name == null ? "" : name.split(";", 2)[0].strip();
    }

    private static Attributes head(File jar) {
        try (JarFile file = new JarFile(jar, false)) {
            Manifest manifest = file.getManifest();
            return manifest == null ? new Attributes() : manifest.getMainAttributes();
        } catch (IOException unreadable) {
            return new Attributes();
        }
    }
}
