package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;

/**
 * The signature that a jar carries (JAR File Specification, Signed JAR File). Nobody’s is trusted here, and none has to be
 * there; but one that is there says what was packed, and a jar that was changed since is not what its author gave away.
 */
final class Seal {

    private static final Pattern PART = Pattern.compile("META-INF/(?:[^/]+\\.(?:SF|RSA|DSA|EC)|SIG-[^/]*)");
    private static final String DIGEST = "-DIGEST";

    private Seal() {}

    /** Whether a file inside a jar belongs to a signature. */
    static boolean isPartOfOne(String name) {
        return PART.matcher(name.toUpperCase(Locale.ROOT)).matches();
    }

    /** Whether every file of a signed jar is there, is signed, and is as it was signed. */
    static boolean holds(File jar) throws IOException {
        try (JarFile signed = new JarFile(jar, true)) {
            for (Enumeration<JarEntry> all = signed.entries(); all.hasMoreElements(); ) {
                JarEntry entry = all.nextElement();
                try (InputStream in = signed.getInputStream(entry)) {
                    in.transferTo(OutputStream.nullOutputStream()); // who signed it is known once it is read
                }
                if (!isBesideTheSigned(entry) && entry.getCodeSigners() == null) {
                    return false;
                }
            }
            for (Map.Entry<String, Attributes> named :
                    signed.getManifest().getEntries().entrySet()) {
                if (isDigested(named.getValue()) && signed.getEntry(named.getKey()) == null) {
                    return false;
                }
            }
            return true;
        } catch (SecurityException changed) {
            return false;
        }
    }

    /** Folders hold nothing, and the manifest is vouched for by the signature file. */
    private static boolean isBesideTheSigned(JarEntry entry) {
        return entry.isDirectory() || entry.getName().equals(JarFile.MANIFEST_NAME) || isPartOfOne(entry.getName());
    }

    private static boolean isDigested(Attributes named) {
        for (Object name : named.keySet()) {
            if (name.toString().toUpperCase(Locale.ROOT).endsWith(DIGEST)) {
                return true;
            }
        }
        return false;
    }
}
