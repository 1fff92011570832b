package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.TextTemplate;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Quantities;
import org.junit.jupiter.api.Test;

/**
 * Templates that are texts, spoilt at random: each is read or told with its place, what is read is worked or refused, none fails or
 * hangs. 20,000 in the long verification.
 */
class SpoiltTemplatesIT {
    private static final int TRIALS = Boolean.getBoolean("hidewright.long") ? 20_000 : 1_000;

    private final Spoiler spoiler = new Spoiler(6);

    private static List<String> templates() throws IOException {
        return VisibleWords.templates(Path.of("../..")).stream()
                .map(path -> {
                    try {
                        return Files.readString(path);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                })
                .toList();
    }

    @Test
    void eachIsReadOrToldWithItsPlace() throws Exception {
        Catalogue catalogue = BundledCalculators.catalogue();
        List<String> templates = templates();
        Map<String, Integer> kinds = new TreeMap<>();
        long longest = 0;
        int read = 0;
        int drawn = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            String text = spoiler.spoilt(templates.get(trial % templates.size()));
            long start = System.nanoTime();
            TemplateReader.Result result =
                    TemplateReader.read(text, id -> catalogue.find(id).map(Installed::calculator));
            if (result.template().isPresent()) {
                read++;
                drawn += isDrawn(result.template().get(), text) ? 1 : 0;
            } else {
                assertFalse(result.remarks().isEmpty(), () -> "nothing is said of: " + text);
                Remark first = result.remarks().get(0);
                assertTrue(first.place() != null, () -> first.key() + " names no place in: " + text);
                kinds.merge(first.key(), 1, Integer::sum);
            }
            longest = Math.max(longest, System.nanoTime() - start);
        }
        System.out.printf(
                "%d spoilt templates: %d read, %d of them drawn; longest %d ms%n%s%n",
                TRIALS, read, drawn, longest / 1_000_000, kinds);
        assertTrue(longest < Spoiler.LONGEST_NS, "one took " + longest + " ns");
        assertTrue(read > 0 && read < TRIALS && drawn > 0);
    }

    /** Worked with the least that may be typed, where there is such. */
    private static boolean isDrawn(TextTemplate template, String text) {
        Map<String, Object> asked = new LinkedHashMap<>();
        for (Question question : template.declaration().questions()) {
            asked.put(question.key(), value(question));
        }
        Outcome<Values> outcome;
        try {
            outcome = template.work(Values.of(asked), Working.NONE);
        } catch (RuntimeException e) {
            throw new AssertionError(text, e);
        }
        for (Notice notice : outcome.notices()) {
            assertFalse(notice.kind().key().isEmpty());
        }
        return !outcome.refused();
    }

    private static Object value(Question question) {
        double low =
                question.usual().map(usual -> usual.low()).orElse(question.min().orElse(1));
        return switch (question.kind()) {
            case CHOICE -> question.options().get(0).key();
            case FLAG -> true;
            case TEXT -> "x";
            case COUNT -> (int) Math.max(question.min().orElse(0), Math.rint(low));
            default -> Quantities.of(question.kind().dimension().orElseThrow(), low);
        };
    }
}
