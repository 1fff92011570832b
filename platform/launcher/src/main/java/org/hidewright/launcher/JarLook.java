package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A look at how the jar of an add-on is packed, before the framework opens it and anything of it runs. Readers of jars believe a
 * directory at their end: they take bytes that were spoilt on the way, the one or the other of two files of one name, and
 * as much as a small jar unpacks to.
 *
 * <p>Where the workshop demands it, whose signature it carries is looked at too, see {@link Trust}.
 *
 * <p>Jars that cannot be opened at all are left to the framework, which says so.
 */
final class JarLook implements Function<File, String> {

    /** What a jar without a special ending can hold; a bundle of that many files would be several. */
    private static final int MOST_FILES = 65_535;

    private static final long MOST_BYTES = 100L << 20;

    /** Of one text, which is read whole: manifest, descriptions, messages, templates. */
    private static final long LONGEST_TEXT = 1L << 20;

    private static final Pattern TEXT = Pattern.compile(".*\\.(?:mf|xml|properties|json)");
    private static final Pattern PARTED = Pattern.compile("[/\\\\]");
    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*", Pattern.DOTALL);
    private static final Pattern FOLDED = Pattern.compile("\\r?\\n ");
    private static final Pattern HOST = Pattern.compile("(?im)^Fragment-Host:\\s*([^;,\\s]+)");
    private static final String MANIFEST = "META-INF/MANIFEST.MF";

    private final SettingsFolder settings;

    /** @param settings where it stands whose signature is demanded */
    JarLook(SettingsFolder settings) {
        this.settings = settings;
    }

    /** What is wrong with a jar, as the key of a sentence; empty where nothing is, or where it is no jar. */
    @Override
    public String apply(File jar) {
        String fault = packing(jar);
        return fault.isEmpty() ? Trust.read(settings.trust()).fault(jar) : fault;
    }

    private static String packing(File jar) {
        boolean signed = false;
        try (ZipFile zip = new ZipFile(jar)) {
            Set<String> names = new HashSet<>();
            long left = MOST_BYTES;
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                if (leadsOut(entry.getName())) {
                    return "leads-out";
                }
                if (!names.add(entry.getName())) {
                    return "doubled";
                }
                left -= entry.getSize();
                if (names.size() > MOST_FILES || left < 0 || isLongText(entry)) {
                    return "too-much";
                }
                signed |= Seal.isPartOfOne(entry.getName());
            }
            String fault = contents(zip);
            return fault.isEmpty() && signed && !Seal.holds(jar) ? "seal" : fault;
        } catch (IOException noJar) {
            return "";
        }
    }

    private static boolean leadsOut(String name) {
        for (String part : PARTED.split(name, -1)) {
            if (part.equals("..")) {
                return true;
            }
        }
        return name.startsWith("/")
                || name.startsWith("\\")
                || DRIVE.matcher(name).matches();
    }

    private static boolean isLongText(ZipEntry entry) {
        return entry.getSize() > LONGEST_TEXT
                && TEXT.matcher(entry.getName().toLowerCase(Locale.ROOT)).matches();
    }

    /** Unpacks all of it once: sizes can lie as well, so that what comes is counted against them. */
    private static String contents(ZipFile zip) throws IOException {
        byte[] some = new byte[8192];
        for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
            ZipEntry entry = all.nextElement();
            CRC32 sum = new CRC32();
            long left = entry.getSize();
            try (InputStream in = zip.getInputStream(entry)) {
                for (int read = in.read(some); read >= 0 && left >= 0; read = in.read(some)) {
                    sum.update(some, 0, read);
                    left -= read;
                }
            } catch (IOException torn) {
                return "damaged";
            }
            if (left != 0 || sum.getValue() != entry.getCrc()) {
                return "damaged";
            }
        }
        return "";
    }

    /** The bundle that a jar wants to become a part of; empty where it is one of its own. */
    static String host(File jar) {
        try (ZipFile zip = new ZipFile(jar)) {
            ZipEntry manifest = zip.getEntry(MANIFEST);
            if (manifest == null) {
                return "";
            }
            try (InputStream in = zip.getInputStream(manifest)) {
                String text = new String(in.readNBytes((int) LONGEST_TEXT), StandardCharsets.UTF_8);
                Matcher host = HOST.matcher(FOLDED.matcher(text).replaceAll(""));
                return host.find() ? host.group(1) : "";
            }
        } catch (IOException noJar) {
            return "";
        }
    }
}
