package org.hidewright.core.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells the bytes of a file from any others.
 *
 * @param sha256 the SHA-256 of the bytes in small hexadecimal digits
 * @param size how many bytes there are
 */
public record Fingerprint(String sha256, long size) {
    public static Fingerprint of(byte[] bytes) {
        try {
            return new Fingerprint(
                    HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)),
                    bytes.length);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
