package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.core.begin.Beginning;
import org.hidewright.core.begin.Follower;
import org.hidewright.core.begin.Step;
import org.hidewright.core.begin.Step.Asked;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.project.AnswerEdit;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.project.Slip;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.StockLink;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The answers that the maker’s guide lists lead, in its order, to a cut-ready cover with its cost; and they are few. */
class GuidedStartIT {
    private static final Path ROOT = Path.of("../..");
    private static final Pattern LINE = Pattern.compile("\\d+\\. \\*([^*]+)\\*: \\*\\*([^*]+)\\*\\*.*");
    private static final int AT_MOST = 12;

    private final Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    private Catalogue catalogue;
    private Stock stock;
    private Beginning beginning;
    private Project project;
    private int step;

    /** What the guide says is chosen or typed. */
    private record Said(String question, String answer) {}

    /** A question where it is asked. */
    private record Found(Asked asked, AnswerPath path, Question question) {}

    @BeforeEach
    void openTheWorkshop() throws Exception {
        catalogue = BundledCalculators.catalogue();
        stock = WorkshopFile.open(ROOT.resolve("samples/workshops/field-bench.json"), Stock.of(catalogue::tables))
                .stock();
        beginning = new Beginning(catalogue, () -> stock, wording);
    }

    private static List<Said> guide() throws Exception {
        String text = Files.readString(ROOT.resolve("docs/makers-guide.md"));
        int from = text.indexOf("## Begin a project in steps");
        return text.substring(from, text.indexOf("\n## ", from + 1))
                .lines()
                .map(LINE::matcher)
                .filter(Matcher::matches)
                .map(line -> new Said(line.group(1), line.group(2)))
                .toList();
    }

    private String title(Installed calculator) {
        return wording.text(
                calculator.calculator().texts(),
                calculator.calculator().declaration().titleKey());
    }

    private void answer(Said said) throws Exception {
        if (project == null) {
            project = beginning.begun(
                    beginning.templates().stream()
                            .filter(template -> title(template).equals(said.answer()))
                            .findFirst()
                            .orElseThrow(),
                    UnitSystem.METRIC);
        } else if (beginning
                .giver(project)
                .filter(giver -> title(giver).equals(said.answer()))
                .isPresent()) {
            project = beginning.given(project, true);
        } else {
            answer(find(said.question()), said.answer());
        }
    }

    /** In the step that is looked at or a later one, as a maker goes from one to the next. */
    private Found find(String label) {
        List<Step> steps = beginning.steps(project);
        for (int i = step; i < steps.size(); i++) {
            for (Asked asked : Stream.concat(steps.get(i).asked().stream(), steps.get(i).more().stream())
                    .toList()) {
                Question question = calculator(asked)
                        .calculator()
                        .declaration()
                        .question(asked.question())
                        .orElseThrow();
                Optional<Found> found = find(label, asked, AnswerPath.of(question.key()), question);
                if (found.isPresent()) {
                    step = i;
                    return found.get();
                }
            }
        }
        return fail("“" + label + "” is not asked any more");
    }

    private Installed calculator(Asked asked) {
        return catalogue
                .find(project.slip(asked.slip()).orElseThrow().calculator())
                .orElseThrow();
    }

    private Optional<Found> find(String label, Asked asked, AnswerPath path, Question question) {
        if (label(asked, question).equals(label)) {
            return Optional.of(new Found(asked, path, question));
        }
        List<Found> inside = new ArrayList<>();
        question.questions()
                .forEach(inner ->
                        find(label, asked, path.key(inner.key()), inner).ifPresent(inside::add));
        for (Variant variant : question.variants()) {
            AnswerPath way = path.key(variant.key());
            if (isChosen(slip(asked).answer(path), variant)) {
                variant.questions()
                        .forEach(inner ->
                                find(label, asked, way.key(inner.key()), inner).ifPresent(inside::add));
            }
        }
        return inside.stream().findFirst();
    }

    private static boolean isChosen(Optional<JsonNode> answer, Variant variant) {
        return answer.orElse(null) instanceof JsonObject object
                && object.text(AnswerEdit.CHOSEN)
                        .map(variant.key()::equals)
                        .orElse(object.get(variant.key()).isPresent());
    }

    private Slip slip(Asked asked) {
        return project.slip(asked.slip()).orElseThrow();
    }

    private String label(Asked asked, Field field) {
        return wording.label(calculator(asked).calculator().texts(), field);
    }

    private void answer(Found found, String answer) throws Exception {
        Texts texts = calculator(found.asked()).calculator().texts();
        Question question = found.question();
        Optional<Fit> row = beginning.rows(project, question).stream()
                .filter(fit -> fit.name().equals(answer))
                .findFirst();
        if (row.isPresent()) {
            project = beginning.taking(
                    project, found.asked().slip(), found.path(), row.get().link());
        } else if (question.kind() == Kind.VARIANTS) {
            String key = question.variants().stream()
                    .filter(variant -> wording.text(texts, variant.labelKey()).equals(answer))
                    .findFirst()
                    .orElseThrow()
                    .key();
            project = project.with(slip(found.asked()).choosing(found.path(), key));
        } else {
            String typed = question.options().stream()
                    .filter(option -> wording.text(texts, option.labelKey()).equals(answer))
                    .map(option -> option.key())
                    .findFirst()
                    .orElse(answer);
            assertTrue(question.kind() != Kind.CHOICE || !typed.equals(answer), answer + " is no choice");
            project = project.with(slip(found.asked()).answering(found.path(), JsonText.quoted(typed)));
        }
    }

    private static Item item(WorkedProject worked) {
        return worked.slips().values().stream()
                .flatMap(slip -> slip.answers().stream())
                .flatMap((Values values) -> values.get("item").stream())
                .map(Item.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theGuidesAnswersLeadToACoverThatCanBeCutAndIsCosted() throws Exception {
        List<Said> answers = guide();
        assertTrue(answers.size() > 4, "the guide lists " + answers);
        assertTrue(answers.size() <= AT_MOST, answers.size() + " answers");
        for (Said said : answers) {
            answer(said);
        }
        Bench bench = new Bench(catalogue, stock);
        WorkedProject worked = bench.work(project);
        assertEquals(
                List.of(),
                worked.remarks().stream()
                        .filter(Remark::stops)
                        .map(wording::what)
                        .toList());
        worked.slips().forEach((id, slip) -> assertEquals(WorkedSlip.State.WORKED, slip.state(), id));
        WorkedProject sample =
                bench.work(ProjectReader.read(Files.readString(ROOT.resolve("samples/templates/book-cover.json")))
                        .project()
                        .orElseThrow());
        assertEquals(
                item(sample).parts().stream().map(Part::id).toList(),
                item(worked).parts().stream().map(Part::id).toList());
        assertEquals(height(sample), height(worked), 1e-9, "it is the same book");
        List<String> following = beginning.followers(project).stream()
                .filter(Follower::in)
                .map(follower -> follower.calculator().id())
                .toList();
        assertFalse(following.isEmpty(), "nothing says what it costs");
        assertTrue(
                worked.slips()
                                .get(following.get(0))
                                .answers()
                                .orElseThrow()
                                .get("each")
                                .orElseThrow()
                        instanceof Money,
                following.toString());
    }

    private static double height(WorkedProject worked) {
        return worked.slips().values().stream()
                .flatMap(slip -> slip.answers().stream())
                .flatMap((Values values) -> values.get("height").stream())
                .map(value -> ((Length) value).mm())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theThingThatIsHeldSuitsTheTemplateThatHoldsIt() {
        assertEquals("sheets", held("book-cover"), "a book is of sheets");
        assertEquals("measured", held("sheath"), "no blade has a size of a standard");
        assertEquals("cards", held("folding-wallet"), "where the template says nothing, the first there is");
    }

    /** In which way the thing is named that a template takes its sizes from, as it is begun. */
    private String held(String template) {
        Project begun =
                beginning.given(beginning.begun(catalogue.find(template).orElseThrow(), UnitSystem.METRIC), true);
        assertEquals(
                WorkedSlip.State.WORKED,
                new Bench(catalogue, stock).work(begun).slips().get(template).state());
        String thing = begun.slip("held-thing").orElseThrow().text().replaceAll("\\s", "");
        return thing.replaceAll("(?s).*\"thing\":\\{\"([a-z-]+)\".*", "$1");
    }

    /**
     * By hand, from the field bench: one side of 22 ft² for 165 EUR and one of 18 ft² for 118.50 EUR, waste 30 % of what is
     * bought. The sleeves of a book cover of the first, cut from the second, cost their area / 0.7 times the difference of
     * 165 / 22 and 118.50 / 18 EUR/ft² less.
     */
    @Test
    void everyPartIsPricedByTheLeatherItIsCutFrom() throws Exception {
        Project cover = beginning.begun(catalogue.find("book-cover").orElseThrow(), UnitSystem.METRIC);
        cover = beginning.following(cover, "item-cost", true);
        cover = leather(leather(cover, "thickness", "natural-side"), "sleeve-thickness", "lining-side");
        cover = cover.answering("item-cost", "per-hour", "\"30 EUR\"");
        WorkedProject alike = new Bench(catalogue, stock).work(cover);
        Project byTheirs = beginning.byTheirLeathers(cover, alike);
        String row = byTheirs.slip("item-cost").orElseThrow().text().replaceAll("\\s", "");
        assertTrue(
                row.contains("\"other-leather\":[{\"id\":\"lining-side\",\"parts\":\"sleeveleather\","
                        + "\"area\":{\"workshop\":\"leather\",\"row\":\"lining-side\",\"column\":\"area\"},"
                        + "\"price\":{\"workshop\":\"leather\",\"row\":\"lining-side\",\"column\":\"price\"}}]"),
                row);
        WorkedProject apart = new Bench(catalogue, stock).work(byTheirs);
        Item item = (Item) alike.slips()
                .get("book-cover")
                .answers()
                .orElseThrow()
                .get("item")
                .orElseThrow();
        double ft2 = item.parts().stream()
                        .filter(part -> part.leather().equals("sleeve leather"))
                        .mapToDouble(part -> PartShape.cutArea(part) * part.pieces())
                        .sum()
                / (304.8 * 304.8);
        assertTrue(ft2 > 0.1, "the sleeves are there: " + ft2);
        double less = ft2 / 0.7 * (165.0 / 22 - 118.50 / 18);
        assertEquals(less, materials(alike) - materials(apart), 0.011, "rounded to a cent on either side");

        assertEquals(byTheirs.text(), beginning.byTheirLeathers(byTheirs, apart).text(), "and that is all");
        Project again = leather(byTheirs, "sleeve-thickness", "natural-side");
        String one = beginning
                .byTheirLeathers(again, new Bench(catalogue, stock).work(again))
                .slip("item-cost")
                .orElseThrow()
                .text();
        assertFalse(one.contains("other-leather"), "of one leather again: " + one);
        Project own = byTheirs.answering(
                "item-cost",
                "other-leather",
                "[{\"id\": \"mine\", \"parts\": \"sleeve leather\", \"area\": \"5 ft²\", \"price\": \"20 EUR\"}]");
        assertEquals(
                own.text(),
                beginning
                        .byTheirLeathers(own, new Bench(catalogue, stock).work(own))
                        .text(),
                "what the maker wrote stays");
    }

    private Project leather(Project project, String question, String row) {
        return beginning.taking(
                project, "book-cover", AnswerPath.of(question), new StockLink("leather", row, "thickness"));
    }

    private static double materials(WorkedProject worked) {
        WorkedSlip cost = worked.slips().get("item-cost");
        assertEquals(WorkedSlip.State.WORKED, cost.state(), cost.remarks().toString());
        return ((Money) cost.answers().orElseThrow().get("materials-each").orElseThrow())
                .amount()
                .doubleValue();
    }

    @Test
    void theBarOfABuckleIsThatOfTheBuckleThatIsChosenByItsWidth() {
        Project collar = beginning.begun(
                beginning.templates().stream()
                        .filter(template -> template.id().equals("dog-collar"))
                        .findFirst()
                        .orElseThrow(),
                UnitSystem.METRIC);
        String text = collar.text().replaceAll("\\s", "");
        for (String column : List.of("inside-width", "bar-diameter")) {
            assertTrue(
                    text.contains(
                            "{\"workshop\":\"hardware\",\"row\":\"roller-buckle-25\",\"column\":\"" + column + "\"}"),
                    text);
        }
    }
}
