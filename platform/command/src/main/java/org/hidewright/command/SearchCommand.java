package org.hidewright.command;

import java.util.List;
import java.util.Map;
import org.hidewright.core.Nearest;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SlipSearch;
import org.hidewright.core.work.WorkedProject;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Searches for what is not typed, and keeps what is found in the project. */
final class SearchCommand implements Subcommand {
    @Override
    public String name() {
        return "search";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(SharedOptions.project(texts.text("search.project")));
        spec.addPositional(PositionalParamSpec.builder()
                .index("1..*")
                .paramLabel("SLIP")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .description(texts.text("search.slips"))
                .build());
        spec.addOption(number(SearchSpending.SECONDS, texts.text("search.seconds")));
        spec.addOption(number(SearchSpending.TRIES, texts.text("search.tries")));
        spec.addOption(number(SearchSpending.SEED, texts.text("search.seed")));
        spec.addOption(number(SearchSpending.THREADS, texts.text("search.threads")));
        spec.addOption(SharedOptions.flag("--json", texts.text("work.json")));
        WorkshopOption.describe(spec, texts);
    }

    private static OptionSpec number(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("N")
                .type(String.class)
                .description(description)
                .build();
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        String name = arguments.matchedPositionalValue(0, "");
        ProjectFile file = ProjectFile.open(FileText.named(name, asked.texts()));
        Project project = file.project();
        Session session =
                asked.in(SharedOptions.wording(arguments, asked, project.shown("language"), project.shown("units")));
        file.remarks().forEach(remark -> session.tell(session.err(), remark));
        SearchSpending spending = SearchSpending.of(arguments, session);
        Bench bench = new Bench(session.catalogue(), WorkshopOption.stock(arguments, session));
        List<String> slips = slips(arguments, bench.work(project), name, session);
        SearchPrinter printer = new SearchPrinter(session, arguments.hasMatchedOption("--json"));
        if (slips.isEmpty()) {
            printer.nothing(name);
        }
        try (BreakOff breakOff = new BreakOff()) {
            SearchRun run = new SearchRun(file, bench, session, printer);
            for (String slip : slips) {
                run.search(slip, breakOff.stopping(spending.budget()));
            }
            printer.end();
            return run.whole() ? ExitCode.DONE : ExitCode.REFUSED;
        }
    }

    /** Those that are named, else all that something is searched for on. */
    private static List<String> slips(ParseResult arguments, WorkedProject worked, String name, Session session)
            throws BadArgument {
        List<String> searched = worked.slips().entrySet().stream()
                .filter(slip -> SlipSearch.isFor(slip.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        List<String> named = arguments.matchedPositionalValue(1, List.of());
        for (String slip : named) {
            if (!searched.contains(slip)) {
                throw new BadArgument(Nearest.to(slip, searched)
                        .map(near -> session.texts().text("search.no-such-slip-nearest", slip, name, near))
                        .orElseGet(() -> session.texts().text("search.no-such-slip", slip, name)));
            }
        }
        return named.isEmpty() ? searched : named;
    }
}
