package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.startlevel.BundleStartLevel;

/** The framework with every bundle of the built program, in this process. */
class HostIT {

    @TempDir
    Path caches;

    @Test
    void everyBundleIsActiveAtTheLevelOfItsFolder() throws Exception {
        try (Host host = start()) {
            assertEquals(List.of(), host.failures());
            List<String> notActive = new ArrayList<>();
            for (Bundle bundle : host.context().getBundles()) {
                boolean fragment = bundle.getHeaders().get(Constants.FRAGMENT_HOST) != null; // never more than resolved
                if (bundle.getState() != Bundle.ACTIVE
                        && bundle.getState() != Bundle.STARTING
                        && !(fragment && bundle.getState() == Bundle.RESOLVED)) {
                    notActive.add(bundle.getSymbolicName());
                }
            }
            assertEquals(List.of(), notActive);
            Bundle thickness = Arrays.stream(host.context().getBundles())
                    .filter(bundle -> "org.hidewright.thickness".equals(bundle.getSymbolicName()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(40, thickness.adapt(BundleStartLevel.class).getStartLevel());
        }
    }

    @Test
    void theEntryServiceIsPublishedByComponents() throws Exception {
        try (Host host = start()) {
            var found = host.context().getServiceReferences(ToIntFunction.class, "(hidewright.entry=main)");
            assertEquals(1, found.size());
            assertNotNull(host.context().getService(found.iterator().next()));
        }
    }

    /** Otherwise the platform has to wake every calculator to find the one that was asked for. */
    @Test
    void everyCalculatorIsKnownByItsIdWithoutBeingMade() throws Exception {
        try (Host host = start()) {
            ServiceReference<?>[] found = host.context().getAllServiceReferences(Calculator.class.getName(), null);
            assertTrue(found.length > 1, "only " + found.length + " calculators");
            for (ServiceReference<?> reference : found) {
                assertNotNull(reference.getProperty(Calculates.ID_PROPERTY), reference.toString());
            }
        }
    }

    @Test
    void whatBecameOfBundlesThatCanBeTurnedOffIsAServiceThePlatformCanShow() throws Exception {
        try (Host host = start()) {
            ServiceReference<?>[] found =
                    host.context().getServiceReferences(Map.class.getName(), "(hidewright.addons=true)");
            assertEquals(1, found.length);
            List<Object> platform = Arrays.asList((Object[]) found[0].getProperty("hidewright.platform"));
            assertTrue(platform.contains("org.hidewright.command"), platform.toString());
            assertFalse(platform.contains("org.hidewright.thickness"), platform.toString());
            Map<?, ?> states = (Map<?, ?>) host.context().getService(found[0]);
            assertTrue(states.size() > 1, states.toString());
            states.forEach((jar, state) -> {
                assertTrue(String.valueOf(jar).contains("40-calculators"), jar.toString());
                assertEquals(LineUp.ON, state);
            });
        }
    }

    @Test
    void theSecondStartIsOfferedTheSameByTheSystemBundle() throws Exception {
        String first;
        try (Host host = start()) {
            first = host.context().getBundle().getHeaders("").get("Export-Package");
        }
        assertTrue(first.contains("org.osgi.service.component"), first);
        assertTrue(first.contains("java.util.function"), first);
        try (Host host = start()) {
            assertEquals(first, host.context().getBundle().getHeaders("").get("Export-Package"));
            assertFalse(host.context().getBundles().length < 4);
        }
    }

    private Host start() throws Exception {
        ProgramHome home =
                new ProgramHome(Path.of("target", "hidewright").toFile().getAbsoluteFile());
        LineUp lineUp = LineUp.of(home, new String[] {
            SettingsFolder.OPTION, caches.resolve("no-settings").toString()
        });
        return Host.start(lineUp, caches.toFile(), new Timings());
    }
}
