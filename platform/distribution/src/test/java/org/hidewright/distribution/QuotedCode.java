package org.hidewright.distribution;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The Java that a guide quotes, piece by piece, held against sources. How it is broken into lines does not matter. */
final class QuotedCode {
    private static final Pattern BLOCK = Pattern.compile("(?s)```java\\n(.*?)```");
    /** What is left out of a quote is parted by an ellipsis or an empty line. */
    private static final Pattern LEFT_OUT = Pattern.compile("…|\\n\\s*\\n");

    private QuotedCode() {}

    /** Pieces of code that say something: more than a closing bracket. */
    static List<String> in(String guide) {
        return BLOCK.matcher(guide)
                .results()
                .map((MatchResult block) -> block.group(1))
                .flatMap(block -> Arrays.stream(LEFT_OUT.split(block)))
                .map(QuotedCode::inOneLine)
                .filter(piece -> piece.chars().anyMatch(Character::isLetter))
                .toList();
    }

    /** The pieces that stand in none of the sources. */
    static List<String> missing(String guide, List<String> sources) {
        List<String> lines = sources.stream().map(QuotedCode::inOneLine).toList();
        return in(guide).stream()
                .filter(piece -> lines.stream().noneMatch(source -> source.contains(piece)))
                .toList();
    }

    /** All Java below a folder that is compiled, what is built left out. */
    static List<String> sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.toString().contains("archetype-resources"))
                    .map(QuotedCode::read)
                    .toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String inOneLine(String code) {
        return code.replaceAll("\\s+", " ").strip();
    }
}
