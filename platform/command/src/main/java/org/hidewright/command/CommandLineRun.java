package org.hidewright.command;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.Nearest;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** One run of the command line: finds the command, reads its arguments, does it. */
final class CommandLineRun {
    private static final int USAGE_WIDTH = 100;
    private static final Map<String, Subcommand> COMMANDS = commands();

    private final Session session;

    CommandLineRun(Catalogue catalogue, PaperServices paper, PrintStream out, PrintStream err) {
        this.session = new Session(catalogue, paper, null, out, err);
    }

    private static Map<String, Subcommand> commands() {
        Map<String, Subcommand> commands = new LinkedHashMap<>();
        for (Subcommand command : List.of(new MakeCommand(), new WorkCommand(), new ExplainCommand())) {
            commands.put(command.name(), command);
        }
        return commands;
    }

    int run(String[] arguments) {
        Session inLanguage = session.in(new Wording(SharedOptions.language(arguments), UnitSystem.METRIC));
        if (arguments.length == 0
                || arguments[0].equals("--help")
                || arguments[0].equals("-h")
                || arguments[0].equals("help")) {
            new Overview(inLanguage).print(COMMANDS.keySet());
            return ExitCode.DONE;
        }
        Subcommand command = COMMANDS.get(arguments[0]);
        if (command == null) {
            return unknown(arguments[0], inLanguage);
        }
        String[] rest = List.of(arguments).subList(1, arguments.length).toArray(String[]::new);
        int code = run(command, rest, inLanguage);
        inLanguage.catalogue().problems().forEach(problem -> inLanguage.tell(inLanguage.err(), problem));
        return code;
    }

    private static int unknown(String name, Session session) {
        session.err()
                .println(Nearest.to(name, COMMANDS.keySet())
                        .map(near -> session.texts().text("trouble.command-nearest", name, near))
                        .orElseGet(() ->
                                session.texts().text("trouble.command", name, String.join(", ", COMMANDS.keySet()))));
        return ExitCode.NOT_UNDERSTOOD;
    }

    private static int run(Subcommand command, String[] rest, Session session) {
        CommandSpec spec = CommandSpec.create().name("hidewright " + command.name());
        spec.usageMessage()
                .description(session.texts().text(command.name() + ".about"))
                .footer("", session.texts().text(command.name() + ".example"))
                .width(USAGE_WIDTH);
        command.describe(spec, session.texts());
        SharedOptions.describe(spec, session.texts());
        CommandLine line = new CommandLine(spec);
        try {
            ParseResult arguments = line.parseArgs(rest);
            if (arguments.isUsageHelpRequested()) {
                line.usage(session.out());
                return ExitCode.DONE;
            }
            return command.run(arguments, session);
        } catch (ParameterException e) {
            session.err().println(e.getMessage());
            session.err().println(session.texts().text("trouble.see-help", command.name()));
            return ExitCode.NOT_UNDERSTOOD;
        }
    }
}
