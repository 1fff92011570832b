package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.launcher.DecidedChange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** A program with one bundle, and the settings of a maker beside it. */
abstract class MakersSettings {
    @TempDir
    Path folder;

    final Map<String, String> states = new HashMap<>();
    /** What the launcher finds wrong with jars, by the names of their files. */
    final Map<String, String> faults = new HashMap<>();

    /** What it finds wrong with every other. */
    String everyFault = "";

    /** Names of files that have to wait for a word. */
    final Set<String> waiting = new HashSet<>();

    /** None unless a test brings a framework. */
    Needs needs;

    Path settings;
    Path jars;

    @BeforeEach
    void aProgram() throws IOException {
        settings = folder.resolve("settings");
        jars = settings.resolve("addons");
        Path straps = Jar.bundle("straps", "Bundle-Version", "1.0.0.BUILD").write(folder.resolve("program/s.jar"));
        states.put(straps.toString(), "on");
    }

    InstalledAddOns addOns() {
        return addOns(null);
    }

    InstalledAddOns addOns(RunningBundles running) {
        return addOns(running, new DecidedChange(() -> {}));
    }

    /** @param finish does a decided change to its end */
    InstalledAddOns addOns(RunningBundles running, Function<File, String> finish) {
        return new InstalledAddOns(settings, launcher(finish), running, needs);
    }

    ToldByLauncher launcher(Function<File, String> finish) {
        return new ToldByLauncher(
                states,
                Set.of("command", "core"),
                file -> faults.getOrDefault(file.getName(), everyFault),
                finish,
                file -> waiting.contains(file.getName()) ? "waiting" : "");
    }

    Path there(String file, String state, Jar jar) throws IOException {
        Path path = jar.write(jars.resolve(file));
        states.put(path.toString(), state);
        return path;
    }

    List<AddOn> install(Path... given) throws FileTrouble {
        return addOns().install(List.of(given), false, false);
    }

    /** A template that is a text: it draws with one calculator, and asks another. */
    static Jar drawing(Jar jar, String id, String draws, String asks) {
        return jar.with(
                id + ".json",
                "{\"template\": 1, \"id\": \"" + id + "\", \"values\": {\"a\": \"2 mm\", \"b\": {\"asks\": \"" + asks
                        + "\"}}, \"draws\": {\"calculator\": \"" + draws + "\"}}");
    }

    /** A bundle of the program that brings a calculator. */
    void ofProgram(String id, String state, String calculator) throws IOException {
        Path jar = Jar.bundle(id, "Bundle-Version", "1.0", "Service-Component", "x.xml")
                .component("x.xml", "calculator.calculates", calculator)
                .write(folder.resolve("program/" + id + ".jar"));
        states.put(jar.toString(), state);
    }

    /** What is told: what and next, without the folder of the test. */
    String told(Executable doing) {
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        FileTrouble trouble = assertThrows(FileTrouble.class, doing);
        assertEquals(1, trouble.remarks().size());
        assertTrue(trouble.remarks().get(0).stops());
        return (wording.what(trouble.remarks().get(0)) + " "
                        + wording.next(trouble.remarks().get(0)))
                .replace(folder + "/", "");
    }

    List<String> installedFiles() throws IOException {
        if (!Files.exists(jars)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(jars)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    String choices() throws IOException {
        return Files.readString(settings.resolve("addons.txt"));
    }

    static String entry(Path jar, String name) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return new String(file.getInputStream(file.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
