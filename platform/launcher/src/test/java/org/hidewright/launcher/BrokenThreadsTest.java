package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class BrokenThreadsTest {

    private final ByteArrayOutputStream told = new ByteArrayOutputStream();
    private final BrokenThreads threads = new BrokenThreads(new PrintStream(told, true, StandardCharsets.UTF_8));

    @SuppressWarnings("serial")
    private static final class Mute extends RuntimeException {
        @Override
        public String getMessage() {
            throw new Mute();
        }
    }

    @Test
    void whatBrokeIsToldOnceAndInOneLine() {
        threads.uncaughtException(Thread.currentThread(), new IllegalStateException("no\n\tawl"));
        threads.uncaughtException(Thread.currentThread(), new IllegalStateException("no wax"));
        assertEquals(
                "A thread broke down beside the work (no awl). What was asked for goes on; please report it with the words in brackets."
                        + System.lineSeparator(),
                told.toString(StandardCharsets.UTF_8));
    }

    @Test
    void oneThatDoesNotSayWhyIsToldByItsKind() {
        threads.uncaughtException(Thread.currentThread(), new Mute());
        assertEquals(
                "A thread broke down beside the work (org.hidewright.launcher.BrokenThreadsTest$Mute)."
                        + " What was asked for goes on; please report it with the words in brackets."
                        + System.lineSeparator(),
                told.toString(StandardCharsets.UTF_8));
    }
}
