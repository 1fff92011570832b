package org.hidewright.distribution;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A copy of the program that the build laid out, to be changed and started as a maker would. */
final class BuiltProgram {

    static final Path ORIGINAL = Path.of("target", "hidewright").toAbsolutePath();

    private static final long SECONDS = 60;

    /** What the java command says of options that come by the environment. */
    private static final Pattern NOTE_OF_JAVA = Pattern.compile("^NOTE: Picked up JDK_JAVA_OPTIONS: .*\\R");

    private final Path folder;
    private final Path scratch;
    private final String javaOptions;
    private boolean agreed = true;

    private BuiltProgram(Path folder, Path scratch, String javaOptions) {
        this.folder = folder;
        this.scratch = scratch;
        this.javaOptions = javaOptions;
    }

    /** The program where it was built, not to be changed; only what belongs to a user lies in the scratch folder. */
    static BuiltProgram inPlace(Path scratch, String... javaOptions) {
        return new BuiltProgram(ORIGINAL, scratch, String.join(" ", javaOptions));
    }

    /** Copies the program into a folder whose name has what scripts and locations like to trip over. */
    static BuiltProgram copyInto(Path scratch) throws IOException {
        Path folder = scratch.resolve("a maker’s bench + one");
        Path pages = ORIGINAL.resolve("contract/reference"); // nothing of the program reads them
        try (Stream<Path> all = Files.walk(ORIGINAL)) {
            for (Path path : all.filter(path -> !path.startsWith(pages)).toList()) {
                Files.copy(
                        path, folder.resolve(ORIGINAL.relativize(path).toString()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return new BuiltProgram(folder, scratch, "");
    }

    Path folder() {
        return folder;
    }

    /** Where the user installs add-ons. */
    Path addOns() {
        return settings().resolve("addons");
    }

    Path settings() {
        return config().resolve("hidewright");
    }

    /** From now on jars that lie among the add-ons wait for a word; else the user has agreed to them before each start. */
    BuiltProgram withoutAgreeing() {
        agreed = false;
        return this;
    }

    /** As a user agrees who has turned every one of them on. */
    void agree() throws IOException {
        if (Files.isDirectory(addOns())) {
            StringBuilder lines = new StringBuilder();
            try (Stream<Path> jars = Files.list(addOns())) {
                for (Path jar : jars.filter(Files::isRegularFile).sorted().toList()) {
                    lines.append(sha256(Files.readAllBytes(jar))).append(" x\n");
                }
            }
            Path file = settings().resolve("addons-agreed.txt");
            if (!Files.exists(file)
                    || !Files.readString(file).contentEquals(lines)) { // or each start would read all anew
                Files.writeString(file, lines);
            }
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private Path config() {
        return scratch.resolve("config");
    }

    /** The folder in which the program is started. */
    Path elsewhere() {
        return scratch.resolve("elsewhere");
    }

    Path calculators() {
        return folder.resolve("bundles/40-calculators");
    }

    /** Every bundle of the program as built: those in folders, lowest start level first, and ours on the class path. */
    static List<Path> bundles() {
        Path bundles = ORIGINAL.resolve("bundles");
        try (Stream<Path> all = Files.walk(ORIGINAL)) {
            return all.filter(path -> path.toString().endsWith(".jar"))
                    .filter(path -> path.startsWith(bundles) || isOursOnTheClassPath(path))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static boolean isOursOnTheClassPath(Path jar) {
        return jar.startsWith(ORIGINAL.resolve("lib"))
                && jar.getFileName().toString().matches("org\\.hidewright\\.(?!launcher).*");
    }

    /** Every jar of the program that others made. */
    static List<Path> parts() {
        try (Stream<Path> all = Files.walk(ORIGINAL)) {
            return all.filter(path -> path.toString().endsWith(".jar"))
                    .filter(path -> !path.getFileName().toString().startsWith("org.hidewright."))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The sample bundles, built as a stranger would build them and not shipped with the program; of each the newest jar. */
    static List<Path> samples() {
        Path folder = Path.of("..", "..", "samples");
        try (Stream<Path> all = Files.walk(folder, 3)) {
            Map<Path, Path> newest = new TreeMap<>();
            all.filter(path -> path.getParent().endsWith("target")
                            && path.toString().endsWith(".jar"))
                    .filter(path -> !path.startsWith(folder.resolve("archetype")))
                    .forEach(jar -> newest.merge(jar.getParent(), jar, BuiltProgram::newer));
            return List.copyOf(newest.values());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Path newer(Path one, Path other) {
        return one.toFile().lastModified() < other.toFile().lastModified() ? other : one;
    }

    /** The jar of one sample, by the name of its folder. */
    static Path sample(String name) {
        return samples().stream()
                .filter(jar -> jar.getParent().getParent().endsWith(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no jar of the sample " + name))
                .toAbsolutePath();
    }

    static Manifest manifest(Path bundle) throws IOException {
        try (JarFile jar = new JarFile(bundle.toFile())) {
            return jar.getManifest();
        }
    }

    /** Puts a bundle among the calculators; headers in pairs of name and value. */
    void plant(String file, Class<?> inside, String... headers) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        for (int i = 0; i < headers.length; i += 2) {
            manifest.getMainAttributes().putValue(headers[i], headers[i + 1]);
        }
        try (JarOutputStream jar =
                new JarOutputStream(Files.newOutputStream(calculators().resolve(file)), manifest)) {
            if (inside != null) {
                String entry = inside.getName().replace('.', '/') + ".class";
                jar.putNextEntry(new JarEntry(entry));
                try (var bytes = inside.getResourceAsStream("/" + entry)) {
                    bytes.transferTo(jar);
                }
            }
        }
    }

    /** Starts the program from another folder and waits for its end. */
    Ended run(String... arguments) throws IOException, InterruptedException {
        if (agreed) {
            agree();
        }
        Process process = start(arguments);
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("The program did not end within " + SECONDS + " s.");
        }
        return new Ended(
                process.exitValue(),
                Files.readString(out()),
                NOTE_OF_JAVA.matcher(Files.readString(told())).replaceFirst(""));
    }

    /** Starts the program and kills it after a while, unless it has ended by then. */
    void killed(int afterMs, String... arguments) throws IOException, InterruptedException {
        Process process = start(arguments);
        if (!process.waitFor(afterMs, TimeUnit.MILLISECONDS)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().waitFor();
        }
    }

    private Path out() {
        return scratch.resolve("out.txt");
    }

    private Path told() {
        return scratch.resolve("told.txt");
    }

    private Process start(String... arguments) throws IOException {
        List<String> command =
                new ArrayList<>(List.of(folder.resolve("hidewright").toString()));
        command.addAll(List.of(arguments));
        Path elsewhere = Files.createDirectories(elsewhere());
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(elsewhere.toFile())
                .redirectOutput(out().toFile())
                .redirectError(told().toFile());
        builder.environment().put("XDG_CACHE_HOME", scratch.resolve("cache").toString());
        builder.environment().put("XDG_CONFIG_HOME", config().toString());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("LC_ALL", "C.UTF-8"); // tests read English, whatever is spoken here
        if (!javaOptions.isEmpty()) {
            builder.environment().put("JDK_JAVA_OPTIONS", javaOptions);
        }
        return builder.start();
    }

    /** How a run ended: its exit code, what it answered, and what it told on the side. */
    record Ended(int code, String answer, String told) {}
}
