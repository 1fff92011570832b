package org.hidewright.core.jobcard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/** The answers of a slip that are written as files for machines, such as a cutting layout. */
final class DrawnFiles {
    private final WorkedSlip slip;
    private final SlipWording words;

    DrawnFiles(WorkedSlip slip, Wording wording) {
        this.slip = slip;
        this.words = new SlipWording(slip, wording);
    }

    /** By the name their files begin with: that of their slip, and of the answer where a slip has several. */
    Map<String, Named> byName() {
        Map<String, Named> files = new LinkedHashMap<>();
        List<Answer> answers = slip.installed().stream()
                .flatMap(known -> known.calculator().declaration().answers().stream())
                .filter(Answer::asFile)
                .toList();
        for (Answer answer : answers) {
            slip.answers()
                    .flatMap(given -> given.get(answer.key()))
                    .ifPresent(drawing -> files.put(
                            answers.size() == 1 ? slip.slip().id() : slip.slip().id() + "-" + answer.key(),
                            new Named(answer.key(), words.title(), words.drawn((Drawing) drawing))));
        }
        return files;
    }
}
