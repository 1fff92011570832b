package org.hidewright.addons;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;

/**
 * What keeps a jar from being installed or started, whatever its code would do then: how it is packed, which the launcher looks
 * over, and what it would become a part of.
 */
final class Soundness {
    /** What has nothing to do with how it is packed. */
    private static final Set<String> UNTRUSTED = Set.of("jar-not-signed", "jar-signed-by-other");

    private final Function<File, String> look;
    private final Supplier<Set<String>> program;

    /**
     * Looks jars over.
     *
     * @param look gives the key of what is wrong with how a jar is packed; empty where nothing is
     * @param program names of the bundles that nothing may become a part of
     */
    Soundness(Function<File, String> look, Supplier<Set<String>> program) {
        this.look = look;
        this.program = program;
    }

    /** What is wrong with how a jar is packed. */
    Optional<Phrase> packing(Path jar) {
        String fault = look.apply(jar.toFile());
        return fault.isEmpty() ? Optional.empty() : Optional.of(Phrase.of("jar-" + fault));
    }

    /** The same of what was packed here, which lies nowhere yet. */
    Optional<Phrase> packing(byte[] jar) throws IOException {
        Path written = Files.createTempFile("hidewright", ".jar");
        try {
            Files.write(written, jar);
            return packing(written);
        } finally {
            Files.delete(written);
        }
    }

    /** What is wrong with what a bundle wants to become a part of. */
    Optional<Phrase> host(Described described) {
        return program.get().contains(described.host())
                ? Optional.of(Phrase.of("jar-part-of-program", described.host()))
                : Optional.empty();
    }

    /** @throws FileTrouble if there is such a fault */
    static void mustBeNone(Path named, Optional<Phrase> fault) throws FileTrouble {
        if (fault.isPresent() && UNTRUSTED.contains(fault.get().key())) {
            throw Trouble.of(AddOnNotices.ADD_ON_UNTRUSTED.with(named.toString(), fault.get()));
        } else if (fault.isPresent()) {
            throw Trouble.of(AddOnNotices.ADD_ON_UNSOUND.with(named.toString(), fault.get()));
        }
    }
}
