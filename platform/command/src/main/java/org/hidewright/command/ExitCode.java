package org.hidewright.command;

/** What a command tells the shell. */
final class ExitCode {
    static final int DONE = 0;
    /** Written or answered, but something could not be worked out: a refusal stands in what was written. */
    static final int REFUSED = 1;
    /** The command was not understood, or a file could not be read or written. */
    static final int NOT_UNDERSTOOD = 2;

    private ExitCode() {}
}
