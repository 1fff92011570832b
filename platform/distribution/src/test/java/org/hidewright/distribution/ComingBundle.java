package org.hidewright.distribution;

import java.io.IOException;
import java.nio.file.Path;

/**
 * An add-on that comes, is updated and goes, and brings one of everything: a calculator with a choice, variants and rows, a table
 * of the workshop, a section of the job card, a template that is a text and asks the calculator. What it answers tells its version.
 */
final class ComingBundle {
    static final String ID = "net.example.odd";

    private static final String CALCULATOR = """
            import java.util.*;
            import org.hidewright.api.calculator.*;
            import org.hidewright.api.measure.*;

            @Calculates("coming")
            public class Coming implements Calculator<Coming.Asking, Coming.Told> {
                public enum Way { FLAT, FOLDED }

                public sealed interface End {
                    record Plain() implements End {}

                    record Rounded(@Asked(unit = "mm", min = "1 mm", max = "50 mm", preset = "5 mm") Length radius)
                            implements End {}
                }

                public record Layer(
                        @RowId String id,
                        @Asked(unit = "mm", min = "0.5 mm", max = "9 mm", preset = "1 mm") Length thickness) {}

                public record Asking(
                        @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", preset = "2 mm") Length thickness,
                        @Asked(preset = "flat") Way way,
                        @Asked(preset = "{\\"plain\\": {}}") End end,
                        @Asked List<Layer> layers) {}

                public record Line(@RowId String id, @Answered(unit = "mm", by = "f") Length length) {}

                public record Told(
                        @Answered(unit = "mm", by = "f", lead = true) Length length, @Answered List<Line> lines) {}

                private static final Formula F = Formula.of("f", "L = n · t", Source.of("s", Source.Kind.DEFINITION));
                private static final NoticeKind SOME = NoticeKind.note("some");

                public List<Formula> formulas() {
                    return List.of(F);
                }

                public List<NoticeKind> notices() {
                    return List.of(SOME);
                }

                public Outcome<Told> calculate(Asking asked, Working working) {
                    %s
                    Length length = asked.thickness().times(%d);
                    working.step(F, length, "t", asked.thickness());
                    List<Line> lines = asked.layers().stream()
                            .map(layer -> new Line(layer.id(), layer.thickness()))
                            .toList();
                    return Outcome.of(new Told(length, lines), List.of(SOME.with(asked.thickness(), asked.way())));
                }
            }
            """;

    private static final String TABLE = """
            import java.util.Optional;
            import org.hidewright.api.calculator.Asked;
            import org.hidewright.api.measure.Length;
            import org.hidewright.api.workshop.*;

            @Tabulates("comings")
            public class Comings implements WorkshopTable<Comings.Row> {
                public record Row(@Asked(unit = "mm", min = "1 mm", max = "90 mm") Optional<Length> width) {}
            }
            """;

    private static final String SECTION = """
            import java.util.List;
            import org.hidewright.api.document.*;

            public class ComingPaper implements SectionContributor {
                public List<Section> sections(JobView job) {
                    return job.worked("coming").isEmpty()
                            ? List.of()
                            : List.of(Section.of("net.example.odd.paper", "Coming %d", List.of(Paragraph.of("There."))));
                }
            }
            """;

    private static final String TEMPLATE = """
            {"template": 1, "id": "coming-tag", "version": 1, "title": "Coming tag", "purpose": "Comes and goes.",
             "questions": [{"key": "width", "kind": "length", "unit": "mm", "min": "12 mm", "max": "150 mm",
               "preset": "40 mm", "label": "Width", "help": "Of the tag."}],
             "values": {"coming": {"asks": "coming", "questions": {"layers": [{"id": "a"}]}, "answers": {"length": "length"}}},
             "answers": [{"key": "cord", "kind": "length", "unit": "mm", "is": "coming.length", "label": "Cord",
               "help": "For the tag."}],
             "draws": {"calculator": "parts", "questions": {"parts": [{"id": "tag", "name": "Tag", "thickness": "2.4 mm",
               "shape": {"rectangle": {"width": "=width", "height": "75 mm"}}}]}}}
            """;

    private static final String TEXTS = """
            coming.title = Coming
            coming.purpose = Comes and goes.
            coming.thickness = Thickness
            coming.thickness.help = Of the leather.
            coming.way = Way
            coming.way.help = How it lies.
            coming.end = End
            coming.end.help = How it ends.
            coming.layers = Layers
            coming.layers.help = Of leather.
            layer.thickness = Thickness
            layer.thickness.help = Of the layer.
            rounded.radius = Radius
            rounded.radius.help = Of the end.
            way.flat = flat
            way.folded = folded
            end.plain = plain
            end.rounded = rounded
            coming.answer.length = Length
            coming.answer.lines = Lines
            line.length = Length
            notice.some.what = Some {0}.
            notice.some.why = Because of {1}.
            notice.some.next = Look again.
            formula.f = Some times as thick
            source.s = By definition
            comings.title = Comings
            comings.purpose = What comes.
            comings.width = Width
            comings.width.help = Of what comes.
            """;

    private ComingBundle() {}

    /**
     * A version of it.
     *
     * @param version how many times its answer is what was asked
     * @param leaves what its calculator leaves behind each time it is called, as a statement
     */
    static Path pack(Path folder, int version, String leaves) throws IOException {
        return StrangeBundle.named(ID)
                .header("Bundle-Version", version + ".0.0")
                .header("Hidewright-Templates", "coming-tag.json")
                .source("Coming", CALCULATOR.formatted(leaves, version))
                .source("Comings", TABLE)
                .source("ComingPaper", SECTION.formatted(version))
                .calculator("Coming", "coming")
                .table("Comings", "comings")
                .contributor("ComingPaper")
                .texts(TEXTS)
                .entry("coming-tag.json", TEMPLATE)
                .pack(folder, "coming-" + version + ".jar");
    }
}
