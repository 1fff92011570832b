package org.hidewright.window;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.HideOutlines;
import org.hidewright.core.outline.HideRow;
import org.hidewright.core.outline.Outlined;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.TextFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Table;
import org.hidewright.window.words.WindowTexts;
import org.hidewright.window.workshop.OpenWorkshop;

/** A hide that was drawn with another program, as a new row of the workshop that is open. For the thread of the window. */
final class DrawnHide {
    private static final String NAME = "name";

    private final MainWindow window;
    private final WorkshopDesk desk;
    private final Workroom room;
    private final WindowTexts texts;

    DrawnHide(MainWindow window, WorkshopDesk desk, Workroom room) {
        this.window = window;
        this.desk = desk;
        this.room = room;
        this.texts = room.texts();
    }

    /** Whether drawings can be read, and there is a table that hides go into. */
    boolean can() {
        return table().isPresent();
    }

    /** Whether this is the table. */
    boolean goesInto(String table) {
        return table().filter(into -> into.id().equals(table)).isPresent();
    }

    private Optional<Table> table() {
        return room.readers().isEmpty()
                ? Optional.empty()
                : HideRow.table(room.catalogue().tables());
    }

    /** Asks for the drawing; where there is no workshop yet, one is to be begun first. */
    void ask() {
        if (desk.opened().isEmpty()) {
            desk.show();
            return;
        }
        String[] endings = room.readers().stream()
                .map(reader -> reader.ending().substring(1))
                .toArray(String[]::new);
        room.asks().toOpen(texts.text("deed.hide-drawn"), endings).ifPresent(this::read);
    }

    private void read(Path file) {
        Optional<DrawingReader> reader = DrawingReader.of(room.readers(), file);
        if (reader.isEmpty()) {
            desk.tell(texts.text("hide-drawn.other-kind.help", file, DrawingReader.endings(room.readers())));
            return;
        }
        String title = reader.get().title(file);
        OpenWorkshop into = desk.opened().orElseThrow();
        room.work().execute(() -> {
            try {
                HideOutlines outlines = new HideOutlines(reader.get().read(TextFile.bytes(file)));
                window.onWindow(() -> add(title, outlines, into));
            } catch (FileTrouble e) {
                window.onWindow(() -> desk.tell(e.remarks()));
            }
        });
    }

    /** What was read; nothing where another workshop has been opened, or the bundle of the table has gone, meanwhile. */
    private void add(String title, HideOutlines outlines, OpenWorkshop into) {
        Optional<Table> table =
                table().filter(there -> desk.opened().filter(into::equals).isPresent());
        if (table.isEmpty()) {
            return;
        }
        if (outlines.hide().isEmpty()) {
            desk.tell(outlines.remarks());
            return;
        }
        Outlined hide = outlines.hide().get();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(NAME, title);
        cells.putAll(new HideRow(hide, outlines.flaws()).cells());
        String row = into.add(table.get().id(), cells);
        String told = Stream.concat(
                        Stream.of(size(title, hide, outlines.flaws())),
                        outlines.remarks().stream().map(texts::told))
                .collect(Collectors.joining("\n"));
        boolean sound = outlines.remarks().stream().allMatch(DrawnHide::only);
        desk.reveal(table.get().id(), row, told, sound);
    }

    private static boolean only(Remark remark) {
        return remark.severity() == Severity.NOTE;
    }

    /** To be held against a rule: to the millimetre, and a tenth of a square decimetre. */
    private String size(String title, Outlined hide, List<Outlined> flaws) {
        Wording wording = window.wording();
        return texts.text(
                "hide-drawn.added.help",
                title,
                wording.quantity(Length.ofMm(Math.round(hide.bounds().width()))),
                wording.quantity(Length.ofMm(Math.round(hide.bounds().height()))),
                wording.quantity(Area.ofMm2(1000.0 * Math.round(hide.region().area() / 1000))),
                flaws.size());
    }
}
