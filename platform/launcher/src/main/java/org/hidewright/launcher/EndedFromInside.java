package org.hidewright.launcher;

import java.io.PrintStream;
import java.util.Map;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/**
 * Tells that a bundle has ended the program. A JDK of today has no means against it; but without a word, and with the
 * exit code of its author’s choice, a command that was cut off could pass for one that is done.
 */
final class EndedFromInside extends Thread {

    private static volatile boolean leaving;

    private static volatile BundleContext bundles;

    private final PrintStream told;

    private EndedFromInside(PrintStream told) {
        this.told = told;
    }

    static void watch(PrintStream told) {
        Runtime.getRuntime().addShutdownHook(new EndedFromInside(told));
    }

    /** Gives the bundles to look for the culprit among. */
    static void among(BundleContext system) {
        bundles = system;
    }

    /** Says that the launcher itself is about to end the program. */
    static void leaving() {
        leaving = true;
    }

    @Override
    public void run() {
        if (leaving) {
            return;
        }
        for (Map.Entry<Thread, StackTraceElement[]> thread :
                Thread.getAllStackTraces().entrySet()) {
            String caller = callerOfExit(thread.getValue());
            if (caller != null) { // a signal ends the program by another way
                told.println(Messages.text("program.ended", bundleOf(caller)));
                Runtime.getRuntime().halt(Launcher.BROKEN);
            }
        }
    }

    /** The class that asked for the end; null where this is not the thread that did. */
    static String callerOfExit(StackTraceElement[] stack) {
        boolean exits = false;
        for (StackTraceElement frame : stack) {
            String type = frame.getClassName();
            if (exits && !type.equals("java.lang.System")) {
                return type;
            }
            exits |= type.equals("java.lang.Runtime") && frame.getMethodName().equals("exit");
        }
        return null;
    }

    private static String bundleOf(String type) {
        String bundle = bundleWith(type);
        return bundle.isEmpty() ? type : bundle;
    }

    /** The bundle that a class lies in; empty where it lies in none. */
    static String bundleWith(String type) {
        if (bundles == null) {
            return "";
        }
        String entry = type.replace('.', '/') + ".class";
        try {
            for (Bundle bundle : bundles.getBundles()) {
                if (bundle.getBundleId() != 0 && bundle.getEntry(entry) != null) {
                    return bundle.getSymbolicName();
                }
            }
        } catch (IllegalStateException ended) { // the framework has stopped and knows its bundles no more
            return "";
        }
        return "";
    }
}
