package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Remark;

/** A slip and what it came to. Immutable. */
public final class WorkedSlip {
    /** How a slip stands. */
    public enum State {
        WORKED,
        /** What was typed cannot give an answer; a remark says why. */
        REFUSED,
        /** It waits for an answer of another slip. */
        WAITING,
        /** Its calculator is not installed, or older than the slip. */
        DORMANT,
        /** Its calculator failed: a fault of the bundle, not of the numbers. */
        BROKEN
    }

    /**
     * One step of the working.
     *
     * @param formula the formula used
     * @param result what its left side came to
     * @param symbolsAndValues each symbol followed by what was put in
     */
    public record Step(Formula formula, Object result, List<Object> symbolsAndValues) {}

    private final ReadSlip read;
    private final State state;
    private final Values questions;
    private final Values answers;
    private final List<Remark> remarks;
    private final List<Remark> told;
    private final List<Step> steps;
    private final Map<String, Source> otherSources;

    WorkedSlip(
            ReadSlip read,
            State state,
            Values questions,
            Values answers,
            List<Remark> remarks,
            List<Remark> told,
            List<Step> steps,
            Map<String, Source> otherSources) {
        this.read = read;
        this.state = state;
        this.questions = questions;
        this.answers = answers;
        this.remarks = List.copyOf(remarks);
        this.told = List.copyOf(told);
        this.steps = List.copyOf(steps);
        this.otherSources = Map.copyOf(otherSources);
    }

    static WorkedSlip without(ReadSlip read, State state, Remark... more) {
        List<Remark> remarks = new ArrayList<>(read.remarks());
        remarks.addAll(List.of(more));
        return new WorkedSlip(read, state, null, null, remarks, List.of(), List.of(), Map.of());
    }

    /** What the calculator came to before, for a slip that gives it the same values again. */
    WorkedSlip takenOver(ReadSlip again, List<Remark> remarksAgain) {
        return new WorkedSlip(again, state, questions, answers, remarksAgain, told, steps, otherSources).orSame(this);
    }

    /** The slip with these of its answers, and nothing else that came out. */
    WorkedSlip answering(Values some) {
        return new WorkedSlip(read, state, null, some, List.of(), List.of(), List.of(), Map.of());
    }

    /** The slip as it was when nothing about it has changed, so that who looks on sees it by its identity. */
    WorkedSlip orSame(WorkedSlip was) {
        return was != null
                        && was.read == read
                        && was.state == state
                        && was.answers == answers
                        && was.remarks.equals(remarks)
                ? was
                : this;
    }

    /** What the calculator itself had to say, not yet placed in the file. */
    List<Remark> told() {
        return told;
    }

    ReadSlip read() {
        return read;
    }

    public Slip slip() {
        return read.slip();
    }

    /** The calculator; empty when dormant. */
    public Optional<Installed> installed() {
        return read.installed();
    }

    public State state() {
        return state;
    }

    /** Key of the text for how it stands; a dormant slip says why it is. */
    public String stateKey() {
        if (state != State.DORMANT) {
            return "state." + state.name().toLowerCase(Locale.ROOT);
        }
        if (slip().calculator().isEmpty()) {
            return "state.dormant-unnamed";
        }
        return Stream.of(
                        ProjectNotices.DORMANT_NEWER,
                        ProjectNotices.DORMANT_UNUSABLE,
                        ProjectNotices.DORMANT_OFF,
                        ProjectNotices.DORMANT_FAILED,
                        ProjectNotices.DORMANT_WAITING)
                .map(NoticeKind::key)
                .filter(key -> remarks.stream().anyMatch(remark -> remark.key().equals("notice." + key)))
                .findFirst()
                .map(key -> "state." + key)
                .orElse("state.dormant");
    }

    /** What the calculator was given; empty when it could not be called. */
    public Optional<Values> questions() {
        return Optional.ofNullable(questions);
    }

    /** What it answered; empty unless worked. */
    public Optional<Values> answers() {
        return Optional.ofNullable(answers);
    }

    /**
     * Refusals, checks, cautions and notes, of the host and of the calculator. Their places are counted from where the slip
     * begins; {@link WorkedProject#remarks(WorkedSlip)} has them where they are in the file.
     */
    public List<Remark> remarks() {
        return remarks;
    }

    public List<Remark> remarks(Severity severity) {
        return remarks.stream().filter(remark -> remark.severity() == severity).toList();
    }

    public List<Step> steps() {
        return steps;
    }

    /** The source an answer stands on: what the working named, else what is declared. */
    public Optional<Source> source(Answer answer) {
        Source other = otherSources.get(answer.key());
        return other != null
                ? Optional.of(other)
                : installed().flatMap(known -> known.calculator().declaration().sourceOf(answer));
    }

    /** Sources that the working named besides those declared, in the order of their keys. */
    public List<Source> otherSources() {
        return otherSources.values().stream()
                .distinct()
                .sorted(Comparator.comparing(Source::key))
                .toList();
    }

    /** How each question stands, in the order asked. */
    public List<AskedLine> asked() {
        return read.installed()
                .filter(known -> !read.broken())
                .map(known -> AskedLine.of(known.calculator().declaration().questions(), read.entries(), questions))
                .orElse(List.of());
    }
}
