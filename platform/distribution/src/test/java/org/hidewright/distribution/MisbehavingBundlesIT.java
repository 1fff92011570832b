package org.hidewright.distribution;

import static org.hidewright.distribution.StrangeRun.assertTold;
import static org.hidewright.distribution.StrangeRun.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.hidewright.distribution.StrangeRun.Packet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Real jars that cannot be started, or whose calculators and tables cannot be had: told in plain words, and the rest is whole. */
class MisbehavingBundlesIT {
    private static final String ODD = StrangeBundle.PACKAGE;
    private static final String UNTIL = " Until then turn it off: hidewright addons off " + ODD;
    private static final String BROKE =
            "net.example.odd was not started: it broke down while starting (%s). Tell its author." + UNTIL;
    private static final String LATE = "net.example.odd was not started: it had not come back after "
            + StrangeRun.PATIENCE + " s and was left to itself. Tell its author." + UNTIL;
    private static final String NAME_TAKEN = "odd.jar was not started: it has the name of another bundle, NAME, "
            + "which NAME.jar brings and which is used. Keep one of the two.";
    private static final String TELL =
            "    Tell the maker of the bundle, or turn it off: hidewright addons off net.example.odd. Everything else works on.";
    private static final String FAULT = """
            Check: A calculator or table of bundle net.example.odd did not start.
                This is a fault of the bundle: %s
            """ + TELL;
    private static final String NONE = """
            Check: A calculator or table of bundle net.example.odd did not start.
                The bundle announced it and then gave none.
            """ + TELL;
    private static final String LENGTH = "@Answered(unit = \"mm\") Length length";
    private static final String DONE = "return Outcome.of(new A(asked.thickness()));";

    @TempDir
    Path scratch;

    private static StrangeBundle sound() {
        return StrangeBundle.odd(LENGTH, "", DONE);
    }

    /** A sound calculator in a bundle that does this when it is started. */
    private static StrangeBundle starting(String members, String start) {
        return sound().header("Bundle-Activator", ODD + ".Start").source("Start", """
                import org.osgi.framework.*;

                public class Start implements BundleActivator {
                    %s

                    @Override
                    public void start(BundleContext context) throws Exception {
                        %s
                    }

                    @Override
                    public void stop(BundleContext context) {}
                }
                """.formatted(members, start));
    }

    static Stream<Arguments> notStarted() {
        String forever = "while (true) { try { Thread.sleep(100_000); } catch (InterruptedException e) {} }";
        return Stream.of(
                Arguments.of(
                        "throws",
                        starting("", "throw new IllegalStateException(\"the edge paint\\n\\tat the bench ran out\");"),
                        BROKE.formatted("the edge paint at the bench ran out")),
                Arguments.of(
                        "throws an error",
                        starting("", "throw new StackOverflowError();"),
                        BROKE.formatted("java.lang.StackOverflowError")),
                Arguments.of(
                        "throws what cannot be told",
                        starting("""
                        static class Mute extends RuntimeException {
                            @Override public String getMessage() { throw new Mute(); }
                            @Override public Throwable getCause() { throw new Mute(); }
                        }""", "throw new Mute();"),
                        BROKE.formatted("net.example.odd.Start$Mute")),
                Arguments.of("never comes back", starting("", forever), LATE),
                Arguments.of("tells for ever", starting("""
                        static class Late extends RuntimeException {
                            @Override public String getMessage() { while (true) {} }
                        }""", "throw new Late();"), LATE),
                Arguments.of(
                        "its class cannot be loaded",
                        starting("static { if (true) throw new RuntimeException(\"no awl\"); }", ""),
                        BROKE.formatted("no awl")),
                Arguments.of(
                        "its class is not there",
                        starting("", "").lacking("Start"),
                        BROKE.formatted("net.example.odd.Start not found by net.example.odd")),
                Arguments.of(
                        "lacks an import",
                        sound().header("Import-Package", "com.example.buckles"),
                        "net.example.odd was not started: it needs com.example.buckles, and nothing here offers it. "
                                + "Add the bundle it came with, or ask its author." + UNTIL),
                Arguments.of(
                        "wants another contract",
                        sound().header("Import-Package", "org.hidewright.api.calculator;version=\"[7,8)\""),
                        "net.example.odd was not started: it needs org.hidewright.api.calculator [7.0.0,8.0.0), and this workbench offers 1.3.0. "
                                + "Install a build of it made for what is here, or update the workbench." + UNTIL),
                Arguments.of(
                        "is for a newer Java",
                        sound().header("Require-Capability", "osgi.ee;filter:=\"(&(osgi.ee=JavaSE)(version=99))\""),
                        "net.example.odd was not started: it needs Java 99, and this is Java "
                                + Runtime.version().feature() + ". Start Hidewright with a newer Java." + UNTIL),
                Arguments.of(
                        "wants another bundle",
                        sound().header("Require-Bundle", "com.example.buckles"),
                        "net.example.odd was not started: it needs com.example.buckles, and nothing here offers it. "
                                + "Add the bundle it came with, or ask its author." + UNTIL),
                Arguments.of(
                        "headers that are none",
                        sound().header("Import-Package", ";;=,\""),
                        "odd.jar was not started: it cannot be read as a bundle. Copy it again, or take it out of {addons}."),
                Arguments.of(
                        "no name of a bundle",
                        sound().without("Bundle-SymbolicName").without("Bundle-ManifestVersion"),
                        "odd.jar was not started: it is a jar without a bundle’s name. Ask its author for the bundle, or take it out of {addons}."),
                Arguments.of(
                        "the name of another",
                        StrangeBundle.named("org.hidewright.thickness"),
                        NAME_TAKEN.replace("NAME", "org.hidewright.thickness")),
                Arguments.of(
                        "the name of the platform’s",
                        StrangeBundle.named("org.hidewright.catalogue"),
                        NAME_TAKEN.replace("NAME", "org.hidewright.catalogue")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("notStarted")
    void oneThatIsNotStartedIsToldAndItsSlipIsKept(String name, StrangeBundle odd, String told) throws Exception {
        StrangeRun run = new StrangeRun(scratch).with(odd);
        Packet packet = run.make(slip("odd", "odd"));
        assertEquals(1, packet.ended().code());
        assertTold(packet.ended(), told.replace("{addons}", run.addOns().toString()), isAway(name));
        assertEquals("dormant", packet.slip("odd").text("state").orElse(""));
        Ended listed = run.run("addons");
        assertTold(listed, told.replace("{addons}", run.addOns().toString()));
        assertTrue(listed.answer().contains("did not start; why was told as this command began"), listed::toString);
    }

    /** Of one that says nothing of itself, or goes by the name of one that is used, nobody knows what it would have brought. */
    private static String isAway(String name) {
        if (List.of("no name of a bundle", "the name of another", "the name of the platform’s")
                .contains(name)) {
            return """
                    Stop (line 2, column 1, slip “odd”): No calculator called “odd” is installed.
                        The slip is kept exactly as it is, but cannot be worked.
                        Install the bundle that brings “odd”: hidewright addons install FILE. hidewright addons alone lists what did not start or was left out.""";
        }
        return """
                Stop (line 2, column 1, slip “odd”): “odd” is a calculator of net.example.odd, which is installed and did not start.
                    The slip is kept exactly as it is, but cannot be worked.
                    What kept it is told at each start, with what to do. Where its author has to mend it, put the mended one in its place: hidewright addons install FILE --replace""";
    }

    @Test
    void aTextFileCalledAJarIsTold() throws Exception {
        StrangeRun run = new StrangeRun(scratch);
        Files.writeString(Files.createDirectories(run.addOns()).resolve("notes.jar"), "buy thread");
        Packet packet = run.make();
        assertEquals(0, packet.ended().code());
        assertTold(
                packet.ended(),
                "notes.jar was not started: it cannot be read as a bundle. Copy it again, or take it out of "
                        + run.addOns() + ".");
    }

    static Stream<Arguments> notHad() {
        String made = "    static { if (true) throw new IllegalStateException(\"no awl\"); }";
        return Stream.of(
                Arguments.of(
                        "constructor throws",
                        StrangeBundle.odd(
                                LENGTH, "public Odd() { throw new IllegalStateException(\"no awl\"); }", DONE),
                        NONE),
                Arguments.of("class cannot be initialized", StrangeBundle.odd(LENGTH, made, DONE), NONE),
                Arguments.of(
                        "constructor never comes back",
                        StrangeBundle.odd(LENGTH, "public Odd() { while (true) {} }", DONE),
                        FAULT.formatted("it had not come back after 2 s and was left to itself")),
                Arguments.of("no public constructor", StrangeBundle.odd(LENGTH, "private Odd() {}", DONE), NONE),
                Arguments.of("class not there", sound().lacking("Odd"), NONE),
                Arguments.of("is no calculator", sound().source("Odd", "public class Odd {}"), NONE),
                Arguments.of(
                        "wrong declaration",
                        StrangeBundle.odd("Object length", "", "return null;"),
                        "Check: A calculator of bundle net.example.odd cannot be used.\n"
                                + "    Its declaration is wrong: net.example.odd.Odd$A, component length: annotate it with @Answered\n"
                                + TELL),
                Arguments.of(
                        "formulas null",
                        StrangeBundle.odd(LENGTH, "@Override public List<Formula> formulas() { return null; }", DONE),
                        FAULT.formatted(
                                "java.lang.NullPointerException: Cannot invoke \"java.util.Collection.toArray()\" because \"coll\" is null")),
                Arguments.of(
                        "formulas never come",
                        StrangeBundle.odd(
                                LENGTH, "@Override public List<Formula> formulas() { while (true) {} }", DONE),
                        FAULT.formatted("it had not come back after 2 s and was left to itself")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("notHad")
    void aCalculatorThatCannotBeHadIsToldAndItsSlipIsKept(String name, StrangeBundle odd, String told)
            throws Exception {
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"));
        assertEquals(1, packet.ended().code());
        assertTold(packet.ended(), unusable("odd"), told);
        assertEquals("dormant", packet.slip("odd").text("state").orElse(""));
        assertTrue(packet.page().contains("its calculator cannot be used"), packet::toString);
    }

    private static String unusable(String id) {
        return """
                Stop (line 2, column 1, slip “%1$s”): The calculator “%1$s” is installed and cannot be used.
                    The slip is kept exactly as it is, but cannot be worked. This is a fault of the bundle that brings it.
                    hidewright explain %1$s says what is wrong with it, and what to do.""".formatted(id);
    }

    @Test
    void anIdThatIsTakenStaysWithTheFirst() throws Exception {
        StrangeBundle odd = named(sound(), "thickness");
        Packet packet = new StrangeRun(scratch).with(odd).make();
        assertEquals(0, packet.ended().code());
        assertTold(
                packet.ended(),
                "Check: Bundle net.example.odd brings another calculator called “thickness”.",
                "    Of two of one name the one that came with the program is used, and otherwise that of the bundle whose name comes first in the alphabet: the one of org.hidewright.thickness is used.",
                "    Turn one of the two bundles off: hidewright addons off net.example.odd, or hidewright addons off org.hidewright.thickness.");
    }

    @Test
    void aCalculatorThatCallsItselfOtherwiseIsTold() throws Exception {
        Packet packet = new StrangeRun(scratch).with(named(sound(), "even")).make(slip("odd", "even"));
        assertEquals(1, packet.ended().code());
        assertTold(
                packet.ended(),
                unusable("even").replaceFirst("slip “even”", "slip “odd”"),
                "Check: A calculator of bundle net.example.odd cannot be used.",
                "    It is announced as “even” and calls itself “odd”.",
                TELL);
    }

    /** The calculator announced under another id than that of its class. */
    private static StrangeBundle named(StrangeBundle odd, String id) {
        return odd.without("Service-Component").calculator("Odd", id);
    }

    @Test
    void aDescriptionThatIsNoneBringsNothingAndSpoilsNothing() throws Exception {
        StrangeBundle odd = sound().entry("OSGI-INF/net.example.odd.Odd.xml", "<scr:component");
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"));
        assertEquals(1, packet.ended().code());
        assertEquals("dormant", packet.slip("odd").text("state").orElse(""));
    }
}
