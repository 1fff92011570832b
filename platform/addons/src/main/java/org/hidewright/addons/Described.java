package org.hidewright.addons;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
 * @param names the same in other languages, by their codes
 * @param maker who made it; empty where it says nothing
 * @param version its version, without the qualifier of a build
 * @param components what it publishes
 * @param asks ids of calculators that its texts draw with or ask, and that it does not bring itself
 * @param code whether it has code, and not texts alone
 * @param host the bundle it wants to become a part of; empty where it is one of its own
 * @param follows the folder that it names to read its texts from; empty where it names none
 * @param headers all that stands at the head of its manifest
 */
record Described(
        String id,
        String name,
        Map<String, String> names,
        String maker,
        String version,
        Components components,
        List<String> asks,
        boolean code,
        String host,
        String follows,
        Map<String, String> headers) {
    private static final int LONGEST = 1 << 20;
    /** OSGi Core 8, section 1.3.2: a symbolic name. */
    private static final Pattern SYMBOLIC_NAME = Pattern.compile("[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*");

    private static final List<String> CODE = List.of(
            Constants.BUNDLE_ACTIVATOR,
            Constants.BUNDLE_CLASSPATH,
            Constants.BUNDLE_NATIVECODE,
            Constants.FRAGMENT_HOST,
            "Service-Component");

    /** Texts, what signs a jar, and folders. */
    private static final Pattern NO_CODE =
            Pattern.compile(".*(/|\\.(json|md|properties|txt))|META-INF/[^/]*\\.(MF|SF|RSA|DSA|EC)");

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
        Map<String, String> names =
                new TreeMap<>(HeaderWords.of(headers.getValue(Constants.BUNDLE_NAME), headers, entries));
        String name = names.remove("");
        String follows = headers.getValue(TemplateFiles.FOLLOWS);
        Map<String, String> templates = TemplateFiles.byId(headers.getValue(TemplateFiles.HEADER));
        Components components = Components.read(headers.getValue("Service-Component"), entries)
                .with(templates.keySet(), tables(headers.getValue(TableFiles.HEADER), entries));
        return new Described(
                id,
                name == null ? id : name,
                names,
                maker == null ? "" : maker.strip(),
                version(named, headers),
                components,
                asked(templates.values(), entries).stream()
                        .filter(asked -> !components.calculators().contains(asked))
                        .toList(),
                hasCode(headers, entries),
                clause(headers.getValue(Constants.FRAGMENT_HOST)),
                follows == null ? "" : follows,
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
                id,
                name,
                maker,
                version,
                origin,
                state,
                why,
                components.calculators(),
                components.tables(),
                asks,
                code,
                follows,
                jar,
                names);
    }

    /** What cannot be read says nothing but the name of its file. */
    static Described nameless(String file) {
        return new Described(
                file, file, Map.of(), "", "", new Components(List.of(), List.of()), List.of(), true, "", "", Map.of());
    }

    /** Texts alone are what names them and holds nothing else: other files may be code, and what a manifest calls code is. */
    private static boolean hasCode(Attributes headers, Entries entries) throws IOException {
        return headers.getValue(TemplateFiles.HEADER) == null && headers.getValue(TableFiles.HEADER) == null
                || CODE.stream().anyMatch(header -> headers.getValue(header) != null)
                || !entries.names().stream()
                        .allMatch(name -> NO_CODE.matcher(name).matches());
    }

    private static Map<String, String> texts(Attributes headers) {
        Map<String, String> texts = new TreeMap<>();
        headers.forEach((name, value) -> texts.put(name.toString(), value.toString()));
        return texts;
    }

    /** Tables that are carried as texts. */
    private static Set<String> tables(String header, Entries entries) throws IOException {
        Set<String> tables = new HashSet<>();
        for (String text : carried(TableFiles.paths(header), entries)) {
            tables.addAll(TableFiles.tables(text));
        }
        return tables;
    }

    /** What templates that are texts draw with or ask. */
    private static Set<String> asked(Collection<String> paths, Entries entries) throws IOException {
        Set<String> asked = new TreeSet<>();
        for (String text : carried(paths, entries)) {
            asked.addAll(TemplateFiles.asked(text));
        }
        return asked;
    }

    private static List<String> carried(Collection<String> paths, Entries entries) throws IOException {
        List<String> texts = new ArrayList<>();
        List<String> names = entries.names();
        for (String path : paths) {
            if (names.contains(path)) {
                try (InputStream in = entries.open(path)) {
                    texts.add(new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
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
