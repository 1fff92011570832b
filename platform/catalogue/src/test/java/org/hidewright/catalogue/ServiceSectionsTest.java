package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Contributor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** What bundles add to the job card: made and asked under guard, and copied there. */
@Timeout(60)
class ServiceSectionsTest {
    private static final JobView JOB = JobView.of("Kit", Locale.ENGLISH, List.of());

    private final BundleContext context = mock(BundleContext.class);
    private final ServiceSections sections = new ServiceSections(context, new ThreadGuard(1));

    @SuppressWarnings("unchecked")
    private ServiceReference<SectionContributor> publish(
            String bundleName, String component, Supplier<SectionContributor> made) {
        ServiceReference<SectionContributor> reference = mock(ServiceReference.class);
        Bundle bundle = mock(Bundle.class);
        when(bundle.getSymbolicName()).thenReturn(bundleName);
        when(reference.getBundle()).thenReturn(bundle);
        when(reference.getProperty("component.name")).thenReturn(component);
        when(context.getService(reference)).thenAnswer(call -> made.get());
        sections.bind(reference);
        return reference;
    }

    private static List<Section> one(String id) {
        return List.of(Section.of(id, ""));
    }

    private static <T> T forEver() {
        while (true) {
            Thread.onSpinWait();
        }
    }

    private Object fault() {
        Contributor only = sections.contributors().get(0);
        assertEquals("net.example.kit", only.bundle());
        return assertThrows(BundleFault.class, () -> only.sections().apply(JOB)).words();
    }

    @Test
    void theyComeInTheOrderOfTheirNamesAndNoneIsMadeBeforeItIsAsked() {
        publish("net.example.a", "z.Last", () -> job -> one("last"));
        var gone = publish("net.example.b", "m.Gone", () -> job -> one("gone"));
        publish("net.example.c", "a.First", () -> job -> one("first"));
        sections.unbind(gone);
        List<Contributor> contributors = sections.contributors();
        assertEquals(
                List.of("net.example.c", "net.example.a"),
                contributors.stream().map(Contributor::bundle).toList());
        verify(context, never()).getService(any());
        assertEquals(
                "first", ((Section) contributors.get(0).sections().apply(JOB).get(0)).id());
    }

    @Test
    void whatIsGivenIsACopy() {
        List<Section> own = new ArrayList<>(one("own"));
        publish("net.example.kit", "a.A", () -> job -> own);
        List<?> given = sections.contributors().get(0).sections().apply(JOB);
        assertNotSame(own, given);
        assertEquals(own, given);
    }

    @Test
    void oneThatGivesNothingGivesNull() {
        publish("net.example.kit", "a.A", () -> job -> null);
        assertNull(sections.contributors().get(0).sections().apply(JOB));
    }

    @Test
    void oneThatIsNotThereIsToldAsSuch() {
        publish("net.example.kit", "b.B", () -> null);
        assertEquals(Phrase.of("fault-not-made"), fault());
    }

    @Test
    void oneThatThrowsIsAFaultInWords() {
        publish("net.example.kit", "a.A", () -> job -> {
            throw new IllegalStateException("no\nglue");
        });
        assertEquals("java.lang.IllegalStateException: no glue", fault());
    }

    @Test
    void oneThatCannotBeMadeIsAFaultInWords() {
        publish("net.example.kit", "a.A", () -> {
            throw new LinkageError("gone");
        });
        assertEquals("java.lang.LinkageError: gone", fault());
    }

    @Test
    void oneThatNeverComesBackIsLeftToItself() {
        publish("net.example.kit", "a.A", () -> job -> forEver());
        assertEquals(Phrase.of("fault-late", 1), fault());
        assertEquals(Phrase.of("fault-earlier", Phrase.of("fault-late", 1)), fault());
    }

    @Test
    void aListOfItsOwnIsReadUnderGuardAsWell() {
        publish(
                "net.example.kit",
                "a.A",
                () -> job -> new AbstractList<>() {
                    @Override
                    public Section get(int index) {
                        return forEver();
                    }

                    @Override
                    public int size() {
                        return 1;
                    }
                });
        assertEquals(Phrase.of("fault-late", 1), fault());
    }
}
