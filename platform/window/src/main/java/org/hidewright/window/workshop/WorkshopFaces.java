package org.hidewright.window.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Written;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.StockCheck;
import org.hidewright.core.work.UsualCells;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.BroughtRow;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopNotices;
import org.hidewright.core.workshop.WorkshopText;
import org.hidewright.window.model.DeclaredFaces;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Choice;
import org.hidewright.window.model.QuestionFace.Origin;
import org.hidewright.window.words.WindowTexts;

/** Shows a workshop: every table that is installed, each cell as it was typed and as it was understood. */
final class WorkshopFaces {
    static final AnswerPath NAME = AnswerPath.of("name");
    static final AnswerPath CURRENCY = AnswerPath.of("currency");

    /** Of what is said of a whole workshop, what is said of no cell. */
    private static final List<NoticeKind> OUTSIDE = List.of(
            WorkshopNotices.TABLE_DORMANT,
            WorkshopNotices.TABLE_DORMANT_NEAREST,
            JsonNotices.UNKNOWN_KEY,
            JsonNotices.UNKNOWN_KEY_NEAREST);

    private final WorkshopText text;
    private final Workshop workshop;
    private final Tables tables;
    private final UsualCells usual;
    private final Wording wording;
    private final WindowTexts texts;

    private WorkshopFaces(WorkshopText text, Catalogue catalogue, Wording wording, WindowTexts texts) {
        this.text = text;
        this.workshop = text.workshop();
        this.tables = catalogue.tables();
        this.usual = UsualCells.of(catalogue);
        this.wording = wording;
        this.texts = texts;
    }

    static WorkshopFace of(WorkshopText text, Catalogue catalogue, Wording wording, WindowTexts texts) {
        return new WorkshopFaces(text, catalogue, wording, texts).face();
    }

    private WorkshopFace face() {
        return new WorkshopFace(
                workshop.name(),
                List.of(head(NAME, workshop.name()), head(CURRENCY, text.currency())),
                told(),
                tables.all().stream().map(this::table).toList());
    }

    private QuestionFace head(AnswerPath path, String typed) {
        Question question = Written.column("workshop", path.question(), Kind.TEXT, Map.of("example", "…"), List.of());
        boolean noCurrency =
                path.equals(CURRENCY) && !typed.isEmpty() && workshop.currency().isEmpty();
        return new QuestionFace(
                path,
                question,
                0,
                texts.text("workshop." + path),
                texts.text("workshop." + path + ".help"),
                typed,
                typed.isEmpty() ? Origin.OPEN : Origin.TYPED,
                "",
                "",
                List.of(),
                noCurrency
                        ? List.of(
                                wording.what(Remark.of(WorkshopNotices.NO_SUCH_CURRENCY.with(typed), CoreTexts.TEXTS)))
                        : List.of(),
                List.of(),
                List.of());
    }

    /** What stands in no cell: rows without an id, tables and columns that nobody has declared. */
    private List<String> told() {
        return Stream.concat(
                        text.remarks().stream().filter(remark -> !isOf(remark, WorkshopNotices.NO_SUCH_CURRENCY)),
                        StockCheck.of(workshop, tables).stream()
                                .filter(remark -> OUTSIDE.stream().anyMatch(kind -> isOf(remark, kind))))
                .map(remark -> wording.where(remark).map(where -> where + ": ").orElse("") + wording.what(remark))
                .toList();
    }

    private static boolean isOf(Remark remark, NoticeKind kind) {
        return remark.key().equals("notice." + kind.key());
    }

    private WorkshopFace.Shown table(Table table) {
        List<Asked> asked = table.columns().stream().map(this::asked).toList();
        List<WorkshopFace.Line> lines = new ArrayList<>();
        workshop.rows(table.id()).forEach(row -> lines.add(line(asked, row, row.currencyIn(workshop), "")));
        for (BroughtRow brought : tables.rows(table.id())) {
            lines.add(line(
                    asked,
                    brought.row(),
                    brought.currency(),
                    texts.text(
                            "workshop.from",
                            brought.from().bundle(),
                            brought.from().source())));
        }
        return new WorkshopFace.Shown(
                table.id(),
                wording.text(table.declared().texts(), table.declared().titleKey()),
                wording.text(table.declared().texts(), table.declared().purposeKey()),
                asked.stream().map(this::head).toList(),
                List.copyOf(lines));
    }

    /** A column with what is said of it, once for all its cells. */
    private record Asked(
            Column column, DeclaredFaces declared, String label, String help, String limits, List<Choice> choices) {
        Question question() {
            return column.question();
        }
    }

    private Asked asked(Column column) {
        Question question = column.question();
        DeclaredFaces declared = new DeclaredFaces(new FieldWording(Optional.of(column.texts()), wording));
        return new Asked(
                column,
                declared,
                declared.words().label(question),
                wording.text(column.texts(), question.helpKey()),
                declared.limits(question),
                question.kind() == Kind.TEXT ? rowsOf(column.key()) : declared.choices(question));
    }

    private WorkshopFace.Head head(Asked asked) {
        return new WorkshopFace.Head(
                asked.column().key(),
                asked.label(),
                asked.question().unit().map(this::unit).orElse(""),
                asked.help());
    }

    private String unit(Unit unit) {
        return (wording.inches() ? UnitSystem.INCH : UnitSystem.METRIC)
                .shown(unit)
                .symbol();
    }

    private WorkshopFace.Line line(List<Asked> columns, Row row, Optional<Unit> currency, String from) {
        AnswerPath path = AnswerPath.of(row.table()).row(row.id());
        List<QuestionFace> questions = columns.stream()
                .map(asked -> question(path.key(asked.column().key()), asked, row, currency))
                .toList();
        return new WorkshopFace.Line(
                row.id(), from, questions.stream().map(WorkshopFaces::cell).toList(), questions);
    }

    private QuestionFace question(AnswerPath path, Asked asked, Row row, Optional<Unit> currency) {
        Question question = asked.question();
        Optional<String> typed = row.cell(asked.column().key());
        StockCheck.Cell read = StockCheck.cell(row, asked.column(), currency, usual);
        String written = typed.or(question::preset).orElse("");
        String shown = question.kind() == Kind.DATE
                ? read.value()
                        .map(day -> asked.declared().words().text(question, day))
                        .orElse(written)
                : written;
        return new QuestionFace(
                path,
                question,
                0,
                asked.label(),
                asked.help(),
                question.kind() == Kind.FLAG ? DeclaredFaces.written(shown) : shown,
                typed.isPresent() ? Origin.TYPED : question.preset().isPresent() ? Origin.PRESET : Origin.OPEN,
                understood(read, asked.declared(), question, shown),
                asked.limits(),
                question.kind() == Kind.TEXT ? among(asked.choices(), shown) : asked.choices(),
                said(read, true),
                said(read, false),
                List.of());
    }

    /** A range by its limits: its middle is what is worked with, and nothing that is in stock. */
    private String understood(StockCheck.Cell read, DeclaredFaces declared, Question question, String typed) {
        Optional<Range> range = read.range().filter(limits -> !limits.isExact());
        return range.isPresent() && question.unit().isPresent()
                ? declared.understood(range.get(), question.unit().get(), typed)
                : read.value()
                        .map(value -> declared.understood(question, value, typed))
                        .orElse("");
    }

    /** As it was typed, with its unit where that goes without saying; what is chosen as it is called. */
    private static String cell(QuestionFace face) {
        boolean bare = face.question().unit().isPresent() && face.text().chars().noneMatch(Character::isLetter);
        return face.origin() != Origin.TYPED
                ? ""
                : !face.choices().isEmpty()
                        ? face.read()
                        : bare
                                ? face.text() + " "
                                        + face.question().unit().get().symbol()
                                : face.text();
    }

    /** A column that is called as a table is names one of its rows. */
    private List<Choice> rowsOf(String table) {
        if (tables.find(table).isEmpty()) {
            return List.of();
        }
        List<Choice> rows = new ArrayList<>(List.of(new Choice("", "–")));
        workshop.rows(table).forEach(row -> rows.add(new Choice(row.id(), called(row))));
        tables.rows(table).forEach(brought -> rows.add(new Choice(brought.row().id(), called(brought.row()))));
        return List.copyOf(rows);
    }

    /** A row that is not there, or not any more, stays to be seen. */
    private static List<Choice> among(List<Choice> rows, String now) {
        if (rows.isEmpty() || rows.stream().anyMatch(row -> row.key().equals(now))) {
            return rows;
        }
        List<Choice> more = new ArrayList<>(rows);
        more.add(new Choice(now, now));
        return List.copyOf(more);
    }

    private static String called(Row row) {
        return row.cell("name").map(name -> name + " (" + row.id() + ")").orElse(row.id());
    }

    private List<String> said(StockCheck.Cell cell, boolean urgent) {
        return cell.remarks().stream()
                .filter(remark -> urgent == (remark.severity() != Severity.NOTE))
                .map(remark -> isOf(remark, WorkshopNotices.CELL_MISSING)
                        ? texts.text("workshop.cell-open.help")
                        : wording.what(remark))
                .toList();
    }
}
