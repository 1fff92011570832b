package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PrintedByBundlesTest {

    private static final String FIRST = "A bundle prints what follows; it is no answer of Hidewright:\n";
    private static final String MORE = "It printed more than 4000 bytes; the rest is left out.\n";

    private final ByteArrayOutputStream told = new ByteArrayOutputStream();
    private final PrintedByBundles printed = new PrintedByBundles(new PrintStream(told, true, StandardCharsets.UTF_8));
    private final PrintStream stream = new PrintStream(printed, false, StandardCharsets.UTF_8);

    private String told() {
        printed.end();
        return told.toString(StandardCharsets.UTF_8);
    }

    @Test
    void whereNothingIsPrintedNothingIsTold() {
        stream.print("");
        stream.flush();
        assertEquals("", told());
    }

    @Test
    void whatIsPrintedIsToldUnderASentenceOfItsOwn() {
        stream.println("hello");
        stream.write('b');
        assertEquals(FIRST + "hello\nb\n", told());
    }

    @Test
    void aFloodIsCutOffAndToldOnce() {
        stream.print("x".repeat(3999));
        stream.print("yz");
        stream.print("more");
        stream.write('m');
        assertEquals(FIRST + "x".repeat(3999) + "y\n" + MORE, told());
    }

    @Test
    void exactlyAsMuchAsIsAllowedIsNoFlood() {
        stream.print("x".repeat(4000));
        assertEquals(FIRST + "x".repeat(4000) + "\n", told());
    }

    @Test
    void oneMoreIs() {
        stream.print("x".repeat(4000));
        stream.print("y");
        assertEquals(FIRST + "x".repeat(4000) + "\n" + MORE, told());
    }
}
