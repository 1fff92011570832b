package org.hidewright.catalogue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.core.template.TemplateFiles;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** A text that a bundle carries and its manifest names; where its author has its folder followed, as it stands there now. */
record CarriedText(Bundle bundle, String path) {
    private static final int LONGEST = 1 << 20;

    /** The bundles that can be asked for their texts, in the order of their {@link Precedence}. */
    static Stream<Bundle> bundles(BundleContext context) {
        return Arrays.stream(context.getBundles())
                .filter(bundle -> (bundle.getState() & (Bundle.RESOLVED | Bundle.STARTING | Bundle.ACTIVE)) != 0)
                .sorted(Precedence.of(context));
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

    /** The folder that is followed where the text does not lie in it any more; empty where it does, or none is followed. */
    Optional<String> lost() {
        return followed().isPresent()
                ? Optional.empty()
                : Optional.ofNullable(bundle.getHeaders("").get(TemplateFiles.FOLLOWS));
    }

    /** What it is read from: where this changes, it is read again. */
    record Stamp(long bundle, String path, String changed) {}

    Stamp stamp() {
        return new Stamp(
                bundle.getBundleId(), path, followed().map(CarriedText::changed).orElse(""));
    }

    /** Of a file that its author writes on, and of those beside it that say it in other languages. */
    private static String changed(Path file) {
        String name = file.getFileName().toString().replaceFirst("\\.json$", "");
        StringBuilder changed = new StringBuilder();
        try (DirectoryStream<Path> beside =
                Files.newDirectoryStream(file.getParent(), name + "{.json,_*.properties}")) {
            List<Path> sorted = new ArrayList<>();
            beside.forEach(sorted::add);
            sorted.sort(null);
            for (Path one : sorted) {
                changed.append(one.getFileName())
                        .append(Files.getLastModifiedTime(one))
                        .append(Files.size(one));
            }
        } catch (IOException | DirectoryIteratorException gone) {
            return "";
        }
        return changed.toString();
    }

    /** The text; of one that is too long, as much as is read of any. */
    String read() throws IOException {
        try (InputStream in = open()) {
            return new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8);
        }
    }

    /** The text of the file whose name is this one’s with another ending; empty where there is none. */
    Optional<String> beside(String ending) {
        CarriedText file = new CarriedText(bundle, path.replaceFirst("\\.json$", "") + ending);
        try {
            return Optional.of(file.read());
        } catch (IOException | IllegalStateException none) { // the latter where its bundle goes meanwhile
            return Optional.empty();
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
