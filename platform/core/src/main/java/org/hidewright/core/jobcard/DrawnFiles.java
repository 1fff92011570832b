package org.hidewright.core.jobcard;

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

    /** Adds them by the name their files begin with, which is that of their slip, and of the answer where a slip has several. */
    void into(Map<String, List<Named>> drawings) {
        List<Answer> answers = slip.installed().stream()
                .flatMap(known -> known.calculator().declaration().answers().stream())
                .filter(Answer::asFile)
                .toList();
        for (Answer answer : answers) {
            slip.answers()
                    .flatMap(given -> given.get(answer.key()))
                    .ifPresent(drawing -> drawings.put(
                            answers.size() == 1 ? slip.slip().id() : slip.slip().id() + "-" + answer.key(),
                            List.of(new Named(answer.key(), words.title(), words.drawn((Drawing) drawing)))));
        }
    }
}
