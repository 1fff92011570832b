package org.hidewright.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One command: what it takes, and doing it. */
interface Subcommand {
    String name();

    /** Adds its arguments and options. */
    void describe(CommandSpec spec, CommandTexts texts);

    /** Does it and returns an exit code. */
    int run(ParseResult arguments, Session session);
}
