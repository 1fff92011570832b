package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class EndedFromInsideTest {

    private static String caller(String... frames) {
        return EndedFromInside.callerOfExit(Arrays.stream(frames)
                .map(frame -> new StackTraceElement(frame.split("#")[0], frame.split("#")[1], null, -1))
                .toArray(StackTraceElement[]::new));
    }

    @Test
    void whoAskedForTheEndIsReadOffTheStack() {
        assertEquals(
                "net.example.Kit",
                caller(
                        "java.lang.Shutdown#exit",
                        "java.lang.Runtime#exit",
                        "java.lang.System#exit",
                        "net.example.Kit#x"));
        assertEquals("net.example.Kit", caller("java.lang.Runtime#exit", "net.example.Kit#x", "java.lang.Thread#run"));
    }

    @Test
    void aSignalIsNoBundle() {
        assertNull(caller("java.lang.Shutdown#exit", "java.lang.Terminator$1#handle", "java.lang.Thread#run"));
        assertNull(caller("java.lang.Runtime#gc", "net.example.Kit#exit"));
    }
}
