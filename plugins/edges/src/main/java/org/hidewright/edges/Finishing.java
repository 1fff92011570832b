package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Volume;
import org.osgi.service.component.annotations.Component;

/** Every edge of a piece sorted and finished in the order that works, with time, waits and liquids. */
@Calculates("finishing")
@Component(service = Calculator.class)
public final class Finishing implements Calculator<Finishing.Piece, Finishing.Finished> {
    private static final Formula EDGE_TIME =
            Formula.of("edge-time", "T = p · (k · f + L · (a + b · t))", Origins.BENCH_PACE);
    private static final Formula FACES_TIME = Formula.of("faces-time", "T = p · (k · f + S · a)", Origins.BENCH_PACE);

    private static final NoticeKind WILL_NOT_BURNISH = NoticeKind.check("will-not-burnish");
    private static final NoticeKind BURNISH_TEST_FIRST = NoticeKind.note("burnish-test-first");
    private static final NoticeKind THIN_TO_BURNISH = NoticeKind.note("thin-to-burnish");
    private static final NoticeKind EDGE_LEFT_RAW = NoticeKind.note("edge-left-raw");
    private static final NoticeKind GRIT_NOT_FINE = NoticeKind.check("grit-not-fine-enough");
    private static final NoticeKind GRIT_NOT_COARSE = NoticeKind.note("grit-not-coarse-enough");

    /** What is asked. */
    public record Piece(
            @Asked(example = "vegetable") Tannage tannage,

            @Asked(
                    example =
                            "[{\"id\":\"pocket-mouth\",\"length\":\"105 mm\",\"thickness\":\"1.6 mm\",\"lies\":\"pocket-mouth\"},{\"id\":\"rim\",\"length\":\"420 mm\",\"thickness\":\"3.6 mm\",\"lies\":\"sewn-together\"}]")
            List<Edge> edges,

            @Asked(example = "{\"area\":\"6 dm²\"}") Optional<Faces> faces,

            @Asked(preset = "water") DyeKind dye,
            @Asked(preset = "usual") Room room,

            @Asked(example = "[{\"id\":\"beveler-1\",\"kind\":\"beveler\",\"width\":\"1 mm\"}]")
            Optional<List<EdgeTool>> edgeTools,

            @Asked(example = "[{\"id\":\"p240\",\"grit\":\"240\"},{\"id\":\"p400\",\"grit\":\"400\"}]")
            Optional<List<Abrasive>> abrasives,

            @Asked(example = "[{\"id\":\"brown-dye\",\"kind\":\"dye\",\"holds\":\"250 ml\",\"covers\":\"2 m²\"}]")
            Optional<List<Bottle>> bottles,

            @Asked(unit = "%", min = "0 %", max = "300 %", usual = "10-60 %", preset = "30 %")
            double lost,

            @Asked(unit = "%", min = "10 %", max = "1000 %", usual = "50-300 %", preset = "100 %")
            double pace) {}

    /** What is answered. */
    public record Finished(
            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "edge-time", lead = true)
            Duration handsOn,

            @Answered(unit = "h", step = "0.5 h", round = Rounding.UP, by = "drying-habit", lead = true)
            Duration waitsAtLeast,

            @Answered(unit = "h", step = "0.5 h", round = Rounding.UP, by = "drying-habit")
            Duration waitsAtMost,

            @Answered(by = "burnishing-habit") BurnishingVerdict burnishing,
            @Answered(by = "burnishing-habit") Phrase because,
            @Answered(by = "burnishing-habit") Phrase edgeToChoose,
            @Answered(by = "edge-order") List<EdgeRow> edges,
            @Answered(by = "edge-order") List<StepRow> steps,
            @Answered(by = "liquid-needed") List<LiquidRow> liquids) {}

    /** One edge: when, its bevel and the beveler to take, what it is sanded with. */
    public record EdgeRow(
            @RowId String id,
            @Answered EdgeGroup group,

            @Answered(unit = "mm", step = "0.1 mm", by = "bevel-width")
            Optional<Length> bevel,

            @Answered Optional<String> beveler,
            @Answered String grits,

            @Answered(unit = "min", step = "1 min", round = Rounding.UP, by = "edge-time")
            Duration handsOn) {}

    /** One step on all that need it, and how long that is left alone afterwards. */
    public record StepRow(
            @RowId String id,
            @Answered Stage stage,
            @Answered Phrase work,
            @Answered Phrase on,

            @Answered(unit = "min", step = "1 min", round = Rounding.UP, by = "edge-time")
            Optional<Duration> handsOn,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "drying-habit")
            Optional<Duration> waitFrom,

            @Answered(unit = "h", step = "0.1 h", by = "drying-habit")
            Optional<Duration> waitTo) {}

    /** One liquid: all it covers, every coat counted, and what that takes. */
    public record LiquidRow(
            @RowId String id,
            @Answered Liquid liquid,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "edges-arithmetic")
            Area covered,

            @Answered(unit = "ml", step = "0.1 ml", round = Rounding.UP, by = "liquid-needed")
            Volume used) {}

    @Override
    public Outcome<Finished> calculate(Piece piece, Working working) {
        List<Abrasive> abrasives = piece.abrasives().orElse(List.of());
        Optional<Notice> unknown = Abrasive.unknown(abrasives);
        if (unknown.isPresent()) {
            return Outcome.refuse(unknown.get());
        }
        List<Grit> grits = Abrasive.grits(abrasives);
        List<EdgePlan> edges =
                piece.edges().stream().map(edge -> new EdgePlan(edge, grits)).toList();
        Schedule schedule = new Schedule(
                edges, piece.faces(), piece.dye(), piece.room(), piece.bottles().orElse(List.of()), piece.pace());
        List<EdgeTool> tools = piece.edgeTools().orElse(List.of());
        takeDown(piece, edges, schedule, working);
        Wait waits = schedule.waits();
        return Outcome.of(
                new Finished(
                        schedule.handsOn(),
                        waits.least(),
                        waits.most(),
                        piece.tannage().burnishing(),
                        piece.tannage().reason(),
                        piece.tannage().instead(),
                        edges.stream().map(edge -> row(edge, tools, schedule)).toList(),
                        schedule.all().stream().map(Finishing::row).toList(),
                        liquids(piece, edges, working)),
                notices(piece, edges, tools, schedule));
    }

    private static void takeDown(Piece piece, List<EdgePlan> edges, Schedule schedule, Working working) {
        for (EdgePlan plan : edges) {
            plan.bevel().ifPresent(width -> Bevel.takeDown(plan.edge().thickness(), width, working));
            if (!plan.tasks().isEmpty()) {
                working.step(
                        EDGE_TIME,
                        schedule.handsOn(plan),
                        "p",
                        piece.pace(),
                        "k",
                        plan.tasks().size(),
                        "f",
                        EdgePlan.HANDLING,
                        "L",
                        plan.edge().together(),
                        "a",
                        plan.perMetre(),
                        "b",
                        plan.perMetreAndMm(),
                        "t",
                        plan.edge().thickness());
            }
        }
        piece.faces()
                .ifPresent(faces -> working.step(
                        FACES_TIME,
                        faces.habitual().times(piece.pace()),
                        "p",
                        piece.pace(),
                        "k",
                        faces.tasks().size(),
                        "f",
                        EdgePlan.HANDLING,
                        "S",
                        faces.together(),
                        "a",
                        faces.perSquareMetre()));
    }

    private static EdgeRow row(EdgePlan plan, List<EdgeTool> tools, Schedule schedule) {
        Edge edge = plan.edge();
        return new EdgeRow(
                edge.id(),
                edge.group(),
                plan.bevel(),
                plan.bevel()
                        .flatMap(width -> Bevel.beveler(tools, edge.thickness(), width))
                        .map(EdgeTool::id),
                plan.isSanded()
                        ? plan.ladder().grits().stream().map(Grit::label).collect(Collectors.joining(", "))
                        : "",
                schedule.handsOn(plan));
    }

    private static StepRow row(Step step) {
        Optional<Wait> wait = Optional.of(step.drying()).filter(some -> !some.isNone());
        return new StepRow(
                step.id(),
                step.task().stage(),
                StepWords.work(step),
                StepWords.on(step),
                Optional.of(step.handsOn()).filter(time -> time.seconds() > 0),
                wait.map(Wait::least),
                wait.map(Wait::most));
    }

    private static List<LiquidRow> liquids(Piece piece, List<EdgePlan> edges, Working working) {
        List<Bottle> bottles = piece.bottles().orElse(List.of());
        List<LiquidRow> rows = new ArrayList<>();
        for (Map.Entry<Liquid, Area> covered :
                Liquids.covered(edges, piece.faces()).entrySet()) {
            Liquid liquid = covered.getKey();
            Volume needed =
                    Liquids.needed(covered.getValue(), Bottle.mlPerSquareMetre(liquid, bottles), piece.lost(), working);
            rows.add(new LiquidRow(liquid.key(), liquid, covered.getValue(), needed));
        }
        return rows;
    }

    private static List<Notice> notices(Piece piece, List<EdgePlan> edges, List<EdgeTool> tools, Schedule schedule) {
        List<Notice> notices = new ArrayList<>();
        boolean colour = schedule.has(Work.DYE);
        for (EdgePlan plan : edges) {
            Edge edge = plan.edge();
            String place = "edges[" + edge.id() + "]";
            if (edge.isBuried()) {
                continue;
            }
            burnishing(piece.tannage(), edge, place).ifPresent(notices::add);
            if (colour
                    && edge.finish() instanceof EdgeFinish.Burnished
                    && edge.finish().dyed() == 0) {
                notices.add(EDGE_LEFT_RAW.at(place + ".finish", edge.id()));
            }
            plan.bevel()
                    .flatMap(width -> Bevel.none(tools, edge.thickness(), width))
                    .ifPresent(notices::add);
            if (plan.isSanded()) {
                ladder(plan).forEach(notices::add);
            }
        }
        List<Notice> all = new ArrayList<>(notices.stream().distinct().toList());
        Abrasive.twoCharts(piece.abrasives().orElse(List.of())).ifPresent(all::add);
        boolean laser = piece.edges().stream().anyMatch(edge -> edge.cutBy() == CutBy.LASER);
        all.addAll(Cautions.of(schedule, piece.tannage(), piece.dye(), laser));
        return all;
    }

    private static Optional<Notice> burnishing(Tannage tannage, Edge edge, String place) {
        if (!(edge.finish() instanceof EdgeFinish.Burnished)) {
            return Optional.empty();
        }
        return switch (tannage.burnishing()) {
            case WILL_NOT ->
                Optional.of(WILL_NOT_BURNISH.at(place + ".finish", edge.id(), tannage.reason(), tannage.instead()));
            case TEST_FIRST ->
                Optional.of(BURNISH_TEST_FIRST.at(place + ".finish", edge.id(), tannage.reason(), tannage.instead()));
            case DOES ->
                edge.thickness().mm() < Bevel.THINNEST.mm() - 1e-9
                        ? Optional.of(THIN_TO_BURNISH.at(place + ".thickness", edge.id(), edge.thickness()))
                        : Optional.empty();
        };
    }

    private static Stream<Notice> ladder(EdgePlan plan) {
        Ladder ladder = plan.ladder();
        Grit coarsest = plan.edge().coarsest();
        Grit finest = plan.edge().finish().finest();
        Optional<Notice> coarse = ladder.startsAt(coarsest)
                ? Optional.empty()
                : Optional.of(
                        GRIT_NOT_COARSE.at("abrasives", ladder.grits().get(0).label(), coarsest.label()));
        Optional<Notice> fine = ladder.reaches(finest)
                ? Optional.empty()
                : Optional.of(GRIT_NOT_FINE.at(
                        "abrasives",
                        ladder.grits().get(ladder.grits().size() - 1).label(),
                        finest.label()));
        return Stream.of(coarse, ladder.gap(), fine).flatMap(Optional::stream);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(Bevel.WIDTH, EDGE_TIME, FACES_TIME, Liquids.NEEDED);
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(
                        Stream.of(
                                Abrasive.UNKNOWN,
                                Abrasive.TWO_CHARTS,
                                Bevel.NO_BEVELER,
                                WILL_NOT_BURNISH,
                                BURNISH_TEST_FIRST,
                                THIN_TO_BURNISH,
                                EDGE_LEFT_RAW,
                                Ladder.GAP,
                                GRIT_NOT_FINE,
                                GRIT_NOT_COARSE),
                        Cautions.KINDS.stream())
                .toList();
    }

    @Override
    public List<String> phrases() {
        return Stream.concat(Tannage.phrases().stream(), StepWords.phrases().stream())
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.ARITHMETIC,
                Origins.EDGE_ORDER,
                Origins.BURNISHING_HABIT,
                Origins.DRYING_HABIT,
                Origins.ISO_6344,
                Origins.HALF_THE_GRAIN,
                Origins.COVERAGE);
    }
}
