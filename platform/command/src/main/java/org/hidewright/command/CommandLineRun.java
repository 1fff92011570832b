package org.hidewright.command;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.window.ProjectWindow;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** One run of the command line: finds the command, reads its arguments, does it. */
final class CommandLineRun {
    private static final int USAGE_WIDTH = 100;
    private static final Map<String, Subcommand> COMMANDS = commands();

    private final Session session;
    private final String version;

    /**
     * A run.
     *
     * @param version the program's own, as {@code --version} says it
     */
    CommandLineRun(
            Catalogue catalogue,
            Supplier<AddOns> addOns,
            PaperServices paper,
            Supplier<Optional<ProjectWindow>> window,
            String version,
            BufferedReader in,
            PrintStream out,
            PrintStream err) {
        CommandTexts texts = new CommandTexts(new Wording(Locale.getDefault(), UnitSystem.METRIC));
        this.session = new Session(
                new CatalogueWithAddOns(catalogue, addOns),
                addOns,
                paper,
                window,
                texts,
                in,
                out,
                err,
                new StopsTold());
        this.version = version;
    }

    private static Map<String, Subcommand> commands() {
        Map<String, Subcommand> commands = new LinkedHashMap<>();
        for (Subcommand command : List.of(
                new WindowCommand(),
                new MakeCommand(),
                new SearchCommand(),
                new WorkCommand(),
                new ExplainCommand(),
                new FindCommand(),
                new OutlinesCommand(),
                new WorkshopCommand(),
                new KeepCommand(),
                new PutAwayCommand(),
                new NewCommand(),
                new AddOnsCommand())) {
            commands.put(command.name(), command);
        }
        return commands;
    }

    int run(String[] arguments) {
        Session inLanguage;
        try {
            inLanguage = session.in(new Wording(SharedOptions.language(arguments, session.texts()), UnitSystem.METRIC));
        } catch (BadArgument e) {
            session.err().println(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
        int code = inLanguage(arguments, inLanguage);
        inLanguage.catalogue().problems().stream()
                .filter(problem -> !inLanguage.stops().isHeard(problem))
                .forEach(problem -> inLanguage.tell(inLanguage.err(), problem));
        inLanguage.stops().atTheEnd();
        return code;
    }

    /** Options that every command takes may stand before the command too, or alone. */
    private int inLanguage(String[] arguments, Session session) {
        CommandSpec spec = CommandSpec.create().name("hidewright");
        SharedOptions.describe(spec, session.texts());
        spec.addOption(OptionSpec.builder("--version").versionHelp(true).build());
        spec.addPositional(PositionalParamSpec.builder()
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .build());
        ParseResult head;
        try {
            head = parser(spec).setStopAtPositional(true).parseArgs(arguments);
        } catch (ParameterException e) {
            session.err().println(new ArgumentTrouble(spec, session.texts()).words(e, List.of(arguments)));
            session.err().println(session.texts().text("trouble.see-overview"));
            return ExitCode.NOT_UNDERSTOOD;
        }
        List<String> named = head.matchedPositionalValue(0, List.of());
        if (head.isVersionHelpRequested()) {
            session.out().println("Hidewright " + version);
            return ExitCode.DONE;
        }
        if (named.isEmpty() && !head.isUsageHelpRequested() && WindowCommand.isPossible(session)) {
            return run(COMMANDS.get(WindowCommand.NAME), arguments, session);
        }
        if (named.size() > 1 && named.get(0).equals("help") && !named.get(1).startsWith("-")) {
            Subcommand explained = COMMANDS.get(named.get(1));
            return explained == null
                    ? unknown(named.get(1), session)
                    : run(explained, new String[] {"--help"}, session);
        }
        if (head.isUsageHelpRequested() || named.isEmpty() || named.get(0).equals("help")) {
            new Overview(session).print(COMMANDS.keySet());
            return ExitCode.DONE;
        }
        Subcommand command = COMMANDS.get(named.get(0));
        if (command == null) {
            return unknown(named.get(0), session);
        }
        List<String> rest = new ArrayList<>(List.of(arguments).subList(0, arguments.length - named.size()));
        rest.addAll(named.subList(1, named.size()));
        return run(command, rest.toArray(String[]::new), session);
    }

    /** An argument that begins with an at sign is ours to read, not the parser's. */
    private static CommandLine parser(CommandSpec spec) {
        return new CommandLine(spec).setExpandAtFiles(false);
    }

    private static int unknown(String name, Session session) {
        if (session.catalogue().ids().contains(name)) {
            session.err().println(session.texts().text("trouble.command-calculator", name));
            return ExitCode.NOT_UNDERSTOOD;
        }
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
                .synopsisHeading(session.texts().text("overview.usage") + " ")
                .footer(
                        "",
                        session.texts().text(command.name() + ".example"),
                        session.texts().text("overview.exit-codes"))
                .width(USAGE_WIDTH);
        command.describe(spec, session.texts());
        SharedOptions.describe(spec, session.texts());
        CommandLine line = parser(spec);
        try {
            ParseResult arguments = line.parseArgs(rest);
            if (arguments.isUsageHelpRequested()) {
                line.usage(session.out());
                return ExitCode.DONE;
            }
            SharedOptions.checkSettings(arguments, session.texts());
            return command.run(arguments, session);
        } catch (FileTrouble e) {
            e.remarks().forEach(remark -> session.tell(session.err(), remark));
            return ExitCode.NOT_UNDERSTOOD;
        } catch (BadArgument e) {
            session.err().println(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        } catch (ParameterException e) {
            session.err().println(new ArgumentTrouble(spec, session.texts()).words(e, List.of(rest)));
            session.err().println(session.texts().text("trouble.see-help", command.name()));
            return ExitCode.NOT_UNDERSTOOD;
        }
    }
}
