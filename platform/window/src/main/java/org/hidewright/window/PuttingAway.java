package org.hidewright.window;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.core.work.PutAway;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Row;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.words.WindowTexts;
import org.hidewright.window.workshop.OpenWorkshop;

/** What is left of the project that is open, once it is cut, put into the workshop that is open. For the thread of the window. */
final class PuttingAway {
    private final MainWindow window;
    private final WindowTexts texts;

    PuttingAway(MainWindow window, WindowTexts texts) {
        this.window = window;
        this.texts = texts;
    }

    /** Whether there is a workshop, and a project that is worked out as it is now. */
    boolean can() {
        return window.workshop().opened().isPresent() && worked().isPresent();
    }

    private Optional<WorkedProject> worked() {
        return window.project().flatMap(OpenProject::worked);
    }

    /** The project keeps what it took first, so that it comes to the same when the workshop has less. */
    void run() {
        OpenWorkshop workshop = window.workshop().opened().orElseThrow();
        PutAway left = workshop.left(worked().orElseThrow());
        if (left.rows().isEmpty()) {
            window.tell(texts.text("put-away.nothing.help"));
            return;
        }
        window.project().orElseThrow().keepWhatIsTaken();
        workshop.take(left);
        PutAway.Put first = left.rows().get(0);
        window.workshop()
                .reveal(
                        first.table(),
                        first.row(),
                        left.rows().stream().map(put -> told(put, workshop)).collect(Collectors.joining("\n")),
                        true);
    }

    private String told(PutAway.Put put, OpenWorkshop workshop) {
        String name = workshop.taken(put.table(), put.row())
                .flatMap(PuttingAway::name)
                .orElse(put.row());
        return texts.text(
                "put-away." + put.became().name().toLowerCase(Locale.ROOT).replace('_', '-') + ".help", name);
    }

    private static Optional<String> name(Row row) {
        return row.cell("name").filter(name -> !name.isBlank());
    }
}
