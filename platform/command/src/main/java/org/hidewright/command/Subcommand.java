package org.hidewright.command;

import org.hidewright.core.store.FileTrouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One command: what it takes, and doing it. */
interface Subcommand {
    String name();

    /** Adds its arguments and options. */
    void describe(CommandSpec spec, CommandTexts texts);

    /**
     * Does it and returns an exit code.
     *
     * @throws BadArgument if an argument cannot be used
     * @throws FileTrouble if a file cannot be read or written; both are told by whoever runs it
     */
    int run(ParseResult arguments, Session session) throws BadArgument, FileTrouble;
}
