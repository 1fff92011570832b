package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.junit.jupiter.api.Test;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** What is told of each bundle, without running anything of it. */
class ListedAddOnsTest extends MakersSettings {
    @Test
    void eachIsListedWithWhatItSaysOfItselfAndWhatBecameOfIt() throws IOException {
        Path nets = there(
                "n.jar",
                "off",
                Jar.bundle(
                                "nets;singleton:=true",
                                "Bundle-Name",
                                " Net Pack ",
                                "Bundle-Version",
                                "2.1",
                                "Service-Component",
                                "OSGI-INF/a.xml, OSGI-INF/t*.xml;x=1,../../outside.xml")
                        .component("OSGI-INF/a.xml", Calculates.ID_PROPERTY, "net")
                        .component("OSGI-INF/t1.xml", "workshop.tabulates", "meshes")
                        .component("OSGI-INF/t2.xml", Calculates.ID_PROPERTY, "cord")
                        .component("OSGI-INF/deep/t3.xml", Calculates.ID_PROPERTY, "not-named")
                        .component("OSGI-INF/b.xml", Calculates.ID_PROPERTY, "not-named"));
        Path torn = jars.resolve("torn.jar");
        Files.writeString(torn, "no jar");
        states.put(torn.toString(), "torn.jar was not started.");
        there(
                "m.jar",
                "left-out",
                Jar.bundle("mats", "Service-Component", "x.xml").with("x.xml", "<torn"));
        assertEquals(
                List.of(
                        new AddOn(
                                "straps",
                                "straps",
                                "",
                                "1.0.0",
                                Origin.PROGRAM,
                                State.ON,
                                "",
                                List.of(),
                                List.of(),
                                folder.resolve("program/s.jar")),
                        new AddOn(
                                "",
                                "torn.jar",
                                "",
                                "",
                                Origin.MAKER,
                                State.FAILED,
                                "torn.jar was not started.",
                                List.of(),
                                List.of(),
                                torn),
                        new AddOn(
                                "mats",
                                "mats",
                                "",
                                "0.0.0",
                                Origin.MAKER,
                                State.LEFT_OUT,
                                "",
                                List.of(),
                                List.of(),
                                jars.resolve("m.jar")),
                        new AddOn(
                                "nets",
                                "Net Pack",
                                "",
                                "2.1.0",
                                Origin.MAKER,
                                State.OFF,
                                "",
                                List.of("cord", "net"),
                                List.of("meshes"),
                                nets)),
                addOns().all());
    }

    /** With document types allowed the parser would read the other file in, and its property with it. */
    @Test
    void aDescriptionFetchesNothing() throws IOException {
        String property = "<property name=\"" + Calculates.ID_PROPERTY + "\" value=\"VALUE\"/>";
        Path other = Files.writeString(folder.resolve("other.xml"), property.replace("VALUE", "fetched"));
        there(
                "n.jar",
                "on",
                Jar.bundle("nets", "Service-Component", "x.xml")
                        .with(
                                "x.xml",
                                "<!DOCTYPE c [<!ENTITY e SYSTEM \"" + other.toUri() + "\">]><c>"
                                        + property.replace("VALUE", "own") + "&e;</c>"));
        assertEquals(List.of("own"), addOns().all().get(1).calculators());
    }

    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void theLauncherTellsWhatBecameOfEachByAService() throws Exception {
        BundleContext context = mock(BundleContext.class);
        ServiceReference reference = mock(ServiceReference.class);
        when(context.getProperty("hidewright.settings")).thenReturn(settings.toString());
        when(context.getServiceReferences(Map.class.getName(), "(hidewright.addons=true)"))
                .thenReturn(new ServiceReference[] {reference});
        when(context.getService(reference)).thenReturn(states);
        when(reference.getProperty("hidewright.platform")).thenReturn(new String[] {"command"});
        Function<File, String> look = file -> "damaged";
        when(reference.getProperty("hidewright.look")).thenReturn(look);
        InstalledAddOns told = new InstalledAddOns(context);
        assertEquals(List.of("straps"), told.all().stream().map(AddOn::id).toList());
        assertTrue(told(() -> told.turn("command", false)).startsWith("command is a part of the program"));
        Path nets = Jar.bundle("nets").write(folder.resolve("nets.jar"));
        assertTrue(told(() -> told.install(List.of(nets), false, false)).contains("is not what was packed into it"));
        when(context.getServiceReferences(anyString(), anyString())).thenReturn(null);
        assertThrows(IllegalStateException.class, () -> new InstalledAddOns(context));
    }
}
