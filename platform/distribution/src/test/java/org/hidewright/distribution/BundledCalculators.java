package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.api.workshop.WorkshopTable;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.template.TemplateReader;

/** The calculators that are shipped, found without a framework and without naming one. */
final class BundledCalculators {
    private static final Pattern IMPLEMENTATION = Pattern.compile("implementation class=\"([^\"]+)\"");

    private BundledCalculators() {}

    /** The calculators of all bundles on the class path, as their manifests name them. */
    static Catalogue catalogue() throws Exception {
        List<DeclaredCalculator> calculators = new ArrayList<>();
        for (Object service : services()) {
            if (service instanceof Calculator<?, ?> calculator) {
                calculators.add(RecordCalculator.of(calculator));
            }
        }
        templates(calculators).forEach(calculators::add);
        assertTrue(calculators.size() > 10, "only " + calculators.size() + " calculators on the class path");
        return Catalogue.of("bundled", calculators.toArray(DeclaredCalculator[]::new));
    }

    /** The tables that the bundles on the class path bring to the workshop. */
    static List<DeclaredTable> tables() throws Exception {
        List<DeclaredTable> tables = new ArrayList<>();
        for (Object service : services()) {
            if (service instanceof WorkshopTable<?> table) {
                tables.add(DeclaredTable.of(table));
            }
        }
        return tables;
    }

    /** What adds papers, of all bundles on the class path. */
    static List<Contributor> contributors() throws Exception {
        List<Contributor> contributors = new ArrayList<>();
        for (Object service : services()) {
            if (service instanceof SectionContributor contributor) {
                contributors.add(new Contributor(service.getClass().getPackageName(), contributor::sections));
            }
        }
        assertTrue(contributors.size() > 1, contributors.toString());
        return contributors;
    }

    /** One of each component of the bundles on the class path. */
    private static List<Object> services() throws Exception {
        List<Object> services = new ArrayList<>();
        ClassLoader loader = BundledCalculators.class.getClassLoader();
        for (URL manifest : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
            try (InputStream in = manifest.openStream()) {
                String components = new Manifest(in).getMainAttributes().getValue("Service-Component");
                for (String component : components == null ? new String[0] : components.split(",")) {
                    service(loader, component).ifPresent(services::add);
                }
            }
        }
        return services;
    }

    /** Templates that are texts, beside the calculators that they ask. */
    private static List<DeclaredCalculator> templates(List<DeclaredCalculator> calculators) throws Exception {
        Map<String, DeclaredCalculator> byId = new HashMap<>();
        calculators.forEach(one -> byId.put(one.declaration().id(), one));
        List<DeclaredCalculator> templates = new ArrayList<>();
        ClassLoader loader = BundledCalculators.class.getClassLoader();
        for (URL manifest : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
            try (InputStream in = manifest.openStream()) {
                String header = new Manifest(in).getMainAttributes().getValue(TemplateFiles.HEADER);
                for (String path : TemplateFiles.byId(header).values()) {
                    try (InputStream text = loader.getResourceAsStream(path)) {
                        TemplateReader.Result read = TemplateReader.read(
                                new String(text.readAllBytes(), StandardCharsets.UTF_8),
                                id -> Optional.ofNullable(byId.get(id)));
                        templates.add(read.template()
                                .orElseThrow(() -> new AssertionError(path + read.remarks()))
                                .translated(ending -> text(loader, path.replace(".json", ending))));
                    }
                }
            }
        }
        return templates;
    }

    private static Optional<String> text(ClassLoader loader, String path) {
        try (InputStream text = loader.getResourceAsStream(path)) {
            return text == null
                    ? Optional.empty()
                    : Optional.of(new String(text.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Empty for the components of the program, which need it around them. */
    private static Optional<Object> service(ClassLoader loader, String component) throws Exception {
        try (InputStream in = loader.getResourceAsStream(component)) {
            Matcher named = IMPLEMENTATION.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            assertTrue(named.find(), component);
            Class<?> type = loader.loadClass(named.group(1));
            boolean looked = Stream.of(Calculator.class, SectionContributor.class, WorkshopTable.class)
                    .anyMatch(kind -> kind.isAssignableFrom(type));
            return looked ? Optional.of(type.getConstructor().newInstance()) : Optional.empty();
        }
    }
}
