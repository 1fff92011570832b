package org.hidewright.core.begin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.begin.Step.Asked;
import org.hidewright.core.begin.Step.Kind;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Stock;
import org.junit.jupiter.api.Test;

/** A project is whole from its first step on, and every step only changes it. */
class BeginningTest {
    /** By the tray: too thick; a whole weight that no hide is sold by; usual; thin and of another area. */
    private static final String WORKSHOP = """
            {'workshop': 1, 'currency': 'EUR', 'tables': {'leather': [
              {'id': 'sole', 'name': 'Sole bend', 'thickness': '6 mm', 'area': '9 sq ft', 'density': '1.0'},
              {'id': 'thin', 'name': 'Thin side', 'thickness': '1.2 mm', 'area': '12 sq ft', 'density': '0.6'},
              {'id': 'bridle', 'name': 'Bridle', 'thickness': '2.2-2.6 mm', 'area': '20 sq ft', 'density': '0.95'},
              {'id': 'offcuts', 'name': 'Offcuts', 'thickness': '2 mm', 'density': '0.8'}
            ]}}""";

    private final Shop shop = new Shop(new Tray(), new TrayThing(), new TrayWeight(), new TrayPost(), new TrayLabel());
    private final Stock stock = Stock.of(shop.catalogue()::tables).with(Shop.workshop(WORKSHOP));
    private final Beginning beginning = new Beginning(shop.catalogue(), () -> stock, Shop.ENGLISH);

    private Project begun() {
        return beginning.begun(beginning.templates().get(0), UnitSystem.METRIC);
    }

    private WorkedProject worked(Project project) {
        return new Bench(shop.catalogue(), stock).work(project);
    }

    private static String answer(Project project, String slip, String question) {
        return project.slip(slip).orElseThrow().answer(AnswerPath.of(question)).stream()
                .map(node -> project.slip(slip).orElseThrow().textOf(node).replaceAll("\\s+", ""))
                .findFirst()
                .orElse("");
    }

    private void isWhole(Project project) {
        WorkedProject worked = worked(project);
        worked.slips()
                .values()
                .forEach(slip -> assertEquals(
                        WorkedSlip.State.WORKED, slip.state(), slip.slip().id() + Shop.keys(worked.remarks())));
    }

    @Test
    void aTemplateIsBegunWithAPieceToLookAt() {
        assertEquals(
                List.of("tray"),
                beginning.templates().stream().map(Installed::id).toList());
        Project project = begun();
        isWhole(project);
        assertEquals("{\"width\":\"60mm\",\"height\":\"90mm\"}", answer(project, "tray", "held"));
        assertEquals("\"sharp\"", answer(project, "tray", "corners"));
        assertEquals("", answer(project, "tray", "ease"), "a preset stands by itself");
    }

    /** By hand: 60 mm are 2.362 in, 2 3/8 in = 60.325 mm within a fiftieth; 90 mm are 3.543 in, 3 1/2 in = 88.9 mm. */
    @Test
    void whoSeesInchesBeginsInInches() {
        Project project = beginning.begun(beginning.templates().get(0), UnitSystem.INCH);
        isWhole(project);
        assertEquals("in", project.shown("units").orElse(""));
        assertEquals("{\"width\":\"23/8in\",\"height\":\"31/2in\"}", answer(project, "tray", "held"));
        Project labelled = beginning.following(project, "tray-label", true);
        assertEquals("\"13/16in\"", answer(labelled, "tray-label", "length"), "30 mm are 1.181 in");
        assertEquals(
                "{\"width\":\"23/8in\",\"height\":\"31/2in\"}",
                answer(beginning.given(beginning.given(project, true), false), "tray", "held"));
    }

    @Test
    void whatWasTypedStaysAsItWasWhenOtherUnitsAreSeen() throws Exception {
        Project bare = beginning.shown(begun(), UnitSystem.INCH);
        assertEquals(
                beginning.begun(beginning.templates().get(0), UnitSystem.INCH).text(), bare.text());
        Project typed = beginning.shown(begun().answering("tray", "ease", "\"3 mm\""), UnitSystem.INCH);
        assertEquals("in", typed.shown("units").orElse(""));
        assertEquals("\"3mm\"", answer(typed, "tray", "ease"));
        assertEquals("{\"width\":\"60mm\",\"height\":\"90mm\"}", answer(typed, "tray", "held"));
    }

    @Test
    void leatherIsALinkToTheFirstRowThatIsUsual() {
        assertEquals(
                "{\"workshop\":\"leather\",\"row\":\"bridle\",\"column\":\"thickness\"}",
                answer(begun(), "tray", "thickness"));
        assertEquals("", answer(begun(), "tray", "lining"), "what can stay open stays open");
    }

    @Test
    void rowsOutsideTheHardLimitsAreNotOffered() {
        Question thickness = beginning
                .templates()
                .get(0)
                .calculator()
                .declaration()
                .question("thickness")
                .orElseThrow();
        assertEquals(
                List.of("Bridle 2.2-2.6 mm true", "Offcuts 2 mm true", "Thin side 1.2 mm false"),
                beginning.rows(begun(), thickness).stream()
                        .map(fit -> fit.name() + " " + fit.text() + " " + fit.usual())
                        .toList());
    }

    @Test
    void withoutAWorkshopThePresetStands() {
        Project bare = new Beginning(shop.catalogue(), () -> Stock.of(shop.catalogue()::tables), Shop.ENGLISH)
                .begun(beginning.templates().get(0), UnitSystem.METRIC);
        assertEquals("", answer(bare, "tray", "thickness"));
        assertEquals(1, bare.slips().size(), "what it weighs cannot be said without a hide");
    }

    @Test
    void everyQuestionIsAskedInItsStep() {
        List<Step> steps = beginning.steps(begun());
        assertEquals(
                List.of(Kind.PIECE, Kind.SIZE, Kind.MADE, Kind.STOCK, Kind.FOLLOWS),
                steps.stream().map(Step::kind).toList());
        assertEquals(List.of(new Asked("tray", "held")), steps.get(1).asked());
        assertEquals(List.of(new Asked("tray", "ease")), steps.get(1).more());
        assertEquals(List.of(new Asked("tray", "corners")), steps.get(2).asked());
        assertEquals(List.of(new Asked("tray", "thickness")), steps.get(3).asked());
        assertEquals(List.of(new Asked("tray", "lining")), steps.get(3).more());
        assertTrue(steps.get(4).more().contains(new Asked("tray-weight", "pieces")));
    }

    @Test
    void aSizeByNameIsASlipThatIsTakenFrom() {
        Project named = beginning.given(begun(), true);
        assertTrue(beginning.isGiven(named));
        isWhole(named);
        assertEquals("tray-thing", named.slips().get(0).id());
        assertTrue(answer(named, "tray", "held").contains("\"from\":\"tray-thing\",\"answer\":\"height\""));
        Step size = beginning.steps(named).get(1);
        assertEquals(List.of(new Asked("tray-thing", "pencils")), size.asked());
        assertTrue(size.more().contains(new Asked("tray", "held")), "what is taken can be looked at");
        Project measured = beginning.given(named, false);
        assertFalse(beginning.isGiven(measured));
        assertEquals(begun().text().replaceAll("\\s+", ""), measured.text().replaceAll("\\s+", ""));
    }

    @Test
    void whatNeedsNothingMoreFollowsFromThePiece() {
        Project project = begun();
        assertEquals(
                List.of("tray-label false [length]", "tray-weight true []", "tray-post true []"),
                beginning.followers(project).stream()
                        .map(one -> one.calculator().id() + " " + one.in() + " " + one.asks())
                        .toList(),
                "a label’s length is the maker’s to say");
        assertEquals("{\"from\":\"tray\",\"answer\":\"item\"}", answer(project, "tray-weight", "item"));
        assertEquals("{\"from\":\"tray-weight\",\"answer\":\"each\"}", answer(project, "tray-post", "weight"));
    }

    @Test
    void whatOnlyTheMakerCanSayIsAskedOnceItIsWanted() {
        Project labelled = beginning.following(begun(), "tray-label", true);
        isWhole(labelled);
        assertEquals("\"30mm\"", answer(labelled, "tray-label", "length"));
        Step follows = beginning.steps(labelled).get(4);
        assertEquals(List.of(new Asked("tray-label", "length")), follows.asked());
    }

    /** A length can be typed over; whole rows of leather that nobody has would be laid out and priced. */
    @Test
    void leatherThatNobodyHasIsNotMadeUp() {
        Shop sheets = new Shop(new Tray(), new TraySheets());
        Beginning bare = new Beginning(sheets.catalogue(), () -> Stock.of(sheets.catalogue()::tables), Shop.ENGLISH);
        Project cut = bare.following(bare.begun(bare.templates().get(0), UnitSystem.METRIC), "tray-sheets", true);
        assertEquals("", answer(cut, "tray-sheets", "sheets"));
        assertTrue(bare.steps(cut).get(4).asked().contains(new Asked("tray-sheets", "sheets")));
    }

    @Test
    void withoutAWorkshopThePriceOfAHideIsAsked() {
        Beginning bare = new Beginning(shop.catalogue(), () -> Stock.of(shop.catalogue()::tables), Shop.ENGLISH);
        Project project = bare.begun(bare.templates().get(0), UnitSystem.METRIC);
        Project weighed = bare.following(project, "tray-post", true);
        assertEquals("\"6ft2\"", answer(weighed, "tray-weight", "area"));
        assertEquals(
                List.of(new Asked("tray-weight", "density"), new Asked("tray-weight", "area")),
                bare.steps(weighed).get(4).asked());
    }

    @Test
    void whatTakesFromAnotherComesAndGoesWithIt() {
        Project without = beginning.following(begun(), "tray-weight", false);
        assertEquals(
                List.of("tray"), without.slips().stream().map(slip -> slip.id()).toList());
        Project again = beginning.following(without, "tray-post", true);
        assertEquals(
                List.of("tray", "tray-weight", "tray-post"),
                again.slips().stream().map(slip -> slip.id()).toList());
        isWhole(again);
        Project noPost = beginning.following(again, "tray-post", false);
        assertTrue(noPost.slip("tray-weight").isPresent());
    }

    @Test
    void whatFollowsGoesByTheHideThatIsTaken() {
        Project project = begun();
        assertTrue(answer(project, "tray-weight", "density").contains("bridle"));
        assertTrue(answer(project, "tray-weight", "area").contains("bridle"));
        Project thin = taking(project, "thin");
        assertTrue(answer(thin, "tray-weight", "density").contains("thin"));
        assertTrue(answer(thin, "tray-weight", "area").contains("thin"));
        isWhole(thin);
    }

    @Test
    void weightAndAreaAreOfOneHide() {
        Project offcuts = taking(begun(), "offcuts");
        assertTrue(answer(offcuts, "tray", "thickness").contains("offcuts"));
        String density = answer(offcuts, "tray-weight", "density");
        String area = answer(offcuts, "tray-weight", "area");
        assertTrue(
                density.contains("sole") && area.contains("sole"),
                density + area + ": nobody wrote how large they are");
    }

    @Test
    void whatWasTypedStaysWhenAnotherHideIsTaken() throws Exception {
        Project project = begun();
        Project typed = project.answering("tray-weight", "density", "\"0.7\"");
        assertEquals("\"0.7\"", answer(taking(typed, "thin"), "tray-weight", "density"));
    }

    private Project taking(Project project, String row) {
        Question thickness = beginning
                .template(project)
                .orElseThrow()
                .calculator()
                .declaration()
                .question("thickness")
                .orElseThrow();
        Fit fit = beginning.rows(project, thickness).stream()
                .filter(one -> one.link().row().equals(row))
                .findFirst()
                .orElseThrow();
        return beginning.taking(project, "tray", AnswerPath.of("thickness"), fit.link());
    }
}
