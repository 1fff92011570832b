package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.picture.PictureReader;
import org.hidewright.core.picture.QuestionPicture;
import org.junit.jupiter.api.Test;

/** The pictures of what our own questions measure: each is there, shows a measure, and has a size in which it is readable. */
class QuestionPicturesIT {
    private static final double WIDEST_MM = 90;
    private static final double HIGHEST_MM = 50;

    private final List<String> wrong = new ArrayList<>();
    private int looked;

    private void look(List<Question> questions, DeclaredCalculator calculator) {
        for (Question question : questions) {
            QuestionPicture.of(question).ifPresent(picture -> {
                looked++;
                wrong(picture, calculator)
                        .ifPresent(fault -> wrong.add(calculator.declaration().id() + ": " + question.key() + ", "
                                + picture.name() + "#" + picture.part() + " " + fault));
            });
            question.variants().forEach(variant -> look(variant.questions(), calculator));
            look(question.questions(), calculator);
        }
    }

    private static Optional<String> wrong(QuestionPicture picture, DeclaredCalculator calculator) {
        PictureReader.Result read =
                PictureReader.read(calculator.picture(picture.name()).orElse(""));
        if (read.picture().isEmpty() || !read.remarks().isEmpty()) {
            return Optional.of(read.remarks().toString());
        }
        if (!picture.part().isEmpty() && !read.picture().get().has(picture.part())) {
            return Optional.of("has nothing of it");
        }
        List<Shape> shapes =
                read.picture().get().drawing(picture.part(), words -> words).shapes();
        Box box = shapes.stream().map(Shape::bounds).reduce(Box::with).orElseThrow();
        long measures = shapes.stream()
                .filter(shape -> shape instanceof DimensionLine || shape.role() == Role.DIRECTION)
                .count();
        if (box.width() > WIDEST_MM || box.height() > HIGHEST_MM) {
            return Optional.of("is " + box.width() + " by " + box.height());
        }
        return measures == 1 ? Optional.empty() : Optional.of("shows " + measures + " measures");
    }

    @Test
    void eachIsThereAndShowsTheOneThingThatIsAskedFor() throws Exception {
        Catalogue catalogue = BundledCalculators.catalogue();
        for (String id : catalogue.ids()) {
            DeclaredCalculator calculator = catalogue.find(id).orElseThrow().calculator();
            look(calculator.declaration().questions(), calculator);
        }
        assertEquals(List.of(), wrong);
        assertTrue(looked > 60, looked + " questions");
    }
}
