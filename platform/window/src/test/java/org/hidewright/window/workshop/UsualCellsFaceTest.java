package org.hidewright.window.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.measure.Length;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.words.WindowTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A cell says beside its field what no question which takes it calls usual. */
class UsualCellsFaceTest {
    private static final AnswerPath WIDTH =
            AnswerPath.of("hardware").row("ring").key("inside-width");

    @TempDir
    Path folder;

    /** A cord through a ring; invented. */
    @Calculates("ring-cord")
    static final class RingCord implements Calculator<RingCord.Asks, RingCord.Gives> {
        record Asks(
                @Asked(unit = "mm", usual = "10-40 mm", example = "20 mm", stock = "hardware.inside-width")
                Length width) {}

        record Gives(@Answered(unit = "mm") Length cord) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.width()));
        }
    }

    @Test
    void whatIsUnusualIsToldWhileItIsTyped() throws Exception {
        Catalogue catalogue = Catalogue.of("org.example.nets", RecordCalculator.of(new RingCord()));
        Path file = Nets.write(folder.resolve("bench.json"), """
                {"workshop": 1, "tables": {"hardware": [
                  {"id": "ring", "name": "Ring", "kind": "ring", "inside-width": "20 mm"}]}}
                """);
        OpenWorkshop workshop = new OpenWorkshop(
                file,
                WorkshopFile.open(file, Stock.of(catalogue::tables)),
                catalogue,
                () -> new Wording(Locale.ENGLISH, UnitSystem.METRIC),
                new WindowTexts(Locale.ENGLISH),
                Runnable::run,
                Runnable::run,
                () -> {});
        workshop.show();
        assertEquals(List.of(), notes(workshop));
        workshop.type(OpenWorkshop.PLACE, WIDTH, "50 mm");
        assertEquals(List.of("Where it is offered, 10 mm to 40 mm is usual, not 50 mm."), notes(workshop));
        workshop.type(OpenWorkshop.PLACE, WIDTH, "30 mm");
        assertEquals(List.of(), notes(workshop));
    }

    private static List<String> notes(OpenWorkshop workshop) {
        return workshop
                .face()
                .orElseThrow()
                .table("hardware")
                .orElseThrow()
                .line("ring")
                .orElseThrow()
                .questions()
                .stream()
                .filter(question -> question.path().equals(WIDTH))
                .flatMap(question -> question.notes().stream())
                .map(note -> note.replace('\u00A0', ' '))
                .toList();
    }
}
