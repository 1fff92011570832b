package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.jar.Manifest;

/** A manifest as somebody typed it. */
final class TypedManifest {
    private TypedManifest() {}

    /** Java leaves the last line out where nothing ends it, and with it the templates that stand there. */
    static byte[] ended(byte[] typed) {
        if (typed.length == 0 || typed[typed.length - 1] == '\n' || typed[typed.length - 1] == '\r') {
            return typed;
        }
        byte[] ended = Arrays.copyOf(typed, typed.length + 1);
        ended[typed.length] = '\n';
        return ended;
    }

    static Manifest read(byte[] typed) throws IOException {
        return new Manifest(new ByteArrayInputStream(ended(typed)));
    }
}
