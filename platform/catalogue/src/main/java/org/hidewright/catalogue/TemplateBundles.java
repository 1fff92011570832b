package org.hidewright.catalogue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.TextTemplate;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** The templates that bundles carry as texts. Their ids are read off manifests; a text is read when it is looked for. */
final class TemplateBundles {
    private static final int LONGEST = 1 << 20;

    private final BundleContext context;
    private final Function<String, Optional<DeclaredCalculator>> others;
    private final Map<String, Looked> looked = new ConcurrentHashMap<>();

    /** A template’s file. */
    record File(Bundle bundle, String path) {
        String name() {
            return bundle.getSymbolicName();
        }

        /** Where its author has it read from. */
        Optional<Path> followed() {
            return Optional.ofNullable(bundle.getHeaders("").get(TemplateFiles.FOLLOWS))
                    .map(Path::of)
                    .map(folder -> folder.resolve(path).normalize())
                    .filter(file -> file.startsWith(bundle.getHeaders("").get(TemplateFiles.FOLLOWS)))
                    .filter(Files::isRegularFile);
        }

        InputStream open() throws IOException {
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

    /** What a text was read from: where this changes, it is read again. */
    private record Stamp(long bundle, String changed) {
        static Stamp of(File file) {
            String changed = file.followed()
                    .map(path -> {
                        try {
                            return Files.getLastModifiedTime(path) + " " + Files.size(path);
                        } catch (IOException gone) {
                            return "";
                        }
                    })
                    .orElse("");
            return new Stamp(file.bundle().getBundleId(), changed);
        }
    }

    private record Looked(Stamp stamp, Optional<Installed> installed, List<Remark> problems) {}

    /** @param others finds the calculators that draw */
    TemplateBundles(BundleContext context, Function<String, Optional<DeclaredCalculator>> others) {
        this.context = context;
        this.others = others;
    }

    /** The files by the ids of their templates; of two with one id that of the bundle installed first. */
    Map<String, File> byId() {
        Map<String, File> byId = new TreeMap<>();
        Arrays.stream(context.getBundles())
                .filter(bundle -> (bundle.getState() & (Bundle.RESOLVED | Bundle.STARTING | Bundle.ACTIVE)) != 0)
                .sorted(Comparator.comparingLong(Bundle::getBundleId))
                .forEach(bundle -> TemplateFiles.byId(bundle.getHeaders("").get(TemplateFiles.HEADER))
                        .forEach((id, path) -> byId.putIfAbsent(id, new File(bundle, path))));
        return byId;
    }

    Optional<Installed> find(String id) {
        return Optional.ofNullable(byId().get(id))
                .flatMap(file -> look(id, file).installed());
    }

    /** What is wrong with templates that were looked for and cannot be used. */
    List<Remark> problems() {
        looked.keySet().retainAll(byId().keySet());
        return looked.values().stream()
                .flatMap(found -> found.problems().stream())
                .toList();
    }

    private Looked look(String id, File file) {
        Stamp stamp = Stamp.of(file);
        return looked.compute(
                id, (same, before) -> before != null && before.stamp().equals(stamp) ? before : read(id, file, stamp));
    }

    private static Looked unusable(File file, Stamp stamp, List<Remark> why) {
        List<Remark> problems = new ArrayList<>();
        problems.add(Services.remark(CatalogueNotices.INVALID_TEMPLATE.with(file.name(), file.path())));
        problems.addAll(why);
        return new Looked(stamp, Optional.empty(), problems);
    }

    private Looked read(String id, File file, Stamp stamp) {
        TemplateReader.Result result;
        try (InputStream in = file.open()) {
            result = TemplateReader.read(new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8), others);
        } catch (IOException | IllegalStateException gone) { // the latter where its bundle goes meanwhile
            return unusable(
                    file, stamp, List.of(Services.remark(CatalogueNotices.TEMPLATE_NOT_THERE.with(file.path()))));
        }
        Optional<TextTemplate> template = result.template();
        if (template.isEmpty()) {
            return unusable(file, stamp, result.remarks());
        }
        String own = template.get().declaration().id();
        return own.equals(id)
                ? new Looked(stamp, template.map(read -> new Installed(read, file.name())), result.remarks())
                : unusable(file, stamp, List.of(Services.remark(CatalogueNotices.OTHER_ID.with(file.name(), id, own))));
    }
}
