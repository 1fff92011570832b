package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.CodeSigner;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;

/**
 * The signature that a jar carries (JAR File Specification, Signed JAR File). None has to be there unless the workshop demands
 * one, see {@link Trust}; but one that is there says what was packed, and a jar that was changed since is not what its author
 * gave away.
 */
final class Seal {

    private static final Pattern PART = Pattern.compile("META-INF/(?:[^/]+\\.(?:SF|RSA|DSA|EC)|SIG-[^/]*)");
    private static final String DIGEST = "-DIGEST";

    private Seal() {}

    /** Whether a file inside a jar belongs to a signature. */
    static boolean isPartOfOne(String name) {
        return PART.matcher(name.toUpperCase(Locale.ROOT)).matches();
    }

    /** Whether every file of a signed jar is there, is signed, and is as it was signed. */
    static boolean holds(File jar) throws IOException {
        return signersOfAll(jar) != null;
    }

    /** SHA-256 of the certificates whose owners each signed every file of a jar; none where it is not signed whole. */
    static Set<String> signers(File jar) {
        try {
            Set<String> signers = signersOfAll(jar);
            return signers == null ? Set.of() : signers;
        } catch (IOException noJar) {
            return Set.of();
        }
    }

    /** Null where a file is not signed, not as it was signed, or missing. */
    private static Set<String> signersOfAll(File jar) throws IOException {
        Set<String> common = null;
        try (JarFile signed = new JarFile(jar, true)) {
            for (Enumeration<JarEntry> all = signed.entries(); all.hasMoreElements(); ) {
                JarEntry entry = all.nextElement();
                try (InputStream in = signed.getInputStream(entry)) {
                    in.transferTo(OutputStream.nullOutputStream()); // who signed it is known once it is read
                }
                if (isBesideTheSigned(entry)) {
                    continue;
                }
                if (entry.getCodeSigners() == null) {
                    return null;
                }
                Set<String> signers = fingerprints(entry.getCodeSigners());
                if (common != null) {
                    signers.retainAll(common);
                }
                common = signers;
            }
            if (signed.getManifest() != null && missesOne(signed)) {
                return null;
            }
            return common == null ? Set.of() : common;
        } catch (SecurityException changed) {
            return null;
        }
    }

    private static boolean missesOne(JarFile signed) throws IOException {
        for (Map.Entry<String, Attributes> named :
                signed.getManifest().getEntries().entrySet()) {
            if (isDigested(named.getValue()) && signed.getEntry(named.getKey()) == null) {
                return true;
            }
        }
        return false;
    }

    /** Of the certificates that signed themselves; what vouches for them is not looked at. */
    private static Set<String> fingerprints(CodeSigner[] signers) {
        Set<String> fingerprints = new HashSet<>();
        for (CodeSigner signer : signers) {
            try {
                fingerprints.add(sha256(
                        signer.getSignerCertPath().getCertificates().get(0).getEncoded()));
            } catch (CertificateEncodingException unreadable) {
                // signed by nobody who can be known
            }
        }
        return fingerprints;
    }

    /** In small letters, as fingerprints and checksums are written here. */
    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** Folders hold nothing, and the manifest is vouched for by the signature file. */
    private static boolean isBesideTheSigned(JarEntry entry) {
        return entry.isDirectory() || entry.getName().equals(JarFile.MANIFEST_NAME) || isPartOfOne(entry.getName());
    }

    private static boolean isDigested(Attributes named) {
        for (Object name : named.keySet()) {
            if (name.toString().toUpperCase(Locale.ROOT).endsWith(DIGEST)) {
                return true;
            }
        }
        return false;
    }
}
