package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.measure.Unit;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.wording.LongText;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Shelf.Taken;

/** The copies a project keeps of what it takes from the workshop: how they differ from the file, and how they are made. */
public final class Copies {
    private static final Set<Kind> ASIDE = Set.of(Kind.MONEY, Kind.DATE, Kind.TEXT);

    private final Shelf shelf;
    private final Collection<StockLink> links;

    /**
     * The copies of a project.
     *
     * @param shelf the rows it works with
     * @param links what its slips take
     */
    public Copies(Shelf shelf, Collection<StockLink> links) {
        this.shelf = shelf;
        this.links = links;
    }

    /** Where copies and the file in use differ, and what is taken that the project has no copy of. */
    public List<Remark> differences() {
        List<Remark> differences = new ArrayList<>();
        for (Taken taken : used()) {
            Row row = taken.row();
            taken.from()
                    .ifPresent(from -> say(
                            differences,
                            WorkshopNotices.WORKSHOP_FROM_BUNDLE.with(
                                    words(row.toString()), from.bundle(), from.source())));
            Optional<Taken> now = shelf.now(row.table(), row.id());
            if (!taken.kept()) {
                say(differences, WorkshopNotices.WORKSHOP_NOT_KEPT.with(words(row.toString())));
            } else if (now.isPresent()) {
                cells(taken, now.get(), differences);
            } else if (taken.from().isPresent()) {
                say(
                        differences,
                        WorkshopNotices.WORKSHOP_BUNDLE_GONE.with(
                                words(row.toString()), taken.from().get().bundle()));
            } else if (shelf.file().isPresent()) {
                say(differences, WorkshopNotices.WORKSHOP_ROW_GONE.with(words(row.toString())));
            }
        }
        newRows(differences);
        return List.copyOf(differences);
    }

    /** The rows that are used, the project’s own copies before others; each once. */
    private Collection<Taken> used() {
        Map<String, Taken> used = new LinkedHashMap<>();
        for (StockLink link : links) {
            shelf.taken(link).forEach(taken -> used.putIfAbsent(taken.row().toString(), taken));
        }
        return used.values();
    }

    private void cells(Taken was, Taken is, List<Remark> differences) {
        Row kept = was.row();
        Row now = is.row();
        Set<String> columns = new LinkedHashSet<>(kept.node().members().keySet());
        columns.addAll(now.node().members().keySet());
        columns.remove(Bringer.KEY);
        if (was.currency().equals(is.currency())) {
            columns.remove(Workshop.CURRENCY); // a copy may say what goes without saying where it is from
        }
        for (String column : columns) {
            String before = kept.cell(column).orElse("");
            String after = now.cell(column).orElse("");
            if (!before.equals(after)) {
                String cell = StockLink.cell(kept, column);
                say(
                        differences,
                        isCutBy(kept.table(), column)
                                ? WorkshopNotices.WORKSHOP_DIFFERS.with(words(cell), shown(before), shown(after))
                                : WorkshopNotices.WORKSHOP_DIFFERS_ASIDE.with(
                                        words(cell), shown(before), shown(after)));
            }
        }
    }

    /** A price or a remark that has changed spoils no leather. */
    private boolean isCutBy(String table, String column) {
        return shelf.tables().find(table).stream()
                .flatMap(known -> known.columns().stream())
                .anyMatch(known -> known.key().equals(column)
                        && !ASIDE.contains(known.question().kind()));
    }

    private static String shown(String cell) {
        return cell.isEmpty() ? "–" : LongText.cut(cell);
    }

    /** Rows of a table that is used whole, which the project’s copy of it does not have. */
    private void newRows(List<Remark> differences) {
        links.stream()
                .filter(link -> link.row().isEmpty())
                .map(StockLink::table)
                .distinct()
                .filter(table ->
                        shelf.kept().filter(copies -> copies.whole(table)).isPresent())
                .forEach(table -> shelf.file().stream()
                        .flatMap(file -> file.rows(table).stream())
                        .filter(row ->
                                shelf.kept().orElseThrow().row(table, row.id()).isEmpty())
                        .forEach(
                                row -> say(differences, WorkshopNotices.WORKSHOP_ROW_NEW.with(words(row.toString())))));
    }

    private CellWords words(String cell) {
        return CellWords.of(cell, shelf);
    }

    private static void say(List<Remark> remarks, Notice notice) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS));
    }

    /** Those of one row more, and of no other that the project has not kept already. */
    public Copies with(StockLink more) {
        return new Copies(
                shelf,
                Stream.concat(links.stream().filter(this::isKept), Stream.of(more))
                        .toList());
    }

    private boolean isKept(StockLink link) {
        return shelf.taken(link).stream().allMatch(Taken::kept);
    }

    /**
     * The copies as JSON for the project’s file: every row that is used, as it was written.
     *
     * @param renew whether the rows of the file are taken where it has them, although the project has copies
     */
    public String json(boolean renew) {
        Map<String, Map<String, Taken>> tables = new LinkedHashMap<>();
        Set<String> whole = new LinkedHashSet<>();
        for (StockLink link : links) {
            List<Taken> rows = renew ? shelf.renewed(link) : shelf.taken(link);
            if (link.row().isEmpty() && !rows.isEmpty()) {
                whole.add(link.table());
            }
            rows.forEach(taken -> tables.computeIfAbsent(link.table(), table -> new LinkedHashMap<>())
                    .putIfAbsent(taken.row().id(), taken));
        }
        Optional<Unit> currency = shelf.kept()
                .filter(copies -> !renew)
                .flatMap(Workshop::currency)
                .or(() -> shelf.file().flatMap(Workshop::currency));
        Map<String, Object> texts = new LinkedHashMap<>();
        tables.forEach((table, rows) -> texts.put(
                table,
                rows.values().stream().map(taken -> text(taken, currency)).toList()));
        Map<String, Object> tree = new LinkedHashMap<>();
        currency.ifPresent(unit -> tree.put(Workshop.CURRENCY, unit.symbol()));
        if (!whole.isEmpty()) {
            tree.put(Workshop.WHOLE, List.copyOf(whole));
        }
        tree.put(Workshop.TABLES, texts);
        return JsonOut.write(tree).strip();
    }

    private static JsonOut.Raw text(Taken taken, Optional<Unit> currency) {
        Row row = taken.row();
        boolean same = taken.currency().isEmpty()
                || taken.currency().equals(currency)
                || row.currency().isPresent();
        if (!same) {
            row = row.with(
                    Workshop.CURRENCY, JsonText.quoted(taken.currency().get().symbol()));
        }
        if (taken.from().isPresent() && !row.from().equals(taken.from())) {
            row = row.with(Bringer.KEY, taken.from().get().json());
        }
        return new JsonOut.Raw(row.text());
    }
}
