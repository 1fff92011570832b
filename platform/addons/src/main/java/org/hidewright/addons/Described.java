package org.hidewright.addons;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.brought.TableFiles;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.template.TemplateFiles;
import org.osgi.framework.Constants;
import org.osgi.framework.Version;

/**
 * What a bundle says of itself without any of its code: in its manifest, and in the descriptions of its components.
 *
 * @param id its symbolic name, which can also be the name of a file
 * @param name what its author calls it
 * @param maker who made it; empty where it says nothing
 * @param version its version, without the qualifier of a build
 * @param components what it publishes
 * @param host the bundle it wants to become a part of; empty where it is one of its own
 * @param follows whether it names a folder to read templates from
 * @param headers all that stands at the head of its manifest
 */
record Described(
        String id,
        String name,
        String maker,
        String version,
        Components components,
        String host,
        boolean follows,
        Map<String, String> headers) {
    private static final int LONGEST = 1 << 20;
    /** OSGi Core 8, section 1.3.2: a symbolic name. */
    private static final Pattern SYMBOLIC_NAME = Pattern.compile("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*");

    /**
     * Reads what a file or a folder says of itself.
     *
     * @param named what the maker calls it
     * @throws FileTrouble if it is no bundle
     * @throws IOException if it cannot be read
     */
    static Described read(Path named, Entries entries) throws IOException, FileTrouble {
        Attributes headers = headers(named, entries);
        String symbolic = headers.getValue(Constants.BUNDLE_SYMBOLICNAME);
        if (symbolic == null) {
            throw Trouble.of(AddOnNotices.ADD_ON_NO_BUNDLE.with(named.toString()));
        }
        String id = clause(symbolic);
        if (!SYMBOLIC_NAME.matcher(id).matches()) {
            throw Trouble.of(AddOnNotices.ADD_ON_BAD_NAME.with(named.toString(), id));
        }
        String maker = headers.getValue(Constants.BUNDLE_VENDOR);
        String called = headers.getValue(Constants.BUNDLE_NAME);
        return new Described(
                id,
                called == null || called.isBlank() ? id : called.strip(),
                maker == null ? "" : maker.strip(),
                version(named, headers),
                Components.read(headers.getValue("Service-Component"), entries)
                        .with(
                                TemplateFiles.byId(headers.getValue(TemplateFiles.HEADER))
                                        .keySet(),
                                tables(headers.getValue(TableFiles.HEADER), entries)),
                clause(headers.getValue(Constants.FRAGMENT_HOST)),
                headers.getValue(TemplateFiles.FOLLOWS) != null,
                texts(headers));
    }

    /** Whether a manifest names one at all. */
    static boolean isBundle(Entries entries) throws IOException {
        if (!entries.names().contains(JarFile.MANIFEST_NAME)) {
            return false;
        }
        try (InputStream in = entries.open(JarFile.MANIFEST_NAME)) {
            return TypedManifest.read(in.readNBytes(LONGEST))
                            .getMainAttributes()
                            .getValue(Constants.BUNDLE_SYMBOLICNAME)
                    != null;
        }
    }

    /** The bundle as it is told of. */
    AddOn addOn(AddOn.Origin origin, AddOn.State state, String why, Path jar) {
        return new AddOn(
                id, name, maker, version, origin, state, why, components.calculators(), components.tables(), jar);
    }

    /** What cannot be read says nothing but the name of its file. */
    static Described nameless(String file) {
        return new Described(file, file, "", "", new Components(List.of(), List.of()), "", false, Map.of());
    }

    private static Map<String, String> texts(Attributes headers) {
        Map<String, String> texts = new TreeMap<>();
        headers.forEach((name, value) -> texts.put(name.toString(), value.toString()));
        return texts;
    }

    /** Tables that are carried as texts. */
    private static Set<String> tables(String header, Entries entries) throws IOException {
        Set<String> tables = new HashSet<>();
        List<String> names = entries.names();
        for (String path : TableFiles.paths(header)) {
            if (names.contains(path)) {
                try (InputStream in = entries.open(path)) {
                    tables.addAll(TableFiles.tables(new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8)));
                }
            }
        }
        return tables;
    }

    /** A header’s value without what stands behind its semicolons; empty where there is none. */
    private static String clause(String value) {
        return value == null ? "" : value.split(";", 2)[0].strip();
    }

    private static Attributes headers(Path named, Entries entries) throws IOException, FileTrouble {
        if (!entries.names().contains(JarFile.MANIFEST_NAME)) {
            throw Trouble.of(AddOnNotices.ADD_ON_NO_BUNDLE.with(named.toString()));
        }
        try (InputStream in = entries.open(JarFile.MANIFEST_NAME)) {
            byte[] manifest = in.readNBytes(LONGEST);
            mustNotContradictItself(manifest);
            return TypedManifest.read(manifest).getMainAttributes();
        }
    }

    /** The JDK would take the last of two and print a warning. */
    private static void mustNotContradictItself(byte[] manifest) throws IOException {
        Set<String> names = new HashSet<>();
        for (String line : new String(manifest, StandardCharsets.UTF_8).split("\\R")) {
            if (line.isEmpty()) {
                return; // the headers of the bundle end here
            }
            int colon = line.indexOf(':');
            if (colon > 0
                    && !line.startsWith(" ")
                    && !names.add(line.substring(0, colon).toLowerCase(Locale.ROOT))) {
                throw new IOException(line.substring(0, colon) + " stands twice in its manifest");
            }
        }
    }

    private static String version(Path named, Attributes headers) throws FileTrouble {
        String given = headers.getValue(Constants.BUNDLE_VERSION);
        try {
            Version version = Version.parseVersion(given);
            return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
        } catch (IllegalArgumentException e) {
            throw Trouble.of(AddOnNotices.ADD_ON_BAD_VERSION.with(named.toString(), given));
        }
    }
}
