package org.hidewright.launcher;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Whose signature an add-on has to carry in this workshop: a text file with a line {@code by FINGERPRINT NAME} for each, the
 * SHA-256 of a certificate and whom it is made out for. Where there is no such file none is asked for. Where there is one that
 * cannot be read, nobody is named, so that nothing passes: a demand is not lost by a torn file.
 *
 * <p>Only the certificate that signed is looked at: whether another vouches for it, and whether it ran out, is for whoever names
 * it to know.
 */
final class Trust {

    private static final String BY = "by ";
    private static final String REMARK = "#";
    private static final int FINGERPRINT = 64;

    private final boolean demanded;
    private final Set<String> fingerprints;
    private final List<Integer> nonsense;

    private Trust(boolean demanded, Set<String> fingerprints, List<Integer> nonsense) {
        this.demanded = demanded;
        this.fingerprints = fingerprints;
        this.nonsense = nonsense;
    }

    static Trust read(File file) {
        Set<String> fingerprints = new HashSet<>();
        List<Integer> nonsense = new ArrayList<>();
        if (!file.exists()) {
            return new Trust(false, fingerprints, nonsense);
        }
        try {
            int number = 0;
            for (String line : Files.readAllLines(file.toPath(), StandardCharsets.UTF_8)) {
                number++;
                String named = line.startsWith(BY) ? fingerprint(line.substring(BY.length())) : "";
                if (!named.isEmpty()) {
                    fingerprints.add(named);
                } else if (!line.isBlank() && !line.startsWith(REMARK)) {
                    nonsense.add(number);
                }
            }
        } catch (IOException unreadable) {
            fingerprints.clear();
        }
        return new Trust(true, fingerprints, nonsense);
    }

    private static String fingerprint(String said) {
        String first = said.strip().split("\\s", 2)[0].toLowerCase(Locale.ROOT);
        return first.length() == FINGERPRINT && first.chars().allMatch(c -> Character.digit(c, 16) >= 0) ? first : "";
    }

    /** The numbers of the lines that say nothing, counted from one. */
    List<Integer> nonsense() {
        return nonsense;
    }

    /** Why a jar does not pass, as the key of a sentence; empty where it does. */
    String fault(File jar) {
        if (!demanded) {
            return "";
        }
        Set<String> signers = Seal.signers(jar);
        if (signers.isEmpty()) {
            return "not-signed";
        }
        return vouchedFor(signers) ? "" : "signed-by-other";
    }

    /** Whether somebody who is named here signed it. */
    boolean vouchesFor(File jar) {
        return demanded && vouchedFor(Seal.signers(jar));
    }

    private boolean vouchedFor(Set<String> signers) {
        for (String signer : signers) {
            if (fingerprints.contains(signer)) {
                return true;
            }
        }
        return false;
    }
}
