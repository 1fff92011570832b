package org.hidewright.launcher;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * What bundles print to the streams of the JVM. An answer must hold nothing but the answer, or a program that reads it
 * stumbles; so all of it goes to where trouble is told, under a sentence of its own, and only so much of it. The commands
 * write to the streams of the process themselves.
 */
final class PrintedByBundles extends OutputStream {

    private static final int MOST = 4000;

    private final PrintStream to;
    private int printed;
    private int last = '\n';

    PrintedByBundles(PrintStream to) {
        this.to = to;
    }

    /** From now on what is printed to {@code System.out} and {@code System.err} comes here. */
    static PrintedByBundles divert(PrintStream to) {
        PrintedByBundles printed = new PrintedByBundles(to);
        PrintStream stream = new PrintStream(printed, false, StandardCharsets.UTF_8);
        System.setOut(stream);
        System.setErr(stream);
        return printed;
    }

    @Override
    public void write(int one) {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) {
        if (printed == 0 && length > 0) {
            to.println(Messages.text("printed.first"));
        }
        int fits = Math.min(length, MOST - printed);
        if (fits > 0) {
            to.write(bytes, from, fits);
            last = bytes[from + fits - 1];
        }
        if (fits < length && printed <= MOST) {
            endLine();
            to.println(Messages.text("printed.more", MOST));
            printed = MOST + 1; // told once
        } else if (fits >= 0) {
            printed += fits;
        }
    }

    /** Ends a line that was left open, so that nothing else is printed behind it. */
    synchronized void end() {
        endLine();
        to.flush();
    }

    private void endLine() {
        if (last != '\n') {
            to.println();
            last = '\n';
        }
    }
}
