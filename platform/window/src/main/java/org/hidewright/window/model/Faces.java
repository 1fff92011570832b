package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.document.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.item.ItemPicture;
import org.hidewright.core.jobcard.AnswerTable;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.core.jobcard.SlipBars;
import org.hidewright.core.jobcard.SlipSources;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.jobcard.SlipWorking;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.CautionsOnce;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.WorkshopNotices;

/** Puts a worked project into the words and numbers it is shown in. Pure; for any thread. */
public final class Faces {
    private final WorkedProject worked;
    private final Wording wording;
    private final boolean ranges;
    /** What was shown before; null where nothing was. */
    private final ProjectFace before;

    private final Flow flow;
    private final SlipBars bars;

    private Faces(
            WorkedProject worked, Wording wording, List<Contributor> contributors, boolean ranges, ProjectFace before) {
        this.worked = worked;
        this.wording = wording;
        this.ranges = ranges;
        this.before = before;
        this.flow = new Flow(worked, wording);
        this.bars = new SlipBars(worked, wording, contributors);
    }

    /**
     * A project without what ranges make of its answers, which can take a while to work out. Where an answer moved before, room
     * is left for how it moves now. The first time, it waits for no bundle that shows bars either.
     *
     * @param contributors bundles that show bars
     * @param before what was shown before; null where nothing was
     */
    public static ProjectFace atOnce(
            WorkedProject worked, Wording wording, List<Contributor> contributors, ProjectFace before) {
        return new Faces(worked, wording, before == null ? List.of() : contributors, false, before)
                .project(() -> true)
                .orElseThrow();
    }

    /**
     * The whole of it, slip by slip.
     *
     * @param contributors bundles that show bars
     * @param wanted asked before each slip, since ranges take their time
     * @return empty where it was not wanted to its end
     */
    public static Optional<ProjectFace> whole(
            WorkedProject worked, Wording wording, List<Contributor> contributors, BooleanSupplier wanted) {
        return new Faces(worked, wording, contributors, true, null).project(wanted);
    }

    private Optional<ProjectFace> project(BooleanSupplier wanted) {
        List<SlipFace> slips = new ArrayList<>();
        CautionsOnce once = new CautionsOnce(wording);
        for (WorkedSlip slip : worked.slips().values()) {
            if (!wanted.getAsBoolean()) {
                return Optional.empty();
            }
            slips.add(slip(slip, once));
        }
        return Optional.of(new ProjectFace(worked.project().name(), wording.inches(), List.copyOf(slips), differs()));
    }

    /** Not told: whose a bundle’s row is, which stays so whatever is done. */
    private List<String> differs() {
        return new Copies(worked.shelf(), worked.stock())
                .differences().stream()
                        .filter(remark -> !remark.key().equals("notice." + WorkshopNotices.WORKSHOP_FROM_BUNDLE.key()))
                        .map(wording::what)
                        .toList();
    }

    private SlipFace slip(WorkedSlip slip, CautionsOnce toldBefore) {
        SlipWording words = new SlipWording(slip, wording);
        QuestionFaces asked = new QuestionFaces(worked, slip, wording);
        List<QuestionFace> questions = asked.all();
        return new SlipFace(
                slip.slip().id(),
                slip.slip().calculator(),
                slip.slip().whatIf().map(this::title).orElse(""),
                words.title(),
                words.purpose(),
                slip.state(),
                stateText(slip),
                answers(slip, words),
                questions,
                slip.remarks().stream()
                        .filter(remark -> asked.isOfSearch(remark)
                                || !QuestionFaces.isTold(remark, questions) && !QuestionFaces.waits(remark))
                        .map(remark ->
                                told(remark, toldBefore, slip.state() == State.DORMANT || asked.isOfSearch(remark)))
                        .toList(),
                bars.of(slip),
                tables(slip, words),
                working(slip),
                sources(slip, words),
                drawings(slip, words),
                makes(slip),
                asked.sought(),
                flow.drives(slip.slip().id()));
    }

    /** What waits says for whom. */
    private String stateText(WorkedSlip slip) {
        List<String> waitsFor = slip.asked().stream()
                .flatMap(line -> line.link().stream())
                .map(Link::slip)
                .distinct()
                .filter(id -> Optional.ofNullable(worked.slips().get(id))
                        .flatMap(WorkedSlip::answers)
                        .isEmpty())
                .map(this::title)
                .toList();
        return switch (slip.state()) {
            case WORKED -> "";
            case WAITING ->
                waitsFor.isEmpty()
                        ? wording.host(slip.stateKey())
                        : wording.host("state.waiting-for", String.join("; ", waitsFor));
            default -> wording.host(slip.stateKey());
        };
    }

    private String title(String slip) {
        return Optional.ofNullable(worked.slips().get(slip))
                .map(known -> new SlipWording(known, wording).title())
                .orElse(slip);
    }

    /**
     * A caution that was told on a slip before is only called by its name.
     *
     * @param deed whether the slip has words to press that do what is to be done; then commands are not told
     */
    private SlipFace.Told told(Remark remark, CautionsOnce once, boolean deed) {
        boolean first = once.test(remark);
        return new SlipFace.Told(
                remark.severity(),
                wording.host("severity." + remark.severity().name().toLowerCase(Locale.ROOT)),
                wording.what(remark),
                first ? wording.why(remark) : "",
                first && !deed ? wording.next(remark) : "");
    }

    private List<AnswerFace> answers(WorkedSlip slip, SlipWording words) {
        if (slip.answers().isEmpty()) {
            return List.of();
        }
        Values values = slip.answers().get();
        Optional<RangeWords> moving = ranges ? RangeWords.of(worked, slip, wording) : Optional.empty();
        List<AnswerFace> faces = new ArrayList<>();
        for (Answer answer : declared(slip)) {
            if (answer.columns().isEmpty() && answer.kind() != Kind.DRAWING) {
                values.get(answer.key()).ifPresent(value -> {
                    Shown shown = words.shown(answer, value);
                    Optional<RangeWords.Met> met = moving.flatMap(range -> range.met(answer));
                    Optional<AnswerFace> was = movedBefore(slip.slip().id(), answer.key());
                    faces.add(new AnswerFace(
                            answer.key(),
                            words.label(answer),
                            shown.number(),
                            shown.unit(),
                            shown.beside(),
                            answer.lead(),
                            met,
                            was.isPresent(),
                            met.flatMap(RangeWords.Met::shares).or(() -> was.flatMap(AnswerFace::shares)),
                            flow.hangsOn(slip.slip().id(), answer.key())));
                });
            }
        }
        faces.sort(Comparator.comparing(face -> !face.lead()));
        return List.copyOf(faces);
    }

    private Optional<AnswerFace> movedBefore(String slip, String answer) {
        return Optional.ofNullable(before)
                .flatMap(shown -> shown.slip(slip))
                .flatMap(shown -> shown.answer(answer))
                .filter(shown -> shown.pending() || shown.met().isPresent());
    }

    private static List<Answer> declared(WorkedSlip slip) {
        return slip.installed().orElseThrow().calculator().declaration().answers();
    }

    private List<String> working(WorkedSlip slip) {
        List<String> lines = new ArrayList<>();
        if (!slip.steps().isEmpty()) {
            for (Working.Line line : new SlipWorking(slip, wording).block().lines()) {
                for (String part : List.of(line.what(), line.formula(), line.numbers(), line.result())) {
                    if (!part.isEmpty()) {
                        lines.add(part);
                    }
                }
            }
        }
        return List.copyOf(lines);
    }

    private List<TableFace> tables(WorkedSlip slip, SlipWording words) {
        List<TableFace> tables = new ArrayList<>();
        slip.answers()
                .ifPresent(values -> declared(slip)
                        .forEach(answer -> values.get(answer.key())
                                .flatMap(value -> AnswerTable.of(answer, value, words))
                                .ifPresent(found -> tables.add(table(answer, found, words)))));
        return List.copyOf(tables);
    }

    private static TableFace table(Answer answer, AnswerTable found, SlipWording words) {
        List<String> head = new ArrayList<>();
        if (found.named()) {
            head.add("");
        }
        found.columns().forEach(column -> head.add(words.heading(column)));
        return new TableFace(answer.key(), words.label(answer), List.copyOf(head), found.rows());
    }

    private static List<String> sources(WorkedSlip slip, SlipWording words) {
        return SlipSources.of(slip).stream()
                .map(source -> words.sourceKind(source) + ": " + words.sourceText(source))
                .toList();
    }

    private static List<DrawingFace> drawings(WorkedSlip slip, SlipWording words) {
        List<DrawingFace> drawings = new ArrayList<>();
        slip.answers()
                .ifPresent(values -> declared(slip)
                        .forEach(answer -> values.get(answer.key()).ifPresent(value -> {
                            String id = slip.slip().id();
                            if (value instanceof Item answered) {
                                ItemPicture picture = ItemPicture.of(words.said(answered));
                                drawings.add(new DrawingFace(
                                        id,
                                        answer.key(),
                                        words.label(answer),
                                        words.drawn(picture.drawing()),
                                        picture.parts()));
                            } else if (value instanceof Drawing drawing) {
                                drawings.add(new DrawingFace(
                                        id, answer.key(), words.label(answer), words.drawn(drawing), List.of()));
                            }
                        })));
        return List.copyOf(drawings);
    }

    /** Whether a slip is there to make an item, also while it cannot. */
    static boolean makes(WorkedSlip slip) {
        return slip.installed().isPresent() && declared(slip).stream().anyMatch(answer -> answer.kind() == Kind.ITEM);
    }
}
