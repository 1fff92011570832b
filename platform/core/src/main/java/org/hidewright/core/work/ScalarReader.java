package org.hidewright.core.work;

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
import org.hidewright.api.measure.Unreadable;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;

/** Reads one typed text as its question asks: a quantity, a size, a list, a count, a choice, a flag or a text. */
final class ScalarReader {
    private static final List<String> YES = List.of("true", "yes", "on");
    private static final List<String> NO = List.of("false", "no", "off");

    private Entry entry;
    private Remark trouble;

    ScalarReader(Question question, String text) {
        switch (question.kind()) {
            case SIZE -> take(TypedText.size(text, question.unit()).map(Entry.TwoSides::new));
            case LIST -> list(question, text);
            case CHOICE -> choice(question, text.strip());
            case FLAG -> flag(text.strip().toLowerCase(Locale.ROOT));
            case TEXT -> entry = new Entry.Plain(text);
            case COUNT -> count(text);
            default -> take(TypedText.quantity(text, question.kind().dimension().orElseThrow(), question.unit())
                    .map(Entry.Quantity::new));
        }
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

    private void list(Question question, String text) {
        Optional<Dimension> dimension = question.itemKind().dimension();
        if (dimension.isPresent()) {
            take(TypedText.list(text, dimension.get(), question.unit()).map(Entry.Several::new));
        } else {
            List<String> items = List.of(text.split(";", -1)).stream().map(String::strip).filter(s -> !s.isEmpty()).toList();
            List<String> keys = EntryReader.keys(question.options());
            Optional<String> wrong = items.stream()
                    .filter(item -> question.itemKind() == Kind.CHOICE && !keys.contains(item))
                    .findFirst();
            if (wrong.isPresent()) {
                trouble(noSuchOption(wrong.get(), keys));
            } else {
                entry = new Entry.Plain(items);
            }
        }
    }

    private void count(String text) {
        Reading<Typed> reading = TypedText.quantity(text, Dimension.NUMBER, Optional.empty());
        take(reading.map(Entry.Quantity::new));
        if (entry != null) {
            double nominal = reading.understood().orElseThrow().range().nominal();
            if (nominal != Math.rint(nominal) || Math.abs(nominal) > Integer.MAX_VALUE) {
                trouble(ProjectNotices.NOT_WHOLE.with(text));
            }
        }
    }

    private void choice(Question question, String text) {
        List<String> keys = EntryReader.keys(question.options());
        if (keys.contains(text)) {
            entry = new Entry.Plain(text);
        } else {
            trouble(noSuchOption(text, keys));
        }
    }

    private void flag(String text) {
        if (YES.contains(text) || NO.contains(text)) {
            entry = new Entry.Plain(YES.contains(text));
        } else {
            trouble(ProjectNotices.NOT_YES_OR_NO.with(text));
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
