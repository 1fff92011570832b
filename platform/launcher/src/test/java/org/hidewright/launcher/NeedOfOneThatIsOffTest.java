package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Constants;

/** A start in which a bundle needs what another offers that is turned off. */
class NeedOfOneThatIsOffTest {
    @TempDir
    Path folder;

    @BeforeEach
    void knotsThatAreOff() throws Exception {
        AddOnJar.write(
                folder.resolve("settings/addons/knots.jar"),
                "com.example.knots",
                Map.of(Constants.EXPORT_PACKAGE, "com.example.knots.api;version=\"1.2.0\""));
        Files.writeString(folder.resolve("settings/addons.txt"), "off com.example.knots\n");
    }

    private void needs(String header, String what) throws Exception {
        Path nets = folder.resolve("settings/addons/nets.jar");
        AddOnJar.write(nets, "com.example.nets", Map.of(Constants.BUNDLE_NAME, "Nets", header, what));
        Files.writeString(
                folder.resolve("settings/addons-agreed.txt"), Seal.sha256(Files.readAllBytes(nets)) + " nets.jar\n");
    }

    private List<String> told() throws Exception {
        LineUp lineUp = LineUp.of(
                new ProgramHome(folder.resolve("program").toFile()),
                new String[] {SettingsFolder.OPTION, folder.resolve("settings").toString()});
        try (Host host = Host.start(lineUp, folder.resolve("caches").toFile(), new Timings())) {
            return host.failures();
        }
    }

    private static List<String> offAndNeededFor(String what) {
        return List.of("Nets was not started: it needs " + what + ". That is in com.example.knots, which is turned"
                + " off. Turn com.example.knots on: hidewright addons on com.example.knots Until then turn it off: hidewright addons"
                + " off com.example.nets");
    }

    @Test
    void itIsToldWithTheWayToTurnTheOtherOn() throws Exception {
        needs(Constants.IMPORT_PACKAGE, "com.example.knots.api");
        assertEquals(offAndNeededFor("com.example.knots.api"), told());
        needs(Constants.REQUIRE_BUNDLE, "com.example.knots");
        assertEquals(offAndNeededFor("com.example.knots"), told());
        needs(Constants.FRAGMENT_HOST, "com.example.knots");
        assertEquals(offAndNeededFor("com.example.knots"), told());
    }

    @Test
    void whatNobodyOffersIsToldAsBefore() throws Exception {
        needs(Constants.IMPORT_PACKAGE, "com.example.other");
        assertEquals(
                List.of("Nets was not started: it needs com.example.other, and nothing here offers it. Add the bundle"
                        + " it came with, or ask its author. Until then turn it off: hidewright addons off"
                        + " com.example.nets"),
                told());
    }
}
