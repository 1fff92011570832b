package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;
import org.hidewright.core.catalogue.Guard;
import org.hidewright.core.workshop.Column;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

class ServiceTablesTest {
    private static final Guard GUARD = new ThreadGuard(5);
    private final BundleContext context = mock(BundleContext.class);
    private final ServiceTables tables = new ServiceTables(context, GUARD);

    @BeforeEach
    void noBundleCarriesTexts() {
        when(context.getBundles()).thenReturn(new Bundle[0]);
    }

    record Net(
            @Asked(example = "Beetle net") String name,
            @Asked Optional<String> mesh) {}

    @Tabulates("nets")
    static final class Nets implements WorkshopTable<Net> {}

    @Tabulates("nets")
    static final class MoreOfNets implements WorkshopTable<Handle> {}

    record Handle(@Asked Optional<String> handle, @Asked Optional<String> mesh) {}

    static final class Nameless implements WorkshopTable<Net> {}

    @SuppressWarnings("unchecked")
    private ServiceReference<WorkshopTable<?>> published(long bundleId, WorkshopTable<?> table) {
        ServiceReference<WorkshopTable<?>> reference = mock(ServiceReference.class);
        Bundle bundle = mock(Bundle.class);
        when(bundle.getBundleId()).thenReturn(bundleId);
        when(bundle.getSymbolicName()).thenReturn("org.example.bundle-" + bundleId);
        when(reference.getBundle()).thenReturn(bundle);
        when(context.<WorkshopTable<?>>getService(reference)).thenAnswer(call -> table);
        tables.bind(reference);
        return reference;
    }

    private List<String> problems() {
        return tables.problems().stream().map(remark -> remark.key()).toList();
    }

    @Test
    void everyWorkshopHasItsTablesWithoutAnyBundle() {
        assertTrue(tables.tables().ids().containsAll(List.of("leather", "hardware", "punches", "rates", "measured")));
        assertEquals(List.of(), tables.problems());
    }

    @Test
    void aTableIsLookedAtOnlyWhenTablesAreAskedFor() {
        published(5, new Nets());
        assertEquals(List.of(), tables.problems());
        verify(context, never()).getService(any());
        assertTrue(tables.tables().find("nets").isPresent());
    }

    @Test
    void theBundleInstalledFirstDeclaresTheTableAndALaterOneAddsColumns() {
        published(7, new MoreOfNets());
        published(5, new Nets());
        assertEquals(
                List.of("name", "mesh", "handle"),
                tables.tables().find("nets").orElseThrow().columns().stream()
                        .map(Column::key)
                        .toList());
        assertEquals(List.of("notice.column-taken"), problems());
    }

    @Test
    void aTableGoesWithItsBundle() {
        ServiceReference<WorkshopTable<?>> reference = published(5, new Nets());
        assertTrue(tables.tables().find("nets").isPresent());
        tables.unbind(reference);
        assertFalse(tables.tables().find("nets").isPresent());
    }

    @Test
    @Timeout(30)
    void aTableThatGoesWhileItIsLookedAtIsNotKept() {
        ServiceReference<WorkshopTable<?>> reference = published(5, new Nets());
        when(context.<WorkshopTable<?>>getService(reference)).thenAnswer(call -> {
            tables.unbind(reference);
            return new Nets();
        });
        assertTrue(tables.tables().find("nets").isPresent());
        assertFalse(tables.tables().find("nets").isPresent());
    }

    @Test
    void aTableThatCannotBeUsedIsToldAndTheOthersStay() {
        published(5, new Nameless());
        published(6, null);
        ServiceReference<WorkshopTable<?>> broken = published(7, new Nets());
        when(context.<WorkshopTable<?>>getService(broken)).thenThrow(new IllegalStateException("no nets today"));
        published(8, new MoreOfNets());
        assertTrue(tables.tables().find("nets").isPresent());
        assertEquals(List.of("notice.invalid-table", "notice.no-service", "notice.did-not-start"), problems());
    }
}
