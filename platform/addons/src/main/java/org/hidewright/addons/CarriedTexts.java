package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.brought.TableFiles;
import org.hidewright.core.template.TemplateFiles;

/** Reads the texts that a bundle carries, off its bytes. */
final class CarriedTexts {
    private static final int LONGEST = 1 << 20;
    /** What tools of other kinds read: names of the bundle in other languages, notes of its build. */
    private static final Pattern OF_BUNDLE = Pattern.compile("(META|OSGI)-INF/.*");

    private final Map<String, String> texts = new TreeMap<>();
    private final Map<String, String> properties = new TreeMap<>();
    private boolean code;
    private Manifest manifest = new Manifest();

    private CarriedTexts() {}

    static Carried of(Candidate candidate) throws IOException {
        CarriedTexts carried = new CarriedTexts();
        try (ZipInputStream jar = new ZipInputStream(new ByteArrayInputStream(candidate.jar()))) {
            for (ZipEntry entry = jar.getNextEntry(); entry != null; entry = jar.getNextEntry()) {
                carried.read(entry.getName(), jar);
            }
        }
        return carried.as(candidate);
    }

    private void read(String name, ZipInputStream jar) throws IOException {
        code |= name.endsWith(".class");
        if (name.equals(JarFile.MANIFEST_NAME)) {
            manifest = TypedManifest.read(jar.readNBytes(LONGEST));
        } else if (name.endsWith(".json")) {
            texts.put(name, text(jar));
        } else if (name.endsWith(".properties") && !OF_BUNDLE.matcher(name).matches()) {
            properties.put(name, text(jar));
        }
    }

    private static String text(ZipInputStream jar) throws IOException {
        return new String(jar.readNBytes(LONGEST), StandardCharsets.UTF_8);
    }

    private Carried as(Candidate candidate) {
        Attributes headers = manifest.getMainAttributes();
        String templates = headers.getValue(TemplateFiles.HEADER);
        Collection<String> named = TemplateFiles.byId(templates).values();
        List<String> missing = new ArrayList<>();
        Arrays.stream(templates == null ? new String[0] : templates.split(","))
                .map(String::strip)
                .filter(path -> !path.isEmpty() && !named.contains(path))
                .forEach(missing::add);
        return new Carried(
                candidate.id(),
                candidate.described().version(),
                found(named, missing),
                found(TableFiles.paths(headers.getValue(TableFiles.HEADER)), missing),
                properties,
                List.copyOf(missing),
                code);
    }

    private Map<String, String> found(Collection<String> paths, List<String> missing) {
        Map<String, String> found = new LinkedHashMap<>();
        for (String path : paths) {
            if (texts.containsKey(path)) {
                found.put(path, texts.get(path));
            } else {
                missing.add(path);
            }
        }
        return found;
    }
}
