package org.hidewright.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.hidewright.api.declaration.RecordCalculator;

/**
 * Whether the same question has the same answer: asked again, later, in another order, after a new start, in another language
 * and time zone, on other threads.
 */
final class SameAnswers {
    private static final int ASKED = 25;
    private static final int AFTER_A_START = 3;

    /** In one letters have other capitals, in one digits are others, in one the comma is the decimal mark. */
    private static final List<String> LANGUAGES = List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE");

    /** It is never the same day in both. */
    private static final List<String> ZONES = List.of("Pacific/Kiritimati", "Pacific/Pago_Pago");

    private static final String NOTHING_KEPT =
            "Keep nothing from one calculation to the next, and take nothing from chance or the clock";

    private final Trials trials;
    private final Class<?> type;
    private final List<Told> first;
    private final List<String> wrong = new ArrayList<>();

    private SameAnswers(Trials trials, Class<?> type) {
        this.trials = trials;
        this.type = type;
        this.first = trials.some(ASKED).stream().filter(Told::ended).toList();
    }

    /** What is answered otherwise although nothing that was asked has changed. */
    static List<String> again(Trials trials, Class<?> type) {
        SameAnswers same = new SameAnswers(trials, type);
        same.later();
        same.otherOrder();
        same.afterAStart();
        return same.wrong;
    }

    /** What hangs on the computer it is worked on. */
    static List<String> elsewhere(Trials trials, Class<?> type) {
        SameAnswers same = new SameAnswers(trials, type);
        LANGUAGES.forEach(same::language);
        ZONES.forEach(same::zone);
        same.otherThread();
        same.twoThreads();
        return same.wrong;
    }

    private void later() {
        long millis = System.currentTimeMillis();
        long nanos = System.nanoTime();
        while (System.currentTimeMillis() - millis < 2 || System.nanoTime() == nanos) {
            Thread.onSpinWait(); // until every clock shows something else
        }
        first.forEach(told -> same(
                told,
                trials.bench().ask(trials.calculator(), told.asked()),
                "asked again a moment later",
                NOTHING_KEPT));
    }

    private void otherOrder() {
        RecordCalculator other = RecordCalculator.of(BundleCalculators.create(type));
        List<Told> backwards = new ArrayList<>(first);
        Collections.reverse(backwards);
        backwards.forEach(
                told -> same(told, trials.bench().ask(other, told.asked()), "asked in another order", NOTHING_KEPT));
    }

    private void afterAStart() {
        first.stream()
                .limit(AFTER_A_START)
                .forEach(told -> same(
                        told,
                        trials.bench().ask(FreshCopy.of(type), told.asked()),
                        "asked first of all after a start",
                        "Keep nothing in static fields but constants"));
    }

    private void language(String tag) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(tag));
        try {
            all(
                    FreshCopy.of(type),
                    "the language of the computer is " + tag,
                    "Name the language, Locale.ROOT for keys and numbers; what is read by the maker is a phrase");
        } finally {
            Locale.setDefault(before);
        }
    }

    private void zone(String id) {
        TimeZone before = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone(id));
        try {
            all(
                    FreshCopy.of(type),
                    "the computer is in the time zone " + id,
                    "Ask for the day, a LocalDate, and take none from the computer");
        } finally {
            TimeZone.setDefault(before);
        }
    }

    private void all(RecordCalculator calculator, String when, String mend) {
        first.forEach(told -> same(told, trials.bench().ask(calculator, told.asked()), when, mend));
    }

    private void otherThread() {
        together(1, "asked on another thread", "Keep nothing on a thread");
    }

    private void twoThreads() {
        together(
                2,
                "asked on two threads at once",
                "One instance serves every slip at the same time: keep nothing in its fields");
    }

    /** What was told, and what is told now. */
    private record Again(Told first, Told now) {}

    /** On so many threads at once, every other one beginning from the end. */
    private void together(int threads, String when, String mend) {
        ExecutorService hands = Executors.newFixedThreadPool(threads, SameAnswers::hand);
        List<Told> order = new ArrayList<>(first);
        List<Future<List<Again>>> asked = new ArrayList<>();
        CountDownLatch ready = new CountDownLatch(threads);
        for (int i = 0; i < threads; i++) {
            List<Told> mine = List.copyOf(order);
            asked.add(hands.submit(() -> askAll(mine, ready)));
            Collections.reverse(order);
        }
        for (Future<List<Again>> thread : asked) {
            try {
                thread.get(Bench.WAITS_S * (long) ASKED, TimeUnit.SECONDS)
                        .forEach(again -> same(again.first(), again.now(), when, mend));
            } catch (ExecutionException | TimeoutException e) {
                wrong.add(trials.id() + ": no answer came when it was " + when + ", " + e + ". " + mend + ".");
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
        hands.shutdownNow();
    }

    private static Thread hand(Runnable work) {
        Thread thread = new Thread(work, "another");
        thread.setDaemon(true);
        thread.setContextClassLoader(null);
        return thread;
    }

    private List<Again> askAll(List<Told> order, CountDownLatch ready) throws InterruptedException {
        ready.countDown();
        ready.await();
        return order.stream()
                .map(told -> new Again(told, Bench.now(trials.calculator(), told.asked())))
                .toList();
    }

    private void same(Told one, Told other, String when, String mend) {
        String sentence =
                trials.id() + ": the answer is another one when " + (when.startsWith("asked") ? "it is " : "") + when;
        if (wrong.stream().noneMatch(known -> known.startsWith(sentence))) {
            one.differs(other)
                    .ifPresent(difference -> wrong.add(sentence + ": " + difference + ", asked with "
                            + one.asked().entries() + ". " + mend + "."));
        }
    }
}
