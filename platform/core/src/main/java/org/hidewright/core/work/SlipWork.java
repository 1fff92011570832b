package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.DeclaredSearch;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.item.ItemChecks;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.search.AskedPrint;
import org.hidewright.core.search.Searched;
import org.hidewright.core.wording.AllCalled;
import org.hidewright.core.wording.Called;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.core.work.WorkedSlip.Step;

/** Works one slip out: resolves its entries, calls its calculator, takes down the working. */
final class SlipWork {
    private final ReadSlip read;
    private final Installed installed;

    SlipWork(ReadSlip read) {
        this.read = read;
        this.installed = read.installed().orElseThrow();
    }

    /**
     * Works the slip.
     *
     * @param links what is known of the slips before it
     * @param was what the slip came to before with the same calculator; its answers are taken over when the values are the
     *     same. May be null
     */
    WorkedSlip work(Links links, WorkedSlip was) {
        return work(links, was, RangePick.NOMINAL);
    }

    /** Works the slip with other values in the ranges typed on it. */
    WorkedSlip trial(Links links, RangePick pick) {
        return work(links, null, pick);
    }

    private WorkedSlip work(Links links, WorkedSlip was, RangePick pick) {
        Resolver resolver = new Resolver(read.slip().id(), links, pick);
        DeclaredCalculator calculator = installed.calculator();
        Optional<Values> values = resolver.resolve(calculator.declaration().questions(), read.entries());
        List<Remark> remarks = new ArrayList<>(read.remarks());
        remarks.addAll(resolver.remarks());
        if (values.isEmpty()) {
            boolean waits = remarks.stream().anyMatch(SlipWork::waits)
                    && remarks.stream().filter(Remark::stops).allMatch(SlipWork::waits);
            return new WorkedSlip(
                            read,
                            waits ? State.WAITING : State.REFUSED,
                            null,
                            null,
                            remarks,
                            List.of(),
                            List.of(),
                            Map.of())
                    .orSame(was);
        }
        calculator.search().flatMap(search -> searched(search, values.get())).ifPresent(remarks::add);
        examples(calculator).ifPresent(remarks::add);
        if (was != null && was.questions().equals(values) && was.state() != State.BROKEN) {
            was.told().forEach(remark -> remarks.add(located(remark)));
            return was.takenOver(read, remarks);
        }
        return call(calculator, values.get(), remarks);
    }

    /** Whether what is searched for is not there, or was searched for with other answers. */
    private Optional<Remark> searched(DeclaredSearch search, Values values) {
        String key = search.sought().key();
        Called called = new Called(installed.calculator().texts(), search.sought());
        Slip slip = read.slip();
        Optional<Notice> notice = values.get(key).isEmpty()
                ? Optional.of(ProjectNotices.NOT_SEARCHED.with(called, slip.id()))
                : Searched.on(slip)
                        .filter(how -> !how.asked().equals(AskedPrint.of(values, key)))
                        .map(how -> ProjectNotices.SEARCHED_OTHERWISE.with(called, slip.id()));
        return notice.map(told ->
                located(Remark.of(told, CoreTexts.TEXTS).onSlip(slip.id()).atQuestion(key)));
    }

    /** Which answers nobody has measured: the slip was begun with the examples of its calculator. */
    private Optional<Remark> examples(DeclaredCalculator calculator) {
        List<Question> taken = calculator.declaration().questions().stream()
                .filter(question -> read.slip().isExample(question.key()))
                .toList();
        return taken.isEmpty()
                ? Optional.empty()
                : Optional.of(located(Remark.of(
                                ProjectNotices.EXAMPLES_TAKEN.with(new AllCalled(calculator.texts(), taken)),
                                CoreTexts.TEXTS)
                        .onSlip(read.slip().id())
                        .atQuestion(taken.size() == 1 ? taken.get(0).key() : "")));
    }

    private static boolean waits(Remark remark) {
        return remark.key().equals("notice." + ProjectNotices.WAITS.key());
    }

    private WorkedSlip call(DeclaredCalculator calculator, Values values, List<Remark> remarks) {
        Notes notes = new Notes();
        try {
            Outcome<Values> outcome = calculator.work(values, notes);
            outcome.answers()
                    .ifPresent(answers ->
                            Completeness.check(calculator.declaration().answers(), answers));
            List<Remark> told = new ArrayList<>();
            notes.told(outcome.notices())
                    .forEach(notice -> told.add(Remark.of(notice, calculator.texts())
                            .onSlip(read.slip().id())));
            notes.tooMuch(installed)
                    .ifPresent(notice -> told.add(Remark.of(notice, CoreTexts.TEXTS)
                            .onSlip(read.slip().id())));
            outcome.answers().stream()
                    .flatMap(answers -> answers.entries().values().stream())
                    .filter(Item.class::isInstance)
                    .flatMap(item -> ItemChecks.told((Item) item, new ItemWords(calculator.texts())).stream())
                    .forEach(notice -> told.add(Remark.of(notice, CoreTexts.TEXTS)
                            .onSlip(read.slip().id())));
            List<Step> steps = notes.steps();
            told.forEach(remark -> remarks.add(located(remark)));
            return new WorkedSlip(
                    read,
                    outcome.refused() ? State.REFUSED : State.WORKED,
                    values,
                    outcome.answers().orElse(null),
                    remarks,
                    told,
                    steps,
                    notes.sources());
        } catch (BundleFault e) {
            return broken(e.words(), e.leftAlone(), values, remarks);
        } catch (Exception | LinkageError | StackOverflowError | AssertionError e) {
            return broken(e.toString(), false, values, remarks); // where no guard stands between
        }
    }

    private WorkedSlip broken(Object words, boolean leftAlone, Values values, List<Remark> remarks) {
        remarks.add(Remark.of(ProjectNotices.failed(installed, leftAlone, words), CoreTexts.TEXTS)
                .onSlip(read.slip().id())
                .atPlace(read.slip().node().place()));
        return new WorkedSlip(read, State.BROKEN, values, null, remarks, List.of(), List.of(), Map.of());
    }

    /** The remark with the place of its question in the file, as far as it can be told from the question's key. */
    private Remark located(Remark remark) {
        String key = remark.question().split("[.\\[]", 2)[0];
        Entry.Answered answered = read.entries().get(key);
        return answered == null || answered.place() == null
                ? remark.atPlace(read.slip().node().place())
                : remark.atPlace(answered.place());
    }
}
