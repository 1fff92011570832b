package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Hashtable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

class ServiceCatalogueTest {
    private static final Guard GUARD = new ThreadGuard(5);
    private final BundleContext context = context();
    private final ServiceCatalogue catalogue = new ServiceCatalogue(
            context, new ServiceTables(context, GUARD), new ServiceSections(context, GUARD), GUARD);

    private static BundleContext context() {
        BundleContext context = mock(BundleContext.class);
        when(context.getBundles()).thenReturn(new Bundle[0]);
        return context;
    }

    @Calculates("spoilt")
    static final class Spoilt implements Calculator<Spoilt.Asks, Spoilt.Gives> {
        record Asks(int notAnnotated) {}

        record Gives(@Answered int number) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            throw new UnsupportedOperationException();
        }
    }

    record Asks(@Asked(preset = "1") int number) {}

    record Gives(@Answered int number) {}

    @Calculates("punch")
    static final class Punch implements Calculator<Asks, Gives> {
        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.number()));
        }
    }

    @Calculates("bevel")
    static final class Bevel implements Calculator<Asks, Gives> {
        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.number()));
        }
    }

    private static List<String> keys(List<Remark> remarks) {
        return remarks.stream()
                .map(remark -> remark.key().replaceFirst("^notice\\.", ""))
                .toList();
    }

    private static String said(Remark remark) {
        Wording english = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return english.what(remark) + " " + english.why(remark);
    }

    @SuppressWarnings("unchecked")
    private ServiceReference<Calculator<?, ?>> published(long bundleId, String bundleName, String id) {
        ServiceReference<Calculator<?, ?>> reference = mock(ServiceReference.class);
        Bundle bundle = mock(Bundle.class);
        when(bundle.getBundleId()).thenReturn(bundleId);
        when(bundle.getSymbolicName()).thenReturn(bundleName);
        when(reference.getBundle()).thenReturn(bundle);
        when(reference.getProperty(Calculates.ID_PROPERTY)).thenReturn(id);
        catalogue.bind(reference);
        return reference;
    }

    private void gives(ServiceReference<Calculator<?, ?>> reference, Calculator<?, ?> calculator) {
        when(context.<Calculator<?, ?>>getService(reference)).thenAnswer(call -> calculator);
    }

    @Test
    void whatGoesWhileItIsLookedAtIsLetGoOf() throws Exception {
        ServiceReference<Calculator<?, ?>> reference = published(7, "org.example.b", "punch");
        when(context.<Calculator<?, ?>>getService(reference)).thenAnswer(call -> {
            catalogue.unbind(reference);
            return new Punch();
        });
        assertTrue(catalogue.find("punch").isPresent());
        assertTrue(catalogue.find("punch").isEmpty());
        catalogue.bind(reference);
        catalogue.find("punch");
        verify(context, times(2)).getService(reference);
    }

    @Test
    void aServiceThatHasJustGoneIsPassedOver() {
        when(published(7, "org.example.b", "punch").getBundle()).thenReturn(null);
        published(5, "org.example.a", "bevel");
        assertEquals(List.of("bevel"), catalogue.ids());
    }

    @Test
    void listingWhatIsInstalledLoadsNothing() {
        published(7, "org.example.b", "punch");
        published(5, "org.example.a", "bevel");
        assertEquals(List.of("bevel", "punch"), catalogue.ids());
        verify(context, never()).getService(any());
        assertEquals(List.of(), catalogue.problems());
    }

    @Test
    void aCalculatorIsLoadedOnceWhenItIsLookedFor() {
        ServiceReference<Calculator<?, ?>> reference = published(7, "org.example.b", "bevel");
        gives(reference, new Bevel());
        Installed installed = catalogue.find("bevel").orElseThrow();
        assertEquals("org.example.b", installed.bundle());
        assertEquals("bevel", installed.id());
        assertSame(installed, catalogue.find("bevel").orElseThrow());
        verify(context, times(1)).getService(reference);
        assertTrue(catalogue.find("nowhere").isEmpty());
    }

    private static final String TEXT = """
            {"template": 1, "id": "bevel", "title": "Bevel", "purpose": "A strip.", "questions": [], "answers": [],
             "draws": {"calculator": "parts", "questions": {"parts": []}}}
            """;

    @TempDir
    Path folder;

    /** A bundle that carries a text, in the order of the framework. */
    private Bundle carrying(long id, String name, String location) throws Exception {
        Bundle bundle = mock(Bundle.class);
        when(bundle.getBundleId()).thenReturn(id);
        when(bundle.getSymbolicName()).thenReturn(name);
        when(bundle.getLocation()).thenReturn(location);
        when(bundle.getHeaders("")).thenReturn(new Hashtable<>(Map.of(TemplateFiles.HEADER, "bevel.json")));
        when(bundle.getState()).thenReturn(Bundle.ACTIVE);
        when(bundle.getEntry("bevel.json"))
                .thenReturn(Files.writeString(folder.resolve(name + ".json"), TEXT)
                        .toUri()
                        .toURL());
        return bundle;
    }

    /** Whichever came first, it is the same at each start: the name decides. */
    @Test
    void ofTwoWithOneIdTheFirstByNameIsUsedAndTheOtherIsTold() {
        ServiceReference<Calculator<?, ?>> other = published(3, "org.example.nets", "bevel");
        ServiceReference<Calculator<?, ?>> keeps = published(9, "org.example.mats", "bevel");
        gives(other, new Bevel());
        gives(keeps, new Bevel());
        assertEquals("org.example.mats", catalogue.find("bevel").orElseThrow().bundle());
        assertEquals(List.of("bevel"), catalogue.ids());
        assertEquals(List.of("id-taken"), keys(catalogue.problems()));
        String said = said(catalogue.problems().get(0));
        assertTrue(said.startsWith("Bundle org.example.nets brings another calculator called “bevel”."), said);
        assertTrue(said.contains("the one of org.example.mats is used"), said);
    }

    @Test
    void ofTwoTextsWithOneIdTheOtherIsToldToo() throws Exception {
        Bundle nets = carrying(3, "org.example.nets", "");
        Bundle mats = carrying(9, "org.example.mats", "");
        when(context.getBundles()).thenReturn(new Bundle[] {nets, mats});
        assertEquals("org.example.mats", catalogue.find("bevel").orElseThrow().bundle());
        assertEquals(List.of("bevel"), catalogue.ids());
        assertEquals(List.of("id-taken"), keys(catalogue.problems()));
        assertTrue(said(catalogue.problems().get(0)).startsWith("Bundle org.example.nets brings another"));
    }

    @Test
    void aTextOfTheProgramKeepsItsIdFromCodeThatWasInstalled() throws Exception {
        when(context.getProperty("hidewright.settings")).thenReturn("/bench");
        Bundle ours = carrying(3, "org.hidewright.straps", "reference:file:/program/straps.jar");
        when(context.getBundles()).thenReturn(new Bundle[] {ours});
        ServiceReference<Calculator<?, ?>> strange = published(2, "net.example.straps", "bevel");
        when(strange.getBundle().getLocation()).thenReturn("reference:file:/bench/addons/net.example.straps.jar");
        gives(strange, new Bevel());
        assertEquals(
                "org.hidewright.straps", catalogue.find("bevel").orElseThrow().bundle());
        assertEquals(List.of("id-taken"), keys(catalogue.problems()));
        assertTrue(said(catalogue.problems().get(0)).startsWith("Bundle net.example.straps brings another"));
    }

    @Test
    void whenTheFirstIsTakenOutTheOtherStepsInAndNothingIsToldAnyMore() {
        ServiceReference<Calculator<?, ?>> first = published(9, "org.example.first", "bevel");
        ServiceReference<Calculator<?, ?>> late = published(3, "org.example.late", "bevel");
        gives(late, new Bevel());
        gives(first, new Bevel());
        catalogue.ids();
        catalogue.unbind(first);
        assertEquals("org.example.late", catalogue.find("bevel").orElseThrow().bundle());
        assertEquals(List.of(), catalogue.problems());
    }

    @Test
    void aDeclarationThatIsNoneIsToldWithItsBundleAndItsClass() {
        gives(published(3, "org.example.spoilt", "spoilt"), new Spoilt());
        assertTrue(catalogue.find("spoilt").isEmpty());
        assertEquals(List.of("invalid-declaration"), keys(catalogue.problems()));
        String said = said(catalogue.problems().get(0));
        assertTrue(said.contains("org.example.spoilt") && said.contains("notAnnotated: annotate it with @Asked"), said);
    }

    @Test
    void oneThatDoesNotStartIsToldAndTheRestWorks() {
        ServiceReference<Calculator<?, ?>> dead = published(3, "org.example.dead", "dead");
        when(context.<Calculator<?, ?>>getService(dead)).thenThrow(new NoClassDefFoundError("org/example/Gone"));
        published(4, "org.example.silent", "silent");
        gives(published(5, "org.example.kit", "punch"), new Punch());
        assertTrue(catalogue.find("dead").isEmpty());
        assertTrue(catalogue.find("silent").isEmpty());
        assertTrue(catalogue.find("punch").isPresent());
        assertEquals(List.of("did-not-start", "no-service"), keys(catalogue.problems()));
        assertTrue(said(catalogue.problems().get(0)).contains("org/example/Gone"));
    }

    @Test
    void troubleGoesWithTheBundleThatMadeIt() {
        ServiceReference<Calculator<?, ?>> spoilt = published(3, "org.example.spoilt", "spoilt");
        gives(spoilt, new Spoilt());
        catalogue.find("spoilt");
        assertEquals(1, catalogue.problems().size());
        catalogue.unbind(spoilt);
        assertEquals(List.of(), catalogue.problems());
        assertEquals(List.of(), catalogue.ids());
    }

    @Test
    void oneWhoseIdIsEmptyIsLookedAtToo() {
        gives(published(4, "org.example.spoilt", ""), new Spoilt());
        assertEquals(List.of(), catalogue.ids());
        assertEquals(List.of("invalid-declaration"), keys(catalogue.problems()));
    }

    @Test
    void aServiceWithoutTheIdPropertyIsLookedAt() {
        gives(published(3, "org.example.kit", null), new Bevel());
        assertEquals(List.of("bevel"), catalogue.ids());
        gives(published(4, "org.example.spoilt", null), new Spoilt());
        assertEquals(List.of("bevel"), catalogue.ids());
        assertTrue(catalogue.find("").isEmpty());
        assertEquals(List.of("invalid-declaration"), keys(catalogue.problems()));
    }
}
