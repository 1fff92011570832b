package org.hidewright.core.picture;

import java.util.Optional;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.wording.Wording;

/** The picture of what a question measures, for whoever shows it. */
public final class QuestionPicture {
    private final String name;
    private final String part;

    private QuestionPicture(String picture) {
        int mark = picture.indexOf('#');
        this.name = mark < 0 ? picture : picture.substring(0, mark);
        this.part = mark < 0 ? "" : picture.substring(mark + 1);
    }

    /** What a question names; empty where it names none. */
    public static Optional<QuestionPicture> of(Question question) {
        return question.picture().map(QuestionPicture::new);
    }

    /** The picture that it is, or is part of. */
    public String name() {
        return name;
    }

    /** The part of it; empty for the whole. */
    public String part() {
        return part;
    }

    /** The drawing of a question; empty where it has none, or one that cannot be read. */
    public static Optional<Drawing> drawn(DeclaredCalculator calculator, Question question, Wording wording) {
        return of(question)
                .flatMap(picture -> calculator
                        .picture(picture.name)
                        .flatMap(text -> PictureReader.read(text).picture())
                        .map(found -> found.drawing(picture.part, key -> words(calculator.texts(), key, wording))));
    }

    /** A word without a key of its own stands for itself. */
    private static String words(Texts texts, String key, Wording wording) {
        return wording.has(texts, key) ? wording.text(texts, key) : key;
    }
}
