package org.hidewright.distribution;

import static org.hidewright.distribution.HostilePacking.CLASS;
import static org.hidewright.distribution.HostilePacking.DESCRIPTION;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Jars that are packed well, and bring code and descriptions that are not: each has a slip that asks for its calculator. */
final class HostileCode {
    private static final String NO_ID = ": the id \"%s\" must be lower-case words joined by hyphens";
    private static final String CLASS_NAME = StrangeBundle.PACKAGE + ".Odd";

    private HostileCode() {}

    static List<HostileJar> jars() throws IOException {
        List<HostileJar> jars = new ArrayList<>(descriptions());
        jars.addAll(classes());
        jars.addAll(ids());
        jars.addAll(texts());
        // First by its name, so that the others would be given its classes for those of the contract
        jars.add(HostileJar.of(
                "a-contract",
                StrangeBundle.named("net.example.a-contract")
                        .without("Import-Package")
                        .header("Export-Package", "org.hidewright.api.calculator;version=1.9")
                        .packed()));
        return jars;
    }

    private static HostileJar described(String name, String description) throws IOException {
        byte[] jar = HostileJar.sound(name).entry(DESCRIPTION, description).packed();
        return HostileJar.asked(name, jar, HostileJar.NOBODY);
    }

    private static List<HostileJar> descriptions() throws IOException {
        StringBuilder growing = new StringBuilder("<!DOCTYPE l [<!ENTITY l0 \"lace\">");
        for (int i = 1; i < 12; i++) {
            growing.append(
                    "<!ENTITY l%d \"%s\">".formatted(i, "&l%d;".formatted(i - 1).repeat(10)));
        }
        return List.of(
                described("torn-words", "<scr:component"),
                described("growing", growing + "]><l>&l11;</l>"),
                HostileJar.asked(
                        "gone",
                        HostileJar.sound("gone")
                                .header("Service-Component", "OSGI-INF/none.xml")
                                .packed(),
                        HostileJar.NOBODY));
    }

    private static List<HostileJar> classes() throws IOException {
        byte[] newer = ZipBytes.of(HostileJar.sound("newer").packed()).content(CLASS);
        newer[7] = 99; // the version of its format, in the seventh and eighth byte
        byte[] deep = HostileJar.sound("deep-inside").packed();
        for (int i = 0; i < 3; i++) {
            deep = ZipBytes.of(StrangeBundle.named("net.example.inner").packed())
                    .with("inner.jar", deep)
                    .bytes();
        }
        return List.of(
                unusable("no-class", HostileJar.sound("no-class").lacking("Odd").packed()),
                unusable(
                        "no-inner-jar",
                        HostileJar.sound("no-inner-jar")
                                .header("Bundle-ClassPath", "inner.jar")
                                .lacking("Odd")
                                .packed()),
                unusable(
                        "deep-inside",
                        ZipBytes.of(HostileJar.sound("deep-inside")
                                        .header("Bundle-ClassPath", ".,inner.jar")
                                        .lacking("Odd")
                                        .packed())
                                .with("inner.jar", deep)
                                .bytes()),
                unusable(
                        "no-calculator",
                        HostileJar.sound("no-calculator")
                                .source("Odd", "public class Odd {}")
                                .packed()),
                unusable(
                        "newer",
                        ZipBytes.of(HostileJar.sound("newer").packed())
                                .changed(CLASS, newer)
                                .bytes()),
                unusable(
                        "garbage",
                        ZipBytes.of(HostileJar.sound("garbage").packed())
                                .changed(CLASS, "no class".getBytes(StandardCharsets.UTF_8))
                                .bytes()));
    }

    private static HostileJar unusable(String name, byte[] jar) {
        return HostileJar.asked(name, jar, HostileJar.UNUSABLE, HostileJar.NONE);
    }

    private static List<HostileJar> ids() throws IOException {
        List<HostileJar> jars = new ArrayList<>();
        jars.add(HostileJar.of(
                "id-empty", withId("id-empty", "").packed(), HostileJar.wrongly(CLASS_NAME + NO_ID.formatted(""))));
        for (String id : List.of("two words", "../Odd<b>")) {
            String name = "id-" + jars.size();
            jars.add(new HostileJar(
                    name + ".jar",
                    withId(name, id).packed(),
                    id,
                    List.of(HostileJar.UNUSABLE, HostileJar.wrongly(CLASS_NAME + NO_ID.formatted(id)))));
        }
        String taken = "Check: Bundle {bundle} brings another calculator called “%1$s”.\n"
                + "    Of two of one name the one that came with the program is used, and otherwise that of the bundle whose name comes first in the alphabet: the one of %2$s is used.\n"
                + "    Turn one of the two bundles off: hidewright addons off {bundle}, or hidewright addons off %2$s.";
        jars.add(HostileJar.of(
                "id-of-thickness",
                withId("id-of-thickness", "thickness").packed(),
                taken.formatted("thickness", "org.hidewright.thickness")));
        jars.add(HostileJar.of("rival-1", withId("rival-1", "rival").packed()));
        jars.add(HostileJar.of(
                "rival-2", withId("rival-2", "rival").packed(), taken.formatted("rival", "net.example.rival-1")));
        return jars;
    }

    private static StrangeBundle withId(String name, String id) {
        return HostileJar.sound(name)
                .source("Odd", HostileJar.calculator(id, "return Outcome.of(new A(asked.thickness()));"))
                .without("Service-Component")
                .calculator("Odd", id.replace("<", "&lt;"));
    }

    private static List<HostileJar> texts() throws IOException {
        String component = "@Answered(unit = \"mm\") Length length";
        return List.of(
                // Their answers stand, under their keys instead of words
                HostileJar.asked(
                        "no-texts", HostileJar.sound("no-texts").texts("").packed()),
                HostileJar.asked(
                        "bad-escape",
                        HostileJar.sound("bad-escape")
                                .texts("bad-escape.title = \\u12")
                                .packed()),
                HostileJar.asked(
                        "bad-pattern",
                        HostileJar.sound("bad-pattern")
                                .texts("bad-pattern.title = Some {0\nbad-pattern.answer.length = {x}")
                                .packed()),
                HostileJar.asked(
                        "undeclared",
                        HostileJar.sound("undeclared")
                                .source(
                                        "Odd",
                                        HostileJar.calculator("undeclared", "return null;")
                                                .replace(component, "Object length"))
                                .packed(),
                        HostileJar.UNUSABLE,
                        HostileJar.wrongly(CLASS_NAME + "$A, component length: annotate it with @Answered")),
                HostileJar.asked(
                        "without-end",
                        HostileJar.sound("without-end")
                                .source(
                                        "Odd",
                                        HostileJar.calculator(
                                                        "without-end",
                                                        "return Outcome.of(new A(\"x\".repeat(10_000_000)));")
                                                .replace(component, "@Answered String length"))
                                .packed(),
                        """
                        Stop (line {line}, column 1, slip “{name}”): The calculator “{asked}” has failed.
                            This is a fault of bundle {bundle}, not of your numbers: its answer “length” is a text of 10000000 characters, and 4000 can be shown
                            Use other numbers for now and tell the maker of the bundle, or turn it off: hidewright addons off {bundle}. Everything else works on."""));
    }
}
