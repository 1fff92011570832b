package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.Test;

class FindCommandTest {
    private final Terminal terminal = new Terminal(new Strap());

    @Test
    void whatIsFoundIsNamedAsItIsTypedAndAsItIsCalled() {
        assertEquals(0, terminal.run("find", "field", "kit", "--language=en"), terminal.err);
        assertTrue(terminal.out.startsWith("Calculators\n  kit-strap  "), terminal.out);
        assertTrue(terminal.out.contains("hidewright explain ID"), terminal.out);
    }

    @Test
    void aQuestionIsFoundUnderItsCalculator() {
        assertEquals(0, terminal.run("find", "LENGTH", "--language=en"), terminal.err);
        assertTrue(terminal.out.contains("Questions\n"), terminal.out);
        assertTrue(terminal.out.contains("  kit-strap keeper    Length  Kit strap, Keeper\n"), terminal.out);
    }

    @Test
    void nothingFoundIsToldWithWhatElseToTry() {
        assertEquals(1, terminal.run("find", "aeroplane", "--language=en"));
        assertEquals("", terminal.out);
        assertTrue(terminal.err.contains("aeroplane") && terminal.err.contains("hidewright explain"), terminal.err);
    }

    @Test
    void withoutAWordItIsNotUnderstood() {
        assertEquals(2, terminal.run("find", "--language=en"));
    }
}
