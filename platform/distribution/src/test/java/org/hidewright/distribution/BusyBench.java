package org.hidewright.distribution;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.window.model.OpenProject;

/**
 * A maker with a project open as the window holds it, and another thread that works the same project over and over, its ranges
 * and its documents with it, whatever comes and goes meanwhile.
 */
final class BusyBench implements AutoCloseable {
    private static final Wording WORDING = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    private final Catalogue catalogue;
    private final ExecutorService window = Executors.newSingleThreadExecutor();
    private final ExecutorService work = Executors.newSingleThreadExecutor();
    private final Semaphore shown = new Semaphore(0);
    private final ProjectFile file;
    private final OpenProject open;
    private final Thread busy;
    private final Map<String, Integer> states = new TreeMap<>();
    private final List<Throwable> thrown = new ArrayList<>();
    private volatile boolean ended;

    BusyBench(Catalogue catalogue, Path project) throws Exception {
        this.catalogue = catalogue;
        file = ProjectFile.open(project);
        open = onWindow(() -> new OpenProject(
                project,
                file,
                new Wording(Locale.ENGLISH, UnitSystem.METRIC),
                () -> new Bench(catalogue),
                work,
                window,
                face -> shown.release()));
        busy = new Thread(this::workOn, "busy bench");
        busy.start();
    }

    private <T> T onWindow(Callable<T> deed) throws Exception {
        return window.submit(deed).get(1, TimeUnit.MINUTES);
    }

    /** Lets the open project be worked anew, as the window does when bundles have come or gone, and gives what came out. */
    WorkedProject anew() throws Exception {
        return after(open::workOutAnew);
    }

    WorkedProject typed(String slip, String question, String text) throws Exception {
        return after(() -> open.type(slip, AnswerPath.of(question), text));
    }

    WorkedProject undone() throws Exception {
        return after(open::undo);
    }

    String text() throws Exception {
        return onWindow(() -> open.project().text());
    }

    /** What a change comes to, once it is shown with its ranges. */
    private WorkedProject after(Runnable change) throws Exception {
        onWindow(() -> {
            change.run();
            return null;
        });
        work.submit(() -> {}).get(1, TimeUnit.MINUTES);
        return onWindow(() -> open.worked().orElseThrow());
    }

    /** How often the window was given something to show. */
    int shown() {
        return shown.availablePermits();
    }

    private void workOn() {
        try {
            while (!ended) {
                WorkedProject worked = new Bench(catalogue).work(file.project());
                worked.slips().keySet().forEach(worked::ranges);
                Map<String, ?> documents =
                        new Packet(worked, WORDING).documents(DAY, catalogue.contributors(), told -> count("told"));
                if (!documents.containsKey(Packet.JOB_CARD)) {
                    throw new AssertionError("no job card");
                }
                worked.slips().forEach((id, slip) -> count(id + " " + outcome(slip)));
                catalogue.ids();
                catalogue.problems();
            }
        } catch (Throwable e) {
            thrown.add(e);
        }
    }

    private static String outcome(WorkedSlip slip) {
        return slip.state().name().toLowerCase(Locale.ROOT)
                + slip.answers()
                        .flatMap(answers -> answers.get("length"))
                        .map(length -> " " + length)
                        .orElse("");
    }

    private void count(String what) {
        states.merge(what, 1, Integer::sum);
    }

    /**
     * Ends the thread that works on; the project stays open.
     *
     * @return how often each slip was how
     */
    Map<String, Integer> rest() throws InterruptedException {
        ended = true;
        busy.join(60_000);
        if (busy.isAlive() || !thrown.isEmpty()) {
            throw new AssertionError("the busy bench broke off: " + thrown, thrown.isEmpty() ? null : thrown.get(0));
        }
        return states;
    }

    @Override
    public void close() {
        ended = true;
        window.shutdown();
        work.shutdown();
    }
}
