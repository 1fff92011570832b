package org.hidewright.core.jobcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Sections of bundles on the job card: good ones stand there in order; a fault is told in their place and hurts no other. */
class ContributedSectionsTest {
    private static final Contributor GOOD = new Contributor(
            "org.example.good",
            job -> List.of(Section.of(
                    "org.example.good.a",
                    "Good",
                    Paragraph.of(job.slips().get(0).id()))));

    private final List<Remark> told = new ArrayList<>();

    private Document card(Contributor... contributors) {
        return new Packet(new Shop(new Sampler()).work(Shop.slip("strap", "sampler", "")), Shop.ENGLISH)
                .documents(LocalDate.of(2026, 3, 1), List.of(contributors), told::add)
                .get(Packet.JOB_CARD);
    }

    private static Contributor odd(List<?> sections) {
        return new Contributor("org.example.odd", job -> sections);
    }

    private static List<Section> one(Block... blocks) {
        return List.of(Section.of("a", "A", blocks));
    }

    private static Label label(double height) {
        return Label.of("x", Point.of(0, 0), Anchor.BOTTOM, height);
    }

    private static Block figure(Shape... shapes) {
        return Figure.fitted(Drawing.of(List.of(shapes)), "Plan");
    }

    private static Block drawn(Drawing.Builder drawing) {
        return Figure.fitted(drawing.build(), "Plan");
    }

    private static Drawing.Builder lines(int count) {
        Drawing.Builder drawing = Drawing.builder();
        for (int i = 0; i < count; i++) {
            drawing.line(Role.CUT, Point.of(0, 0), Point.of(1, 1));
        }
        return drawing;
    }

    private static Block table(int rows, int columns, String cell) {
        Table.Builder table = Table.builder();
        for (int i = 0; i < columns; i++) {
            table.column("c");
        }
        for (int i = 0; i < rows; i++) {
            table.row(Collections.nCopies(columns, cell));
        }
        return table.build();
    }

    static Stream<Arguments> faults() {
        String full = "x".repeat(4000);
        return Stream.of(
                Arguments.of("it gave nothing, not even an empty list of sections", null),
                Arguments.of("it gave a null where a section belongs", Arrays.asList((Object) null)),
                Arguments.of("it gave a java.lang.Integer where a section belongs", List.of(7)),
                Arguments.of(
                        "its sections have more than 2000 lines, and no more can be shown", one(table(2000, 1, "x"))),
                Arguments.of(
                        "its sections have more than 2000 lines, and no more can be shown",
                        one(NoteSpace.of("", Integer.MAX_VALUE))),
                Arguments.of(
                        "its sections have more than 2000 lines, and no more can be shown",
                        one(TickList.of(Collections.nCopies(2000, TickList.Step.of("x"))))),
                Arguments.of(
                        "its sections have more than 2000 lines, and no more can be shown",
                        Collections.nCopies(2001, Section.of("a", "A"))),
                Arguments.of(
                        "its sections have more than 2000 lines, and no more can be shown",
                        one(Collections.nCopies(20, drawn(lines(1))).toArray(Block[]::new))),
                Arguments.of(
                        "its section “../up” stands apart, and the last part of its name is not fit to name a file",
                        List.of(Section.of("../up", "A").apart())),
                Arguments.of(
                        "its section “org.example.” stands apart, and the last part of its name is not fit to name a file",
                        List.of(Section.of("org.example.", "A").apart())),
                Arguments.of(
                        "its section “Quote” stands apart, and the last part of its name is not fit to name a file",
                        List.of(Section.of("Quote", "A").apart())),
                Arguments.of("its table has 41 columns, and 40 can be shown", one(table(1, 41, "x"))),
                Arguments.of(
                        "its text of 4001 characters is longer than the 4000 that can be shown",
                        one(Paragraph.of(full + "x"))),
                Arguments.of(
                        "its text of 5000 characters is longer than the 4000 that can be shown",
                        List.of(Section.of("a", "A".repeat(5000)))),
                Arguments.of(
                        "its sections are more than 200000 characters of text, and no more can be shown",
                        one(table(51, 1, full))),
                Arguments.of("its drawing “Plan” has 50001 shapes, and 50000 can be shown", one(drawn(lines(50_001)))),
                Arguments.of(
                        "its drawing “Plan” has 201 texts, and 200 can be shown",
                        one(figure(Collections.nCopies(201, label(3)).toArray(Shape[]::new)))),
                Arguments.of(
                        "its drawing “Plan” reaches further than 1000 m, and no more can be shown",
                        one(drawn(Drawing.builder().line(Role.CUT, Point.of(-1e300, 0), Point.of(1e300, 0))))),
                Arguments.of("its drawing “Plan” has letters larger than 1000 mm", one(figure(label(1001)))),
                Arguments.of(
                        "its drawing “Plan” has texts that are not put into words; a section gives them ready to print",
                        one(figure(Label.of(Length.ofMm(2), Point.of(0, 0), Anchor.BOTTOM, 3)))),
                Arguments.of(
                        "its drawing “Plan” has texts that are not put into words; a section gives them ready to print",
                        one(figure(Label.of(Phrase.of("hole"), Point.of(0, 0), Anchor.BOTTOM, 3)))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void whatIsNoSectionOrTooMuchIsToldInItsPlaceWithAWayOut(String why, List<?> given) {
        Document card = card(odd(given), GOOD);
        assertEquals(1, told.size());
        assertEquals(
                "What bundle org.example.odd adds to the job card is missing. |  | This is a fault of the bundle: "
                        + why
                        + " | Tell the maker of the bundle, or turn it off: hidewright addons off org.example.odd."
                        + " Everything else on the card stands.",
                Shop.said(told.get(0)));
        assertStandsInPlaceOf(card, "org.example.odd", why);
    }

    private static void assertStandsInPlaceOf(Document card, String bundle, String why) {
        List<Section> sections = card.sections();
        assertEquals(
                List.of("overview", "strap", bundle, "org.example.good.a"),
                sections.stream().map(Section::id).toList());
        assertTrue(
                VisibleTexts.of(card).stream().anyMatch(text -> text.contains(why)),
                () -> VisibleTexts.of(card).toString());
        assertTrue(VisibleTexts.of(card).contains("Good"));
    }

    @Test
    void aContributorThatBreaksDownIsToldInItsPlace() {
        Document card = card(
                new Contributor("org.example.odd", job -> {
                    throw BundleFault.forGood(Phrase.of("fault-late", 5));
                }),
                GOOD);
        assertEquals(1, told.size());
        assertStandsInPlaceOf(card, "org.example.odd", "it had not come back after 5 s and was left to itself");
    }

    @Test
    void whatIsTheMostThatCanBeShownIsShown() {
        Document card = card(
                new Contributor(
                        "org.example.odd",
                        job -> one(
                                table(400, 40, "x"),
                                table(40, 1, "x".repeat(4000)),
                                NoteSpace.of("", 1000),
                                drawn(lines(50_000)),
                                figure(Collections.nCopies(200, label(3)).toArray(Shape[]::new)))),
                GOOD);
        assertEquals(List.of(), told);
        assertEquals(5, card.sections().get(2).blocks().size());
    }

    @Test
    void whereThereIsNothingToSayNothingStands() {
        assertEquals(2, card(odd(List.of())).sections().size());
        assertEquals(List.of(), told);
    }
}
