package org.hidewright.catalogue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.core.catalogue.CatalogueNotices;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.TextTemplate;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.BundleContext;

/** The templates that bundles carry as texts. Their ids are read off manifests; a text is read when it is looked for. */
final class TemplateBundles {
    private final BundleContext context;
    private final Function<String, Optional<DeclaredCalculator>> others;
    private final Map<String, Looked> looked = new ConcurrentHashMap<>();

    private record Looked(CarriedText.Stamp stamp, Optional<Installed> installed, List<Remark> problems) {}

    /** @param others finds the calculators that draw */
    TemplateBundles(BundleContext context, Function<String, Optional<DeclaredCalculator>> others) {
        this.context = context;
        this.others = others;
    }

    /** A file, by the id of its template. */
    record Named(String id, CarriedText file) {}

    /** All files in the order of the {@link Precedence} of their bundles; of two with one id the first is meant. */
    List<Named> all() {
        return CarriedText.bundles(context)
                .flatMap(bundle ->
                        TemplateFiles.byId(bundle.getHeaders("").get(TemplateFiles.HEADER)).entrySet().stream()
                                .map(named -> new Named(named.getKey(), new CarriedText(bundle, named.getValue()))))
                .toList();
    }

    Optional<Installed> find(String id, CarriedText file) {
        return look(id, file).installed();
    }

    /** What is wrong with templates that were looked for and cannot be used. */
    List<Remark> problems() {
        looked.keySet().retainAll(all().stream().map(Named::id).toList());
        return looked.values().stream()
                .flatMap(found -> found.problems().stream())
                .toList();
    }

    private Looked look(String id, CarriedText file) {
        CarriedText.Stamp stamp = file.stamp();
        return looked.compute(
                id, (same, before) -> before != null && before.stamp().equals(stamp) ? before : read(id, file, stamp));
    }

    private static Looked unusable(CarriedText file, CarriedText.Stamp stamp, List<Remark> why) {
        List<Remark> problems = new ArrayList<>();
        problems.add(Services.remark(CatalogueNotices.INVALID_TEMPLATE.with(file.name(), file.path())));
        problems.addAll(why);
        return new Looked(stamp, Optional.empty(), problems);
    }

    private Looked read(String id, CarriedText file, CarriedText.Stamp stamp) {
        TemplateReader.Result result;
        try {
            result = TemplateReader.read(file.read(), others);
        } catch (IOException | IllegalStateException gone) { // the latter where its bundle goes meanwhile
            return unusable(
                    file, stamp, List.of(Services.remark(CatalogueNotices.TEMPLATE_NOT_THERE.with(file.path()))));
        }
        Optional<TextTemplate> template = result.template().map(read -> read.translated(file::beside));
        if (template.isEmpty()) {
            return unusable(file, stamp, result.remarks());
        }
        String own = template.get().declaration().id();
        List<Remark> told = new ArrayList<>(result.remarks());
        file.lost()
                .ifPresent(folder -> told.add(
                        Services.remark(CatalogueNotices.FOLLOWED_GONE.with(file.name(), file.path(), folder))));
        return own.equals(id)
                ? new Looked(stamp, template.map(read -> new Installed(read, file.name())), told)
                : unusable(file, stamp, List.of(Services.remark(CatalogueNotices.OTHER_ID.with(file.name(), id, own))));
    }
}
