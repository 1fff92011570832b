package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.felix.framework.FrameworkFactory;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.store.FileTrouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;

/** A shelf of jars beside an index, and a real framework in which what was installed is started. */
abstract class OnAShelf extends MakersSettings {
    private Framework framework;
    Path shelf;

    @BeforeEach
    void aFrameworkAndAShelf() throws Exception {
        framework = new FrameworkFactory()
                .newFramework(Map.of(
                        Constants.FRAMEWORK_STORAGE, folder.resolve("cache").toString(), "felix.log.level", "0"));
        framework.start();
        Path contract = Jar.bundle("core", "Bundle-Version", "1.4", "Export-Package", "org.contract;version=1.4")
                .write(folder.resolve("program/core.jar"));
        framework.getBundleContext().installBundle(contract.toUri().toString()).start();
        needs = org.hidewright.addons.Framework.needs(framework.getBundleContext(), jars);
        shelf = Files.createDirectories(folder.resolve("shelf"));
    }

    @AfterEach
    void stop() throws Exception {
        framework.stop();
        framework.waitForStop(10_000);
    }

    AddOnIndexes indexes() {
        return addOns().indexes();
    }

    /** On the shelf; its file has name and version. */
    Path shelved(String id, String version, String... headers) throws IOException {
        return bundle(id, version, headers).write(shelf.resolve(id + "-" + version + ".jar"));
    }

    static Jar bundle(String id, String version, String... headers) {
        String[] all = new String[headers.length + 2];
        all[0] = "Bundle-Version";
        all[1] = version;
        System.arraycopy(headers, 0, all, 2, headers.length);
        return Jar.bundle(id, all);
    }

    AddOnChange installed(String... names) throws FileTrouble {
        return indexes().install(shelf, List.of(names), false);
    }

    /** As a start would find it. */
    void start() throws Exception {
        states.keySet().removeIf(jar -> Path.of(jar).startsWith(jars));
        if (Files.exists(jars)) {
            for (Path jar : new AddOnsFolder(settings).jars()) {
                String id = Candidate.kept(jar).id();
                states.put(
                        jar.toString(),
                        new Choices(settings.resolve("addons.txt")).off().contains(id) ? "off" : "on");
            }
        }
    }

    /** Starts all that is installed in the framework, which fails where it does not resolve. */
    void startsThere() throws Exception {
        Map<String, Bundle> bundles = new HashMap<>();
        for (Path jar : new AddOnsFolder(settings).jars()) {
            Bundle bundle =
                    framework.getBundleContext().installBundle(jar.toUri().toString());
            bundles.put(bundle.getSymbolicName(), bundle);
        }
        for (Bundle bundle : bundles.values()) {
            bundle.start();
        }
        for (Bundle bundle : bundles.values()) {
            bundle.uninstall();
        }
    }

    static Moved comes(String id, String version, boolean needed) {
        return new Moved(id, "", version, List.of(), needed);
    }
}
