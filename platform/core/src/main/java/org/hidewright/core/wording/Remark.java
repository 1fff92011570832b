package org.hidewright.core.wording;

import java.util.List;
import java.util.Objects;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.measure.Unreadable;
import org.hidewright.core.json.Place;

/**
 * Something to tell the maker, with all that is needed to put it into words: whose texts hold it, which slip and question
 * it is about and where in the file that stands.
 */
public final class Remark {
    private final Severity severity;
    private final String key;
    private final List<Object> args;
    private final Texts texts;
    private final String slip;
    private final String question;
    private final Place place;
    private final String cell;

    private Remark(
            Severity severity,
            String key,
            List<Object> args,
            Texts texts,
            String slip,
            String question,
            Place place,
            String cell) {
        this.severity = severity;
        this.key = key;
        this.args = args;
        this.texts = texts;
        this.slip = slip;
        this.question = question;
        this.place = place;
        this.cell = cell;
    }

    /** A notice raised by a calculator or by the host, with the texts of whoever raised it. */
    public static Remark of(Notice notice, Texts texts) {
        return new Remark(
                notice.kind().severity(),
                "notice." + notice.kind().key(),
                notice.args(),
                Objects.requireNonNull(texts, "texts"),
                "",
                notice.place(),
                null,
                "");
    }

    /** A typed text that could not be read. */
    public static Remark of(Unreadable<?> unreadable, Texts texts) {
        return new Remark(Severity.STOP, unreadable.key(), List.copyOf(unreadable.args()), texts, "", "", null, "");
    }

    public Remark onSlip(String id) {
        return new Remark(severity, key, args, texts, id, question, place, cell);
    }

    public Remark atQuestion(String path) {
        return new Remark(severity, key, args, texts, slip, path, place, cell);
    }

    public Remark atPlace(Place where) {
        return new Remark(severity, key, args, texts, slip, question, where, cell);
    }

    /** About a cell of the workshop, {@code table[row].column}. */
    public Remark inCell(String where) {
        return new Remark(severity, key, args, texts, slip, question, place, where);
    }

    public Severity severity() {
        return severity;
    }

    /** Message key without {@code .what}, {@code .why}, {@code .next}. */
    public String key() {
        return key;
    }

    List<Object> args() {
        return args;
    }

    Texts texts() {
        return texts;
    }

    /** Id of the slip it is about; empty when about the project. */
    public String slip() {
        return slip;
    }

    /** Path of the question it is about; empty when about the whole slip. */
    public String question() {
        return question;
    }

    /** Where in the file; null when it stands nowhere in a file. */
    public Place place() {
        return place;
    }

    /** The cell of the workshop it is about; empty when it is about none. */
    public String cell() {
        return cell;
    }

    public boolean stops() {
        return severity == Severity.STOP;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Remark that
                && severity == that.severity
                && key.equals(that.key)
                && args.equals(that.args)
                && slip.equals(that.slip)
                && question.equals(that.question)
                && cell.equals(that.cell)
                && Objects.equals(place, that.place);
    }

    @Override
    public int hashCode() {
        return Objects.hash(severity, key, args, slip, question, place, cell);
    }

    @Override
    public String toString() {
        return severity + " " + key + args + " slip=" + slip + " question=" + question + " at " + place;
    }
}
