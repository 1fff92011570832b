package org.hidewright.distribution;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A jar that was made badly, or by somebody who means no good.
 *
 * @param file what it is called in the folder of add-ons
 * @param bytes what is in it
 * @param asked the calculator that a slip asks for; empty where none does
 * @param told what is told of it: remarks of a line or several; none where there is nothing to tell
 */
record HostileJar(String file, byte[] bytes, String asked, List<String> told) {

    /** What is told of a bundle that was given up, when it can be turned off. */
    static final String UNTIL = " Until then turn it off: hidewright addons off {bundle}";

    /** What is told of a slip whose calculator is there and of no use. */
    static final String UNUSABLE = """
            Stop (line {line}, column 1, slip “{name}”): The calculator “{asked}” is installed and cannot be used.
                The slip is kept exactly as it is, but cannot be worked. This is a fault of the bundle that brings it.
                hidewright explain {asked} says what is wrong with it, and what to do.""";

    private static final String TELL =
            "    Tell the maker of the bundle, or turn it off: hidewright addons off {bundle}. Everything else works on.";

    /** What is told of a bundle that announces a calculator and has none. */
    static final String NONE = """
            Check: A calculator or table of bundle {bundle} did not start.
                The bundle announced it and then gave none.
            """ + TELL;

    /** What is told of a slip that nobody works. */
    static final String NOBODY = """
            Stop (line {line}, column 1, slip “{name}”): No calculator called “{asked}” is installed.
                The slip is kept exactly as it is, but cannot be worked.
                Install the bundle that brings “{asked}”: hidewright addons install FILE. hidewright addons alone lists what did not start or was left out.""";

    /** Of one that is told when it is started, or not at all. */
    static HostileJar of(String name, byte[] bytes, String... told) {
        return new HostileJar(name + ".jar", bytes, "", List.of(told));
    }

    /** Of one whose calculator, called as the jar is, is asked by a slip. */
    static HostileJar asked(String name, byte[] bytes, String... told) {
        return new HostileJar(name + ".jar", bytes, name, List.of(told));
    }

    /** What is told of a declaration that is wrong. */
    static String wrongly(String declared) {
        return "Check: A calculator of bundle {bundle} cannot be used.\n    Its declaration is wrong: " + declared
                + "\n" + TELL;
    }

    String name() {
        return file.replace(".jar", "");
    }

    /** What is told, with the places filled that stand in it. */
    List<String> told(Path addOns, int line) {
        return told.stream()
                .map(text -> text.replace("{file}", file)
                        .replace("{name}", name())
                        .replace("{bundle}", "net.example." + name())
                        .replace("{asked}", asked)
                        .replace("{addons}", addOns.toString())
                        .replace("{line}", String.valueOf(line)))
                .toList();
    }

    void layInto(Path folder) throws IOException {
        Files.write(Files.createDirectories(folder).resolve(file), bytes);
    }

    /** A sound calculator in a bundle of its own, to be spoilt: {@code broken} is called {@code net.example.broken}. */
    static StrangeBundle sound(String id) {
        return StrangeBundle.named("net.example." + id)
                .source("Odd", calculator(id, "return Outcome.of(new A(asked.thickness()));"))
                .calculator("Odd", id)
                .texts("""
                        %1$s.title = Odd one
                        %1$s.purpose = Does as it likes.
                        %1$s.thickness = Thickness
                        %1$s.thickness.help = Of the leather.
                        %1$s.answer.length = Length
                        """.formatted(id));
    }

    /** The source of a calculator. */
    static String calculator(String id, String calculate) {
        return """
                import java.util.*;
                import org.hidewright.api.calculator.*;
                import org.hidewright.api.measure.*;

                @Calculates("%s")
                public class Odd implements Calculator<Odd.Q, Odd.A> {
                    public record Q(@Asked(unit = "mm", preset = "2 mm") Length thickness) {}

                    public record A(@Answered(unit = "mm") Length length) {}

                    @Override
                    public Outcome<A> calculate(Q asked, Working working) {
                        %s
                    }
                }
                """.formatted(id, calculate);
    }

    /** As {@link #sound}, and its start does this. */
    static StrangeBundle starting(String id, String start) {
        return starting(id, "Start", start);
    }

    /** The same by a class of this name: who breaks down is known by it. */
    static StrangeBundle starting(String id, String className, String start) {
        return sound(id)
                .header("Bundle-Activator", StrangeBundle.PACKAGE + "." + className)
                .source(className, """
                import org.osgi.framework.*;

                public class %s implements BundleActivator {
                    @Override
                    public void start(BundleContext context) throws Exception {
                        %s
                    }

                    @Override
                    public void stop(BundleContext context) {}
                }
                """.formatted(className, start));
    }
}
