package org.hidewright.core.jobcard;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/** Says the path of a question in labels: {@code sections[b1].bend.turn} as “Sections b1, Turn”. */
final class QuestionPlace {
    private static final Pattern PART = Pattern.compile("([^.\\[\\]]+)(?:\\[([^\\]]*)\\])?");

    private final WorkedSlip slip;
    private final Wording wording;

    QuestionPlace(WorkedSlip slip, Wording wording) {
        this.slip = slip;
        this.wording = wording;
    }

    String words(String path) {
        SlipWording words = new SlipWording(slip, wording);
        List<Question> level = slip.installed()
                .map(installed -> installed.calculator().declaration().questions())
                .orElse(List.of());
        List<Variant> variants = List.of();
        StringBuilder said = new StringBuilder();
        Matcher parts = PART.matcher(path);
        while (parts.find()) {
            String key = parts.group(1);
            Question question = level.stream()
                    .filter(candidate -> candidate.key().equals(key))
                    .findFirst()
                    .orElse(null);
            if (question == null) {
                List<Question> inVariant = variants.stream()
                        .filter(variant -> variant.key().equals(key))
                        .map(Variant::questions)
                        .findFirst()
                        .orElse(null);
                if (inVariant == null) {
                    append(said, key, parts.group(2));
                } else {
                    level = inVariant;
                }
                continue;
            }
            append(said, words.label(question), parts.group(2));
            level = question.questions();
            variants = question.variants();
        }
        return said.toString();
    }

    private static void append(StringBuilder said, String part, String row) {
        said.append(said.isEmpty() ? "" : ", ").append(part);
        if (row != null) {
            said.append(' ').append(IdWords.of(row));
        }
    }
}
