package org.hidewright.distribution;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler.CompilationTask;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.osgi.framework.BundleActivator;

/**
 * A bundle of a stranger, compiled from source text against the contract that the program ships, and packed with the headers
 * and component descriptions that bnd would write.
 */
final class StrangeBundle {

    /** The package of every strange class. */
    static final String PACKAGE = "net.example.odd";

    private static final String API = "org.hidewright.api.";

    private static final String TEXTS = """
            odd.title = Odd one
            odd.purpose = Does as it likes.
            odd.thickness = Thickness
            odd.thickness.help = Of the leather.
            odd.answer.length = Length
            notice.some.what = Some {0}.
            notice.some.why = Because of {1}.
            notice.some.next = Look again.
            formula.f = Twice as thick
            source.s = By definition
            """;

    private static final String IMPORTED = Stream.of("calculator", "document", "drawing", "measure", "workshop")
                    .map(name -> API + name + ";version=\"[1.0,2)\"")
                    .collect(Collectors.joining(","))
            + ",org.osgi.framework";

    private final Map<String, String> headers = new LinkedHashMap<>();
    private final Map<String, byte[]> entries = new LinkedHashMap<>();
    private final List<String> components = new ArrayList<>();

    private StrangeBundle(String name) {
        header("Bundle-ManifestVersion", "2");
        header("Bundle-SymbolicName", name);
        header("Bundle-Version", "1.0.0");
        header("Import-Package", IMPORTED);
    }

    static StrangeBundle named(String name) {
        return new StrangeBundle(name);
    }

    /**
     * The calculator {@code odd} once more, as a bundle and in a package of its own: what was compiled once, with other letters.
     *
     * @param id three letters in place of {@code odd}
     */
    StrangeBundle again(String id) {
        if (id.length() != 3) {
            throw new IllegalArgumentException(id + " would make texts in class files longer or shorter");
        }
        StrangeBundle again = new StrangeBundle(PACKAGE);
        headers.forEach((name, value) -> again.header(name, value.replace("odd", id)));
        entries.forEach((name, bytes) -> again.entry(
                name.replace("odd", id),
                new String(bytes, StandardCharsets.ISO_8859_1)
                        .replace("odd", id)
                        .getBytes(StandardCharsets.ISO_8859_1)));
        return again;
    }

    StrangeBundle header(String name, String value) {
        headers.put(name, value);
        return this;
    }

    StrangeBundle without(String header) {
        headers.remove(header);
        return this;
    }

    /** Leaves a class of {@link #PACKAGE} out that others were compiled against. */
    StrangeBundle lacking(String className) {
        if (entries.remove(file(className)) == null) {
            throw new IllegalArgumentException(className + " is not among " + entries.keySet());
        }
        return this;
    }

    /** Compiles a class of {@link #PACKAGE}. */
    StrangeBundle source(String className, String text) {
        entries.putAll(compiled(className, text));
        return this;
    }

    /**
     * The calculator {@code odd}, which asks for a thickness it presets.
     *
     * @param answers components of its answers
     * @param members further members of its class
     * @param calculate what it does with {@code asked} and {@code working}
     */
    static StrangeBundle odd(String answers, String members, String calculate) {
        String text = """
                import java.util.*;
                import org.hidewright.api.calculator.*;
                import org.hidewright.api.drawing.*;
                import org.hidewright.api.measure.*;

                @Calculates("odd")
                public class Odd implements Calculator<Odd.Q, Odd.A> {
                    public record Q(@Asked(unit = "mm", preset = "2 mm") Length thickness) {}

                    public record A(%s) {}

                    %s

                    @Override
                    @SuppressWarnings({"unchecked", "rawtypes"})
                    public Outcome<A> calculate(Q asked, Working working) {
                        %s
                    }
                }
                """.formatted(answers, members, calculate);
        return named(PACKAGE).source("Odd", text).calculator("Odd", "odd").texts(TEXTS);
    }

    /** A component of the class compiled before, as bnd describes it; properties in lines of the description. */
    StrangeBundle component(String className, String service, String properties) {
        String file = "OSGI-INF/" + PACKAGE + "." + className + ".xml";
        String described = """
                <?xml version="1.0" encoding="UTF-8"?>
                <scr:component xmlns:scr="http://www.osgi.org/xmlns/scr/v1.3.0" name="%1$s.%2$s">
                  %4$s
                  <service>
                    <provide interface="%3$s"/>
                  </service>
                  <implementation class="%1$s.%2$s"/>
                </scr:component>
                """.formatted(PACKAGE, className, service, properties);
        if (!headers.containsKey("Service-Component")) {
            components.clear();
        }
        components.add(file);
        header("Service-Component", String.join(",", components));
        return entry(file, described);
    }

    /** A calculator compiled before and its id. */
    StrangeBundle calculator(String className, String id) {
        return component(
                className,
                API + "calculator.Calculator",
                "<property name=\"calculator.calculates\" type=\"String\" value=\"" + id + "\"/>"
                        + "<property name=\"calculator.version\" type=\"Integer\" value=\"1\"/>");
    }

    /** A table of the workshop compiled before and its id. */
    StrangeBundle table(String className, String id) {
        return component(
                className,
                API + "workshop.WorkshopTable",
                "<property name=\"workshop.tabulates\" type=\"String\" value=\"" + id + "\"/>");
    }

    /** Something that adds sections to the job card, compiled before. */
    StrangeBundle contributor(String className) {
        return component(className, API + "document.SectionContributor", "");
    }

    StrangeBundle texts(String messages) {
        return entry(PACKAGE.replace('.', '/') + "/messages.properties", messages);
    }

    StrangeBundle entry(String name, String text) {
        return entry(name, text.getBytes(StandardCharsets.UTF_8));
    }

    StrangeBundle entry(String name, byte[] bytes) {
        entries.put(name, bytes);
        return this;
    }

    /** The file that a class of {@link #PACKAGE} lies in. */
    static String file(String className) {
        return PACKAGE.replace('.', '/') + "/" + className + ".class";
    }

    Path pack(Path folder, String file) throws IOException {
        return Files.write(Files.createDirectories(folder).resolve(file), packed());
    }

    /** The jar. */
    byte[] packed() throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        headers.forEach(manifest.getMainAttributes()::putValue);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JarOutputStream out = new JarOutputStream(bytes, manifest)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                out.putNextEntry(new ZipEntry(entry.getKey()));
                out.write(entry.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static Map<String, byte[]> compiled(String className, String text) {
        String name = PACKAGE.replace('.', '/') + "/" + className;
        JavaFileObject source =
                new SimpleJavaFileObject(URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignored) {
                        return "package " + PACKAGE + ";\n" + text;
                    }
                };
        DiagnosticCollector<JavaFileObject> said = new DiagnosticCollector<>();
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (Kept kept = new Kept(compiler.getStandardFileManager(said, Locale.ROOT, StandardCharsets.UTF_8))) {
            List<String> options = List.of("--release", "17", "-proc:none", "-Xlint:none", "-cp", classPath());
            CompilationTask task = compiler.getTask(null, kept, said, options, null, List.of(source));
            if (!task.call()) {
                throw new IllegalArgumentException(said.getDiagnostics() + " in\n" + text);
            }
            return kept.classes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is shipped to be compiled against, and the framework's interfaces for activators. */
    private static String classPath() {
        Path contract = BuiltProgram.bundles().stream()
                .filter(path -> path.getFileName().toString().startsWith("org.hidewright.api.contract"))
                .findFirst()
                .orElseThrow();
        try {
            URI framework = BundleActivator.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI();
            return contract + java.io.File.pathSeparator + Path.of(framework);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Keeps the classes in memory, under their names in a jar. */
    private static final class Kept extends ForwardingJavaFileManager<JavaFileManager> {
        private final Map<String, ByteArrayOutputStream> written = new LinkedHashMap<>();

        Kept(JavaFileManager manager) {
            super(manager);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
            String entry = className.replace('.', '/') + ".class";
            return new SimpleJavaFileObject(URI.create("string:///" + entry), kind) {
                @Override
                public OutputStream openOutputStream() {
                    return written.computeIfAbsent(entry, ignored -> new ByteArrayOutputStream());
                }
            };
        }

        Map<String, byte[]> classes() {
            Map<String, byte[]> classes = new LinkedHashMap<>();
            written.forEach((entry, bytes) -> classes.put(entry, bytes.toByteArray()));
            return classes;
        }
    }
}
