package org.hidewright.core.catalogue;

import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

class ServiceCatalogueTest {
    private final BundleContext context = mock(BundleContext.class);
    private final ServiceCatalogue catalogue = new ServiceCatalogue(context);

    @Calculates("spoilt")
    static final class Spoilt implements Calculator<Spoilt.Asks, Spoilt.Gives> {
        record Asks(int notAnnotated) {}

        record Gives(@Answered int number) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            throw new UnsupportedOperationException();
        }
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
    void listingWhatIsInstalledLoadsNothing() {
        published(7, "org.example.b", "sampler");
        published(5, "org.example.a", "relay");
        assertEquals(List.of("relay", "sampler"), catalogue.ids());
        verify(context, never()).getService(any());
        assertEquals(List.of(), catalogue.problems());
    }

    @Test
    void aCalculatorIsLoadedOnceWhenItIsLookedFor() {
        ServiceReference<Calculator<?, ?>> reference = published(7, "org.example.b", "relay");
        gives(reference, new Relay());
        Installed installed = catalogue.find("relay").orElseThrow();
        assertEquals("org.example.b", installed.bundle());
        assertEquals("relay", installed.id());
        assertSame(installed, catalogue.find("relay").orElseThrow());
        verify(context, times(1)).getService(reference);
        assertTrue(catalogue.find("nowhere").isEmpty());
    }

    @Test
    void ofTwoWithOneIdTheOneInstalledFirstIsUsedAndTheOtherIsTold() {
        ServiceReference<Calculator<?, ?>> late = published(9, "org.example.late", "relay");
        ServiceReference<Calculator<?, ?>> first = published(3, "org.example.first", "relay");
        gives(late, new Relay());
        gives(first, new Relay());
        assertEquals("org.example.first", catalogue.find("relay").orElseThrow().bundle());
        assertEquals(List.of("relay"), catalogue.ids());
        assertEquals(List.of("id-taken"), keys(catalogue.problems()));
        String said = said(catalogue.problems().get(0));
        assertTrue(said.startsWith("Bundle org.example.late brings another calculator called “relay”."), said);
        assertTrue(said.contains("org.example.first was there first"), said);
    }

    @Test
    void whenTheFirstIsTakenOutTheOtherStepsInAndNothingIsToldAnyMore() {
        ServiceReference<Calculator<?, ?>> first = published(3, "org.example.first", "relay");
        ServiceReference<Calculator<?, ?>> late = published(9, "org.example.late", "relay");
        gives(late, new Relay());
        gives(first, new Relay());
        catalogue.ids();
        catalogue.unbind(first);
        assertEquals("org.example.late", catalogue.find("relay").orElseThrow().bundle());
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
        gives(published(5, "org.example.kit", "sampler"), new Sampler());
        assertTrue(catalogue.find("dead").isEmpty());
        assertTrue(catalogue.find("silent").isEmpty());
        assertTrue(catalogue.find("sampler").isPresent());
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
    void aServiceWithoutTheIdPropertyIsLookedAt() {
        gives(published(3, "org.example.kit", null), new Relay());
        assertEquals(List.of("relay"), catalogue.ids());
        gives(published(4, "org.example.spoilt", null), new Spoilt());
        assertEquals(List.of("relay"), catalogue.ids());
        assertTrue(catalogue.find("").isEmpty());
        assertEquals(List.of("invalid-declaration"), keys(catalogue.problems()));
    }
}
