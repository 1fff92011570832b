package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;

/**
 * The file that says whose signature add-ons have to carry, a line {@code by FINGERPRINT NAME} for each. The launcher reads it at each
 * start; it is written here. Other lines are somebody’s own and stay. When nobody is left in it, it goes.
 */
final class NamedMakers implements TrustedMakers {
    private static final String FIRST_LINE =
            "# Whose signature an add-on has to carry here. Changed by: hidewright addons trust|distrust\n";
    private static final Pattern LINE = Pattern.compile("by\\s+([0-9a-fA-F]{64})(?:\\s+(.*))?");

    private final Path file;

    NamedMakers(Path settings) {
        this.file = settings.resolve("addons-trust.txt");
    }

    @Override
    public List<Maker> all() throws FileTrouble {
        return lines().stream().flatMap(line -> maker(line).stream()).distinct().toList();
    }

    private List<String> lines() throws FileTrouble {
        try {
            return Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of();
        } catch (IOException e) {
            throw Trouble.notRead(file, e);
        }
    }

    private static Optional<Maker> maker(String line) {
        Matcher by = LINE.matcher(line.strip());
        return by.matches()
                ? Optional.of(new Maker(by.group(1).toLowerCase(Locale.ROOT), by.group(2) == null ? "" : by.group(2)))
                : Optional.empty();
    }

    @Override
    public Maker trust(Path certificate) throws FileTrouble {
        Maker maker = read(certificate);
        List<String> lines = new ArrayList<>(Files.exists(file) ? lines() : List.of(FIRST_LINE.strip()));
        if (all().stream().noneMatch(named -> named.fingerprint().equals(maker.fingerprint()))) {
            lines.add("by " + maker.fingerprint() + " " + maker.name());
            write(lines);
        }
        return maker;
    }

    private static Maker read(Path file) throws FileTrouble {
        try {
            X509Certificate certificate = (X509Certificate) CertificateFactory.getInstance("X.509")
                    .generateCertificate(new ByteArrayInputStream(Files.readAllBytes(file)));
            return new Maker(
                    Sha256.of(certificate.getEncoded()),
                    certificate.getSubjectX500Principal().getName().replaceAll("\\p{Cntrl}+", " "));
        } catch (CertificateException e) {
            throw Trouble.of(AddOnNotices.ADD_ON_NOT_CERTIFICATE.with(
                    file.toString(), String.valueOf(e.getMessage()).replaceAll("\\s+", " ")));
        } catch (IOException e) {
            throw Trouble.notRead(file, e);
        }
    }

    @Override
    public Maker distrust(String named) throws FileTrouble {
        List<Maker> meant =
                all().stream().filter(maker -> isMeant(maker, named)).toList();
        if (meant.size() != 1) {
            throw Trouble.of(
                    meant.isEmpty()
                            ? AddOnNotices.ADD_ON_MAKER_UNKNOWN.with(named)
                            : AddOnNotices.ADD_ON_MAKER_SEVERAL.with(named));
        }
        List<String> left = new ArrayList<>(lines());
        left.removeIf(line -> maker(line)
                .filter(maker -> maker.fingerprint().equals(meant.get(0).fingerprint()))
                .isPresent());
        write(left);
        return meant.get(0);
    }

    /** By the whole name, by words of it, or by the beginning of the fingerprint, with colons or without. */
    private static boolean isMeant(Maker maker, String named) {
        String said = named.strip().toLowerCase(Locale.ROOT);
        return !said.isEmpty()
                && (Pattern.compile("(?U)(?<!\\w)" + Pattern.quote(said) + "(?!\\w)")
                                .matcher(maker.name().toLowerCase(Locale.ROOT))
                                .find()
                        || maker.fingerprint().startsWith(said.replace(":", "")));
    }

    private void write(List<String> lines) throws FileTrouble {
        try {
            Files.createDirectories(file.getParent());
            boolean somebody = lines.stream().anyMatch(line -> maker(line).isPresent());
            if (somebody) {
                WholeFile.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            } else {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
    }
}
