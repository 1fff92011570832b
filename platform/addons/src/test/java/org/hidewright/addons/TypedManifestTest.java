package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypedManifestTest {
    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "\r\n", "\r"})
    void itsLastLineCountsHoweverItEnds(String end) throws IOException {
        byte[] typed = bytes("Manifest-Version: 1.0\nHidewright-Templates: roll.json" + end);
        assertEquals("roll.json", TypedManifest.read(typed).getMainAttributes().getValue("Hidewright-Templates"));
    }

    @Test
    void whatIsEndedStaysAsItIs() {
        byte[] ended = bytes("A: b\n");
        assertSame(ended, TypedManifest.ended(ended));
        assertArrayEquals(ended, TypedManifest.ended(bytes("A: b")));
        assertEquals(0, TypedManifest.ended(new byte[0]).length);
    }
}
