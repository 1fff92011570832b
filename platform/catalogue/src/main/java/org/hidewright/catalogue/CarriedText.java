package org.hidewright.catalogue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.core.template.TemplateFiles;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** A text that a bundle carries and its manifest names; where its author has its folder followed, as it stands there now. */
record CarriedText(Bundle bundle, String path) {
    private static final int LONGEST = 1 << 20;

    /** The bundles that can be asked for their texts, the one installed first before others. */
    static Stream<Bundle> bundles(BundleContext context) {
        return Arrays.stream(context.getBundles())
                .filter(bundle -> (bundle.getState() & (Bundle.RESOLVED | Bundle.STARTING | Bundle.ACTIVE)) != 0)
                .sorted(Comparator.comparingLong(Bundle::getBundleId));
    }

    String name() {
        return bundle.getSymbolicName();
    }

    /** Where its author has it read from. */
    private Optional<Path> followed() {
        return Optional.ofNullable(bundle.getHeaders("").get(TemplateFiles.FOLLOWS))
                .map(Path::of)
                .map(folder -> folder.resolve(path).normalize())
                .filter(file -> file.startsWith(bundle.getHeaders("").get(TemplateFiles.FOLLOWS)))
                .filter(Files::isRegularFile);
    }

    /** What it is read from: where this changes, it is read again. */
    record Stamp(long bundle, String path, String changed) {}

    Stamp stamp() {
        String changed = followed()
                .map(file -> {
                    try {
                        return Files.getLastModifiedTime(file) + " " + Files.size(file);
                    } catch (IOException gone) {
                        return "";
                    }
                })
                .orElse("");
        return new Stamp(bundle.getBundleId(), path, changed);
    }

    /** The text; of one that is too long, as much as is read of any. */
    String read() throws IOException {
        try (InputStream in = open()) {
            return new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8);
        }
    }

    private InputStream open() throws IOException {
        Optional<Path> followed = followed();
        if (followed.isPresent()) {
            return Files.newInputStream(followed.get());
        }
        URL entry = bundle.getEntry(path);
        if (entry == null) {
            throw new FileNotFoundException(path);
        }
        return entry.openStream();
    }
}
