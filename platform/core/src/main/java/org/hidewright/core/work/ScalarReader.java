package org.hidewright.core.work;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Reading;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Unreadable;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;

/** Reads one typed text as its question asks: a quantity, a size, a list, a count, a choice, a flag or a text. */
final class ScalarReader {
    private static final List<String> YES = List.of("true", "yes", "on");
    private static final List<String> NO = List.of("false", "no", "off");

    private final Question question;
    private final Optional<Unit> assumed;
    private Entry entry;
    private Remark trouble;

    private ScalarReader(Question question, Optional<Unit> assumed) {
        this.question = question;
        this.assumed = assumed;
    }

    /** A text that answers a question; for a list all of its values. */
    static ScalarReader of(Question question, String text) {
        return of(question, text, Optional.empty());
    }

    /**
     * A text that answers a question; for a list all of its values.
     *
     * @param currency of an amount of money that names none
     */
    static ScalarReader of(Question question, String text, Optional<Unit> currency) {
        ScalarReader reader =
                new ScalarReader(question, question.itemKind() == Kind.MONEY ? currency : question.unit());
        if (question.kind() == Kind.LIST) {
            reader.list(text);
            reader.partedByCommas(text);
        } else {
            reader.one(text);
        }
        return reader;
    }

    /** A text that is one of the values that answer a question. */
    static ScalarReader one(Question question, String text) {
        ScalarReader reader = new ScalarReader(question, question.unit());
        reader.one(text);
        return reader;
    }

    private void one(String text) {
        switch (question.itemKind()) {
            case SIZE -> take(TypedText.size(text, assumed).map(Entry.TwoSides::new));
            case CHOICE -> choice(text.strip());
            case FLAG -> flag(text.strip().toLowerCase(Locale.ROOT));
            case TEXT -> entry = new Entry.Plain(text);
            case DATE -> date(text.strip());
            case COUNT ->
                take(TypedText.quantity(text, Dimension.NUMBER, Optional.empty())
                        .map(Entry.Quantity::new));
            default ->
                take(TypedText.quantity(text, question.itemKind().dimension().orElseThrow(), assumed)
                        .map(Entry.Quantity::new));
        }
        whole();
    }

    /** What was understood; empty when there is {@link #trouble()}. */
    Optional<Entry> entry() {
        return Optional.ofNullable(entry);
    }

    Remark trouble() {
        return trouble;
    }

    private <E extends Entry> void take(Reading<E> reading) {
        entry = reading.understood().orElse(null);
        reading.unreadable().ifPresent(this::refuse);
    }

    private void refuse(Unreadable<?> unreadable) {
        trouble = Remark.of(unreadable, CoreTexts.READING);
    }

    private void list(String text) {
        Optional<Dimension> dimension = question.itemKind().dimension();
        if (dimension.isPresent()) {
            List<Entry> items = new ArrayList<>();
            Reading<List<Typed>> reading = TypedText.list(text, dimension.get(), assumed);
            reading.unreadable().ifPresent(this::refuse);
            for (Typed typed : reading.understood().orElse(List.of())) {
                entry = new Entry.Quantity(typed);
                whole();
                items.add(entry);
            }
            entry = trouble == null ? new Entry.Several(List.copyOf(items)) : null;
        } else {
            parts(text.split(";", -1));
        }
    }

    /** Where a list is refused that could be read with semicolons for its commas, that is the thing to say. */
    private void partedByCommas(String text) {
        String parted = text.replaceAll("\\s*,\\s*", "; ");
        if (trouble != null && !parted.equals(text)) {
            ScalarReader again = new ScalarReader(question, assumed);
            again.list(parted);
            if (again.trouble == null) {
                trouble(ProjectNotices.LIST_WITH_COMMAS.with(text, parted));
            }
        }
    }

    private void parts(String[] parts) {
        List<Entry> items = new ArrayList<>();
        for (String part : parts) {
            if (!part.isBlank() && trouble == null) {
                one(part.strip());
                items.add(entry);
            }
        }
        entry = trouble == null ? new Entry.Several(List.copyOf(items)) : null;
    }

    /** What is counted is counted in whole numbers that a count can hold. */
    private void whole() {
        if (question.itemKind() == Kind.COUNT && entry instanceof Entry.Quantity counted) {
            double nominal = counted.typed().range().nominal();
            if (nominal != Math.rint(nominal) || Math.abs(nominal) > Integer.MAX_VALUE) {
                trouble(ProjectNotices.NOT_WHOLE.with(counted.typed().text()));
            }
        }
    }

    private void choice(String text) {
        List<String> keys = EntryReader.keys(question.options());
        inAnyCase(text, keys)
                .ifPresentOrElse(key -> entry = new Entry.Plain(key), () -> trouble(noSuchOption(text, keys)));
    }

    /** The key of a choice, typed in letters of either case. */
    static Optional<String> inAnyCase(String text, List<String> keys) {
        return keys.stream().filter(text::equalsIgnoreCase).findFirst();
    }

    private void flag(String text) {
        if (YES.contains(text) || NO.contains(text)) {
            entry = new Entry.Plain(YES.contains(text));
        } else {
            trouble(ProjectNotices.NOT_YES_OR_NO.with(text));
        }
    }

    private void date(String text) {
        try {
            entry = new Entry.Plain(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            trouble(ProjectNotices.NOT_A_DATE.with(text));
        }
    }

    private void trouble(Notice notice) {
        entry = null;
        trouble = Remark.of(notice, CoreTexts.TEXTS);
    }

    static Notice noSuchOption(String given, List<String> keys) {
        return Nearest.to(given, keys)
                .map(near -> ProjectNotices.NO_SUCH_OPTION_NEAREST.with(given, near, String.join(", ", keys)))
                .orElseGet(() -> ProjectNotices.NO_SUCH_OPTION.with(given, String.join(", ", keys)));
    }
}
