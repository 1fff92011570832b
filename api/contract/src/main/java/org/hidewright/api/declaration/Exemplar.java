package org.hidewright.api.declaration;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Reading;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedSize;
import org.hidewright.api.measure.TypedText;

/**
 * Checks that a preset or example could be typed as it stands. Groups, tables and variants are written as JSON, which is
 * for the host to read.
 */
final class Exemplar {
    private static final List<String> YES_OR_NO = List.of("true", "yes", "on", "false", "no", "off");

    private final String where;
    private final Question question;
    private final String min;
    private final String max;

    /**
     * @param min as it is written
     * @param max as it is written
     */
    Exemplar(String where, Question question, String min, String max) {
        this.where = where;
        this.question = question;
        this.min = min;
        this.max = max;
    }

    /** @throws InvalidDeclaration if the text is not empty and could not be typed */
    void check(String text) {
        if (text.isEmpty()) {
            return;
        }
        if (question.kind() == Kind.LIST && question.itemKind().dimension().isPresent()) {
            understood(
                            text,
                            TypedText.list(text, question.itemKind().dimension().get(), question.unit()))
                    .forEach(typed -> number(text, typed));
        } else if (question.kind() == Kind.LIST) {
            List.of(text.split(";")).forEach(part -> one(part.strip()));
        } else {
            one(text);
        }
    }

    private void one(String text) {
        switch (question.itemKind()) {
            case SIZE:
                TypedSize size = understood(text, TypedText.size(text, question.unit()));
                withinLimits(text, size.width().range().nominal());
                withinLimits(text, size.height().range().nominal());
                break;
            case CHOICE:
                List<String> keys = new ArrayList<>();
                question.options().forEach(option -> keys.add(option.key()));
                require(keys.contains(text), text, "is none of " + String.join(", ", keys));
                break;
            case DATE:
                require(isDate(text), text, "is no date such as 2026-03-01");
                break;
            case FLAG:
                require(YES_OR_NO.contains(text.toLowerCase(Locale.ROOT)), text, "is neither yes nor no");
                break;
            default:
                if (question.itemKind().dimension().isPresent()) {
                    Dimension dimension = question.itemKind().dimension().get();
                    number(text, understood(text, TypedText.quantity(text, dimension, question.unit())));
                }
        }
    }

    private static boolean isDate(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private void number(String text, Typed typed) {
        double nominal = typed.range().nominal();
        require(question.itemKind() != Kind.COUNT || nominal == Math.rint(nominal), text, "is not a whole number");
        withinLimits(text, nominal);
    }

    private void withinLimits(String text, double value) {
        require(!(value < question.min().orElse(value)), text, "is below min " + min);
        require(!(value > question.max().orElse(value)), text, "is above max " + max);
    }

    private <T> T understood(String text, Reading<T> reading) {
        return reading.understood()
                .orElseThrow(() -> invalid(
                        text, "cannot be read as " + Keys.of(question.itemKind().name())));
    }

    private void require(boolean good, String text, String problem) {
        if (!good) {
            throw invalid(text, problem);
        }
    }

    private InvalidDeclaration invalid(String text, String problem) {
        return new InvalidDeclaration(where, "\"" + text + "\" " + problem);
    }
}
