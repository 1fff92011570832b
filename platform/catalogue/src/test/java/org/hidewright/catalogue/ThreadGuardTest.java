package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.catalogue.BundleFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.mockito.ArgumentCaptor;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleEvent;
import org.osgi.framework.BundleListener;

@Timeout(60)
class ThreadGuardTest {
    private static final String KIT = "net.example.kit";
    private static final String OTHER = "net.example.other";

    private final ThreadGuard guard = new ThreadGuard(1);

    private <T> T call(String bundle, Supplier<T> code) {
        return guard.call(bundle, code);
    }

    private BundleFault fault(String bundle, Supplier<Object> code) {
        return assertThrows(BundleFault.class, () -> call(bundle, code));
    }

    private static Object forEver() {
        while (true) {
            Thread.onSpinWait(); // deaf to interrupts
        }
    }

    private static final class Evil extends RuntimeException {
        private static final long serialVersionUID = 1L;

        @Override
        public String toString() {
            throw new IllegalStateException("nor this");
        }
    }

    private static final class Silent extends RuntimeException {
        private static final long serialVersionUID = 1L;

        @Override
        public String toString() {
            forEver();
            return "";
        }
    }

    private static int endless(int depth) {
        return depth < 0 ? depth : endless(depth + 1) + 1;
    }

    @Test
    void whatIsCalledGivesItsValueOnAnotherThreadThatKeepsNoProgramAlive() {
        assertEquals("done", call(KIT, () -> "done"));
        assertNull(call(KIT, () -> null));
        Thread worker = call(KIT, Thread::currentThread);
        assertNotSame(Thread.currentThread(), worker);
        assertTrue(worker.isDaemon());
        assertSame(worker, call(OTHER, Thread::currentThread), "a thread that is free is used again");
    }

    @Test
    void whenABundleGoesTheThreadsThatCalledItGoToo() throws Exception {
        BundleContext context = mock(BundleContext.class);
        ArgumentCaptor<BundleListener> listener = ArgumentCaptor.forClass(BundleListener.class);
        ThreadGuard hears = new ThreadGuard(context);
        verify(context).addBundleListener(listener.capture());
        Thread rested = hears.call(KIT, Thread::currentThread);
        listener.getValue().bundleChanged(new BundleEvent(BundleEvent.STARTED, mock(Bundle.class)));
        assertSame(rested, hears.call(KIT, Thread::currentThread), "one more is no reason");
        Thread atWork = hears.call(KIT, () -> {
            listener.getValue().bundleChanged(new BundleEvent(BundleEvent.UNINSTALLED, mock(Bundle.class)));
            return Thread.currentThread();
        });
        atWork.join(30_000);
        assertFalse(atWork.isAlive(), "it has come back, and what is left on it is gone");
        Thread fresh = hears.call(KIT, Thread::currentThread);
        assertNotSame(atWork, fresh);
        hears.renew();
        fresh.join(30_000);
        assertFalse(fresh.isAlive());
    }

    @Test
    void whateverIsThrownIsAFaultInOneLineAndTheBundleIsCalledAgain() {
        assertEquals(
                "java.lang.IllegalStateException: out of thread",
                fault(KIT, () -> {
                            throw new IllegalStateException("out\n of  thread");
                        })
                        .words());
        BundleFault error = fault(KIT, () -> {
            throw new NoClassDefFoundError("org/example/Gone");
        });
        assertEquals("java.lang.NoClassDefFoundError: org/example/Gone", error.words());
        assertFalse(error.leftAlone());
        assertEquals(Phrase.of("fault-stack"), fault(KIT, () -> endless(1)).words());
        assertEquals("again", call(KIT, () -> "again"));
    }

    @Test
    void anExceptionThatCannotSayWhatItIsIsNamedByItsClass() {
        assertEquals(
                Evil.class.getName(),
                fault(KIT, () -> {
                            throw new Evil();
                        })
                        .words());
    }

    @Test
    void anExceptionThatSaysTooMuchIsCutOff() {
        String said = String.valueOf(fault(KIT, () -> {
                    throw new IllegalStateException("x".repeat(1 << 20));
                })
                .words());
        assertEquals(301, said.length());
        assertTrue(said.endsWith("x…"), said);
    }

    @Test
    void oneThatNeverComesBackIsLeftToItselfAndItsBundleIsNotCalledAgain() {
        long before = System.nanoTime();
        BundleFault late = fault(KIT, ThreadGuardTest::forEver);
        long took = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - before);
        assertEquals(Phrase.of("fault-late", 1), late.words());
        assertTrue(late.leftAlone());
        assertTrue(took >= 1000, took + " ms");
        List<String> called = new ArrayList<>();
        BundleFault again = fault(KIT, () -> called.add("again"));
        assertEquals(Phrase.of("fault-earlier", Phrase.of("fault-late", 1)), again.words());
        assertTrue(again.leftAlone());
        assertEquals(List.of(), called);
        assertEquals("well", call(OTHER, () -> "well"), "another bundle works on");
    }

    @Test
    void workThatMayTakeLongIsWaitedForUntilItMayNoLonger() {
        AtomicInteger asked = new AtomicInteger();
        List<String> done = new ArrayList<>();
        guard.run(KIT, () -> done.add(pausedFor(1500)), () -> asked.incrementAndGet() > 0);
        assertEquals(List.of("rested"), done);
        assertTrue(asked.get() > 0, "it was asked");
        BundleFault late = assertThrows(
                BundleFault.class, () -> guard.run(KIT, ThreadGuardTest::forEver, () -> asked.getAndIncrement() < 3));
        assertTrue(late.leftAlone());
        assertEquals(4, asked.get());
    }

    private static String pausedFor(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            return "woken";
        }
        return "rested";
    }

    @Test
    void oneThatOnlyWaitsIsWokenSoThatItsThreadEnds() throws InterruptedException {
        AtomicReference<Thread> worker = new AtomicReference<>();
        CountDownLatch woken = new CountDownLatch(1);
        fault(KIT, () -> {
            worker.set(Thread.currentThread());
            try {
                new CountDownLatch(1).await();
            } catch (InterruptedException e) {
                woken.countDown();
            }
            return null;
        });
        assertTrue(woken.await(10, TimeUnit.SECONDS));
        worker.get().join(10_000);
        assertFalse(worker.get().isAlive());
        assertNotSame(worker.get(), call(OTHER, Thread::currentThread));
    }

    @Test
    void anExceptionThatNeverSaysWhatItIsCountsAsOneThatNeverComesBack() {
        assertEquals(
                Phrase.of("fault-late", 1),
                fault(KIT, () -> {
                            throw new Silent();
                        })
                        .words());
    }

    @Test
    void oneThatAsksForTooMuchMemoryIsNotCalledAgain() {
        BundleFault fault = fault(KIT, () -> {
            throw new OutOfMemoryError("Java heap space");
        });
        assertEquals(Phrase.of("fault-memory"), fault.words());
        assertTrue(fault.leftAlone());
        assertEquals(
                Phrase.of("fault-earlier", Phrase.of("fault-memory")),
                fault(KIT, () -> "again").words());
    }

    @Test
    void aCallerThatIsInterruptedStillHasItsAnswerAndIsStillInterrupted() {
        Thread.currentThread().interrupt();
        try {
            assertEquals("slow", call(KIT, () -> {
                long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(50);
                while (System.nanoTime() < until) {
                    Thread.onSpinWait();
                }
                return "slow";
            }));
        } finally {
            assertTrue(Thread.interrupted());
        }
    }

    @Test
    void anInterruptThatABundleLeavesBehindIsNotTheNextCalls() {
        call(KIT, () -> {
            Thread.currentThread().interrupt();
            return null;
        });
        assertEquals(false, call(OTHER, () -> Thread.currentThread().isInterrupted()));
    }

    @Test
    void severalCallsAtOnceHaveAThreadEach() throws InterruptedException {
        CountDownLatch together = new CountDownLatch(4);
        List<Thread> callers = new ArrayList<>();
        AtomicReference<Object> wrong = new AtomicReference<>();
        for (int i = 0; i < 4; i++) {
            int number = i;
            Thread caller = new Thread(() -> {
                for (int turn = 0; turn < 1000; turn++) {
                    int sent = number * 1000 + turn;
                    int got = call(KIT, () -> sent);
                    if (got != sent) {
                        wrong.set(sent + " came back as " + got);
                    }
                }
                call(KIT, () -> {
                    together.countDown();
                    try {
                        return together.await(900, TimeUnit.MILLISECONDS);
                    } catch (InterruptedException e) {
                        return false;
                    }
                });
            });
            callers.add(caller);
            caller.start();
        }
        for (Thread caller : callers) {
            caller.join();
        }
        assertNull(wrong.get());
        assertEquals(0, together.getCount());
    }
}
