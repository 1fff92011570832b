package org.hidewright.distribution;

import static org.hidewright.distribution.StrangeRun.assertTold;
import static org.hidewright.distribution.StrangeRun.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.params.provider.ValueSource;

/** Calculators of real jars that do wrong when they are called: told in plain words on their slip, and the rest is whole. */
class MisbehavingCalculationsIT {
    private static final String LENGTH = "@Answered(unit = \"mm\") Length length";
    private static final String DONE = "return Outcome.of(new A(asked.thickness()));";
    private static final String SOME = "static final NoticeKind SOME = NoticeKind.check(\"some\");";

    private static final String NOT_A_NOTICE =
            "java.lang.ClassCastException: class java.lang.String cannot be cast to class org.hidewright.api.calculator.Notice";

    private static final String WAY_OUT =
            "turn it off: hidewright addons off net.example.odd. Everything else works on.";

    @TempDir
    Path scratch;

    private static Arguments fault(String name, String why, StrangeBundle bundle) {
        return Arguments.of(name, why, bundle);
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                fault(
                        "exception",
                        "java.lang.IllegalStateException: the awl at the bench broke",
                        StrangeBundle.odd(LENGTH, "", """
                        throw new IllegalStateException("the awl\\n\\tat the bench broke");""")),
                fault(
                        "endless recursion",
                        "it called itself without end",
                        StrangeBundle.odd(LENGTH, "", "return calculate(asked, working);")),
                fault(
                        "a class of it is missing",
                        "java.lang.NoClassDefFoundError: net/example/odd/Odd$Gone",
                        StrangeBundle.odd(
                                        LENGTH,
                                        "static class Gone { static Outcome<A> get() { return null; } }",
                                        "return Gone.get();")
                                .lacking("Odd$Gone")),
                fault(
                        "assertion",
                        "java.lang.AssertionError: edge",
                        StrangeBundle.odd(LENGTH, "", "throw new AssertionError(\"edge\");")),
                fault(
                        "exception that cannot be told",
                        "net.example.odd.Odd$Mute",
                        StrangeBundle.odd(LENGTH, """
                        static class Mute extends RuntimeException {
                            @Override public String toString() { throw new Mute(); }
                            @Override public String getMessage() { throw new Mute(); }
                        }""", "throw new Mute();")),
                fault(
                        "exception of no end",
                        "java.lang.IllegalStateException: "
                                + "x".repeat(300 - "java.lang.IllegalStateException: ".length()) + "…",
                        StrangeBundle.odd(LENGTH, "", "throw new IllegalStateException(\"x\".repeat(10_000_000));")),
                fault(
                        "null outcome",
                        "java.lang.IllegalStateException: calculate gave null where an outcome belongs",
                        StrangeBundle.odd(LENGTH, "", "return null;")),
                fault(
                        "null answers",
                        "java.lang.NullPointerException: answers",
                        StrangeBundle.odd(LENGTH, "", "return Outcome.of((A) null);")),
                fault(
                        "null component",
                        "its answer “length” is missing",
                        StrangeBundle.odd(LENGTH, "", "return Outcome.of(new A(null));")),
                fault(
                        "no number",
                        "its answer “length” is NaN, which is no number",
                        StrangeBundle.odd("@Answered double length", "", "return Outcome.of(new A(Double.NaN));")),
                fault(
                        "infinite",
                        "its answer “length” is Infinity, which is no number",
                        StrangeBundle.odd("@Answered double length", "", "return Outcome.of(new A(1 / 0.0));")),
                fault(
                        "length that is no number",
                        "java.lang.ArithmeticException: a LENGTH must be a finite number, not NaN",
                        StrangeBundle.odd(LENGTH, "", "return Outcome.of(new A(Length.ofMm(Double.NaN)));")),
                fault(
                        "infinite length",
                        "java.lang.ArithmeticException: a LENGTH must be a finite number, not Infinity",
                        StrangeBundle.odd(
                                LENGTH, "", "return Outcome.of(new A(asked.thickness().times(1e308).times(10)));")),
                fault(
                        "foreign object in a notice",
                        "it tells a net.example.odd.Odd$Late, which cannot be put into words",
                        StrangeBundle.odd(
                                LENGTH,
                                SOME + """
                        static class Late { @Override public String toString() { while (true) {} } }""",
                                "return Outcome.of(new A(asked.thickness()), List.of(SOME.with(new Late(), 1)));")),
                fault(
                        "foreign object in a step",
                        "it tells a net.example.odd.Odd$Late, which cannot be put into words",
                        StrangeBundle.odd(
                                LENGTH,
                                """
                        static class Late extends Number {
                            public int intValue() { return 0; }
                            public long longValue() { return 0; }
                            public float floatValue() { return 0; }
                            public double doubleValue() { while (true) {} }
                        }""",
                                "working.step(Formula.of(\"f\", \"t\", Source.of(\"s\", Source.Kind.DEFINITION)), new Late(), \"t\", 1);"
                                        + DONE)),
                fault(
                        "list of something else",
                        "its answer “length” should be of the kind length and is a java.lang.String",
                        StrangeBundle.odd(
                                "@Answered(unit = \"mm\") List<Length> length",
                                "",
                                "return Outcome.of(new A((List) List.of(\"long\")));")),
                fault(
                        "notices of something else",
                        NOT_A_NOTICE,
                        StrangeBundle.odd(
                                LENGTH, "", "return Outcome.of(new A(asked.thickness()), (List) List.of(\"x\"));")),
                fault(
                        "reasons of something else",
                        NOT_A_NOTICE,
                        StrangeBundle.odd(
                                LENGTH,
                                "",
                                "return Outcome.refuse((List) List.of(NoticeKind.stop(\"some\").with(1, 2), \"x\"));")),
                fault(
                        "another record",
                        "java.lang.IllegalStateException: answered with net.example.odd.Odd$B, and declared is net.example.odd.Odd$A",
                        StrangeBundle.odd(
                                LENGTH,
                                "public record B(Length length) {}",
                                "return (Outcome) Outcome.of(new B(asked.thickness()));")),
                fault(
                        "rows without end",
                        "its answer “length” has 100000 rows, and 5000 can be shown",
                        StrangeBundle.odd(
                                "@Answered(unit = \"mm\") List<Length> length",
                                "",
                                "return Outcome.of(new A(Collections.nCopies(100_000, asked.thickness())));")),
                fault(
                        "text without end",
                        "its answer “length” is a text of 10000000 characters, and 4000 can be shown",
                        StrangeBundle.odd(
                                "@Answered String length", "", "return Outcome.of(new A(\"x\".repeat(10_000_000)));")),
                fault(
                        "drawing of a million lines",
                        "its drawing “length” has 1000000 shapes, and 50000 can be shown",
                        StrangeBundle.odd("@Answered Drawing length", "", """
                        Drawing.Builder drawing = Drawing.builder();
                        for (int i = 0; i < 1_000_000; i++) {
                            drawing.add(Path.line(Role.CUT, Point.of(0, i), Point.of(1, i)));
                        }
                        return Outcome.of(new A(drawing.build()));""")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void aFaultIsToldOnItsSlip(String name, String why, StrangeBundle odd) throws Exception {
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"));
        assertFailed(packet, why);
    }

    private static void assertFailed(Packet packet, String why) throws Exception {
        List<String> told = StrangeRun.told(packet.ended()).lines().toList();
        assertEquals(3, told.size(), packet.ended().told());
        assertEquals("Stop (line 2, column 1, slip “odd”): The calculator “odd” has failed.", told.get(0));
        String begin = "    This is a fault of bundle net.example.odd, not of your numbers: " + why;
        assertEquals(
                begin,
                told.get(1).substring(0, Math.min(begin.length(), told.get(1).length())));
        assertEquals("    Use other numbers for now and tell the maker of the bundle, or " + WAY_OUT, told.get(2));
        assertEquals(1, packet.ended().code());
        assertEquals("broken", packet.slip("odd").text("state").orElse(""));
        assertTrue(packet.page().contains("hidewright addons off"), packet::toString);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "while (true) {}",
                "while (true) { try { Thread.sleep(100_000); } catch (InterruptedException e) {} }",
                "synchronized (System.out) { while (true) {} }",
                "synchronized (Odd.class) { return endless(); }"
            })
    void oneThatNeverComesBackIsLeftAloneAndNotCalledAgain(String forever) throws Exception {
        StrangeBundle odd = StrangeBundle.odd(
                LENGTH,
                "Outcome<A> endless() { while (true) { Thread.interrupted(); } }",
                "System.out.println(\"called\");" + forever);
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"), slip("odd-2", "odd"));
        String late = "it had not come back after " + StrangeRun.PATIENCE + " s and was left to itself";
        assertTold(
                packet.ended(),
                "A bundle prints what follows; it is no answer of Hidewright:",
                "called",
                leftAlone(2, "odd", late),
                leftAlone(3, "odd-2", "an earlier call of the bundle failed: " + late));
        assertEquals(1, packet.ended().code());
        assertEquals("broken", packet.slip("odd-2").text("state").orElse(""));
    }

    private static String leftAlone(int line, String slip, String why) {
        return """
                Stop (line %d, column 1, slip “%s”): The calculator “odd” has failed, and its bundle is not called again until the next start.
                    This is a fault of bundle net.example.odd, not of your numbers: %s.
                    Tell the maker of the bundle, or %s""".formatted(line, slip, why, WAY_OUT);
    }

    @Test
    void oneThatFillsTheMemoryIsLeftAlone() throws Exception {
        StrangeBundle odd = StrangeBundle.odd(LENGTH, "", """
                List<long[]> all = new ArrayList<>();
                while (true) {
                    all.add(new long[1 << 14]);
                }""");
        Packet packet = new StrangeRun(scratch, "-Xmx48m").with(odd).make(slip("odd", "odd"));
        assertTold(packet.ended(), leftAlone(2, "odd", "it asked for more memory than there is"));
        assertEquals(1, packet.ended().code());
    }

    @Test
    void aFloodBesideTheAnswerIsCutOffAndTheAnswerStands() throws Exception {
        StrangeBundle odd = StrangeBundle.odd(LENGTH, SOME, """
                Formula f = Formula.of("f", "2 · t", Source.of("s", Source.Kind.DEFINITION));
                for (int i = 0; i < 100_000; i++) {
                    working.step(f, asked.thickness(), "t", asked.thickness());
                }
                return Outcome.of(new A(asked.thickness()), Collections.nCopies(100_000, SOME.with(1, 2)));""");
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"));
        String told = packet.ended().told();
        String some = "Check (line 2, column 1, slip “odd”): Some 1.\n    Because of 2.\n    Look again.\n";
        assertEquals(some.repeat(60), told.substring(0, Math.min(60 * some.length(), told.length())));
        assertEquals("""
                Check (line 2, column 1, slip “odd”): The calculator “odd” tells more than anybody can read.
                    It gave 100000 notices and 100000 steps of working; the weightiest notices and the first steps are shown. This is a fault of bundle net.example.odd.
                    The answers are whole. Tell the maker of the bundle, or turn it off: hidewright addons off net.example.odd. Everything else works on.
                """, told.substring(60 * some.length()));
        assertEquals(0, packet.ended().code());
        assertEquals("worked", packet.slip("odd").text("state").orElse(""));
        assertTrue(packet.page().contains("tells more than anybody can read"), packet::toString);
    }

    static Stream<Arguments> slovenly() {
        String notice = "return Outcome.of(new A(asked.thickness()), List.of(SOME.with(1)));";
        return Stream.of(
                Arguments.of(
                        "no texts at all",
                        StrangeBundle.odd(LENGTH, SOME, notice).texts(""),
                        "«notice.some.what»"),
                Arguments.of("too few arguments", StrangeBundle.odd(LENGTH, SOME, notice), "Because of {1}."),
                Arguments.of(
                        "a pattern that is none",
                        StrangeBundle.odd(LENGTH, SOME, notice).texts("notice.some.what = Some {0"),
                        "Some {0"),
                Arguments.of(
                        "a file of texts that is none",
                        StrangeBundle.odd(LENGTH, SOME, notice).texts("notice.some.what = \\u12"),
                        "«notice.some.what»"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slovenly")
    void textsThatAreWrongSpoilNoAnswer(String name, StrangeBundle odd, String shown) throws Exception {
        Packet packet = new StrangeRun(scratch).with(odd).make(slip("odd", "odd"));
        assertEquals(0, packet.ended().code());
        assertEquals(3, packet.ended().told().lines().count(), packet.ended().told());
        assertTrue(packet.ended().told().contains(shown), packet.ended().told());
        assertEquals("worked", packet.slip("odd").text("state").orElse(""));
    }

    static Stream<Arguments> strangeAnswers() {
        return Stream.of(
                Arguments.of("hardly anything", LENGTH, "Length.ofMm(Double.MIN_VALUE)"),
                Arguments.of("more than the world", LENGTH, "Length.ofMm(1e300)"),
                Arguments.of("no character", "@Answered String length", "\"a\\u0000\\u0007\\ud800\\ufffeb\""),
                Arguments.of("turned about", "@Answered String length", "\"a\\u202ebcd\\u0301\".repeat(300)"),
                Arguments.of("no word ends", "@Answered String length", "\"x\".repeat(4000)"),
                Arguments.of("many lines", "@Answered String length", "\"x\\n\".repeat(2000)"),
                Arguments.of(
                        "dot",
                        "@Answered Drawing length",
                        "Drawing.of(List.of(Path.line(Role.CUT, Point.of(1, 1), Point.of(1, 1))))"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("strangeAnswers")
    void aStrangeAnswerIsWritten(String name, String answers, String answer) throws Exception {
        Packet packet = new StrangeRun(scratch)
                .with(StrangeBundle.odd(answers, "", "return Outcome.of(new A(" + answer + "));"))
                .make(slip("odd", "odd"));
        assertTold(packet.ended(), "");
        assertEquals(0, packet.ended().code());
        assertEquals("worked", packet.slip("odd").text("state").orElse(""));
    }

    @Test
    void aZeroIsShownWithoutASign() throws Exception {
        StrangeBundle odd = StrangeBundle.odd("@Answered double length", "", "return Outcome.of(new A(-0.0));");
        Ended ended = new StrangeRun(scratch).with(odd).run("work", "odd");
        assertEquals("", ended.told());
        assertTrue(ended.answer().matches("(?s).*Length +0\\s.*"), ended.answer());
    }

    @Test
    void whatItPrintsIsKeptOutOfTheAnswer() throws Exception {
        StrangeBundle odd = StrangeBundle.odd(LENGTH, "", """
                System.out.println("{\\"not\\": 1}");
                System.err.print("x".repeat(1_000_000));""" + DONE);
        Ended ended = new StrangeRun(scratch).with(odd).run("work", "odd", "--json");
        assertEquals(0, ended.code());
        assertEquals("worked", StrangeRun.read(ended.answer()).text("state").orElse(""));
        assertTold(
                ended,
                "A bundle prints what follows; it is no answer of Hidewright:",
                "{\"not\": 1}",
                "x".repeat(3989),
                "It printed more than 4000 bytes; the rest is left out.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "System.exit(0);",
                "Runtime.getRuntime().exit(0);",
                "new Thread(() -> System.exit(0)).start(); while (asked != null) {}"
            })
    void oneThatEndsTheProgramIsNamed(String exit) throws Exception {
        StrangeRun run = new StrangeRun(scratch)
                .with(StrangeBundle.odd(LENGTH, "", exit + "if (asked != null) {" + DONE + "} return null;"));
        Ended ended = run.run("work", "odd", "--json");
        assertEquals("", ended.answer());
        assertEquals(70, ended.code());
        assertTold(
                ended,
                "The bundle net.example.odd ended Hidewright in the middle of its work; what was asked for is not done. "
                        + "Tell its author, and turn it off: hidewright addons off net.example.odd --without-addons");
        assertEquals(
                0,
                run.run("addons", "off", "net.example.odd", "--without-addons").code());
        run.make();
    }
}
