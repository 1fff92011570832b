package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.store.FileTrouble;

/**
 * Whose signature an add-on has to carry here (JAR File Specification, Signed JAR File). As soon as somebody is named, nothing is
 * installed or started that none of those named has signed.
 */
public interface TrustedMakers {
    /** Those named; none where any add-on may be installed. */
    List<Maker> all() throws FileTrouble;

    /**
     * Names somebody.
     *
     * @param certificate a file with an X.509 certificate
     * @return who it is made out for
     * @throws FileTrouble if it is none, or the choice cannot be written
     */
    Maker trust(Path certificate) throws FileTrouble;

    /**
     * Names somebody no more.
     *
     * @param named the fingerprint, or its beginning, or the name
     * @return who it was
     * @throws FileTrouble if nobody is named so, or several are
     */
    Maker distrust(String named) throws FileTrouble;

    /**
     * Somebody who signs.
     *
     * @param fingerprint the SHA-256 of the certificate, in small letters
     * @param name whom it is made out for
     */
    record Maker(String fingerprint, String name) {}
}
