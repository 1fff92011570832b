package org.hidewright.api.declaration;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Drawings of what questions measure: files in the folder {@code pictures} beside the classes that ask. */
final class QuestionPictures {
    private final List<Class<?>> homes;

    QuestionPictures(List<Class<?>> homes) {
        this.homes = homes;
    }

    /** Whether every picture that is named is there. */
    void check(Class<?> calculator, List<Question> questions) {
        for (Question question : questions) {
            question.picture()
                    .map(QuestionPictures::name)
                    .filter(name -> !isThere(name))
                    .ifPresent(name -> {
                        throw new InvalidDeclaration(
                                calculator,
                                "question " + question.key() + " is drawn by \"" + name + "\", and there is no file "
                                        + path(name) + " beside it");
                    });
            check(calculator, question.questions());
            question.variants().forEach(variant -> check(calculator, variant.questions()));
        }
    }

    private static String name(String picture) {
        return picture.split("#")[0];
    }

    private static String path(String name) {
        return "pictures/" + name + ".json";
    }

    private boolean isThere(String name) {
        return homes.stream().anyMatch(home -> home.getResource(path(name)) != null);
    }

    Optional<String> text(String name) {
        return homes.stream()
                .map(home -> home.getResourceAsStream(path(name)))
                .filter(Objects::nonNull)
                .map(QuestionPictures::read)
                .findFirst();
    }

    private static String read(InputStream file) {
        try (file) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
