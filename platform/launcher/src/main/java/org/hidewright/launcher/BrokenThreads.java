package org.hidewright.launcher;

import java.io.PrintStream;
import java.util.HashSet;
import java.util.Set;

/** Tells, once for each bundle, that a thread of its own broke down; what the JDK would print of it is for its author alone. */
final class BrokenThreads implements Thread.UncaughtExceptionHandler {

    private final PrintStream told;
    private final Set<String> known = new HashSet<>();

    BrokenThreads(PrintStream told) {
        this.told = told;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable thrown) {
        String bundle = "";
        String said;
        try {
            StackTraceElement[] stack = thrown.getStackTrace();
            for (int i = stack.length - 1; i >= 0 && bundle.isEmpty(); i--) {
                bundle = EndedFromInside.bundleWith(stack[i].getClassName());
            }
            said = Explanation.innermost(thrown);
        } catch (Throwable mute) { // what it throws may be of its own making
            said = thrown.getClass().getName();
        }
        tell(bundle, said);
    }

    private synchronized void tell(String bundle, String said) {
        if (known.add(bundle)) {
            told.println(
                    bundle.isEmpty()
                            ? Messages.text("thread.broke-somewhere", said)
                            : Messages.text("thread.broke", bundle, said));
        }
    }
}
