package org.hidewright.launcher;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;

/**
 * The start of one bundle on a thread of its own, so that one that never comes back costs its limit of time and nothing
 * else: the thread is left to itself and does not keep the program alive. A thread cannot be ended by force.
 */
final class Start extends Thread {

    private static final int SECONDS = Integer.getInteger("hidewright.start-limit", 10);
    private static final long MS = 1000L;

    private final Bundle bundle;
    private final Explanation explanation;

    /** Null while it has not come back, empty when all is well, else the sentence that says what failed. */
    private volatile String outcome;

    private Start(Bundle bundle, Explanation explanation) {
        super("start of " + bundle.getSymbolicName());
        this.bundle = bundle;
        this.explanation = explanation;
        setDaemon(true);
    }

    /** Starts a bundle that may be anybody’s, within the limit of time. */
    static Start within(Bundle bundle, Explanation explanation) {
        Start start = new Start(bundle, explanation);
        start.start();
        try {
            start.join(SECONDS * MS);
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
        if (!start.cameBack()) {
            start.interrupt(); // if it only waits for something, it can still end decently
            start.setPriority(MIN_PRIORITY);
        }
        return start;
    }

    /** Starts a bundle of the platform, on this thread. The sentence that says what failed, empty when all is well. */
    static String here(Bundle bundle, Explanation explanation) {
        try {
            bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY);
            return "";
        } catch (BundleException refused) {
            return explanation.notStarted(bundle, refused);
        }
    }

    @Override
    public void run() {
        String said;
        try {
            said = here(bundle, explanation); // reading what it says runs its code as well
        } catch (Throwable thrown) {
            said = explanation.broke(bundle, thrown.getClass().getName());
        }
        outcome = said;
    }

    boolean cameBack() {
        return outcome != null;
    }

    /** The sentence that says what failed; empty when all is well. */
    String failure() {
        String said = outcome;
        return said == null ? explanation.neverStarted(bundle, SECONDS) : said;
    }
}
