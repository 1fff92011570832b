package org.hidewright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.LongText;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.StockCheck;
import org.hidewright.core.workshop.Bringer;
import org.hidewright.core.workshop.Column;
import org.hidewright.core.workshop.Row;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Table;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Workshop;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Looks a workshop file over and lists what is in it; without one, explains the tables there are. */
final class WorkshopCommand implements Subcommand {
    private static final String COLUMNS = "--columns";

    @Override
    public String name() {
        return "workshop";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("FILE")
                .type(String.class)
                .arity("0..1")
                .description(texts.text("workshop.file"))
                .build());
        spec.addOption(SharedOptions.flag(COLUMNS, texts.text("workshop.columns")));
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String file = arguments.matchedPositionalValue(0, "");
        Tables tables = session.catalogue().tables();
        if (file.isEmpty() || arguments.hasMatchedOption(COLUMNS)) {
            tables.all().forEach(table -> {
                explain(table, session);
                brought(table, tables, session);
            });
            session.out().println(session.texts().text("workshop.more"));
        }
        return file.isEmpty() ? ExitCode.DONE : look(file, tables, session);
    }

    private static String title(Table table, Session session) {
        return session.wording().text(table.declared().texts(), table.declared().titleKey()) + " (" + table.id() + ")";
    }

    private static void explain(Table table, Session session) {
        session.out().println(title(table, session));
        session.out()
                .println("  "
                        + session.wording()
                                .text(table.declared().texts(), table.declared().purposeKey()));
        for (Column column : table.columns()) {
            new QuestionLines(column.texts(), session).print(List.of(column.question()), 1);
        }
        session.out().println();
    }

    /** What bundles bring, by the bundle and what it says of its sizes. */
    private static void brought(Table table, Tables tables, Session session) {
        Map<Bringer, List<Row>> byBringer = new LinkedHashMap<>();
        tables.rows(table.id())
                .forEach(brought -> byBringer
                        .computeIfAbsent(brought.from(), from -> new ArrayList<>())
                        .add(brought.row()));
        byBringer.forEach((from, rows) -> {
            session.out().println(session.texts().text("workshop.brought", from.bundle(), from.source()));
            list(table, rows, session);
            session.out().println();
        });
    }

    private static int look(String file, Tables tables, Session session) throws FileTrouble, BadArgument {
        Stock stock = WorkshopOption.read(file, Stock.of(() -> tables), session);
        Workshop workshop = stock.file().orElseThrow();
        if (!workshop.name().isEmpty()) {
            session.out().println(workshop.name());
        }
        workshop.currency()
                .ifPresent(currency ->
                        session.out().println(session.texts().text("workshop.currency", currency.symbol())));
        for (String id : workshop.tables()) {
            tables.find(id).ifPresent(table -> {
                session.out().println();
                session.out().println(title(table, session));
                list(table, workshop.rows(id), session);
            });
        }
        List<Remark> remarks = StockCheck.of(workshop, tables);
        remarks.forEach(remark -> session.tell(session.err(), remark));
        if (!stock.sound()) {
            session.stops().sayAgain(session);
        }
        return stock.sound() && remarks.stream().noneMatch(Remark::stops) ? ExitCode.DONE : ExitCode.REFUSED;
    }

    /** The rows as they are written, corners of hides by their beginning; columns that no row fills are left out. */
    private static void list(Table table, List<Row> rows, Session session) {
        List<Column> filled = table.columns().stream()
                .filter(column ->
                        rows.stream().anyMatch(row -> row.cell(column.key()).isPresent()))
                .toList();
        List<List<String>> lines = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of(Row.ID));
        filled.forEach(column -> head.add(
                session.wording().text(column.texts(), column.question().labelKey())));
        lines.add(head);
        for (Row row : rows) {
            List<String> line = new ArrayList<>(List.of(row.id()));
            filled.forEach(column ->
                    line.add(LongText.cutNumbers(row.cell(column.key()).orElse(""))));
            lines.add(line);
        }
        new TextTable(lines).print(session.out());
    }
}
