package org.hidewright.command;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hidewright.core.Nearest;
import org.hidewright.core.jobcard.SlipJson;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.search.SearchBudget;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SlipSearch;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Searches for what is not typed, and keeps what is found in the project. */
final class SearchCommand implements Subcommand {
    private static final String SECONDS = "--seconds";
    private static final String TRIES = "--tries";
    private static final String SEED = "--seed";
    private static final String THREADS = "--threads";
    private static final String USUAL_SECONDS = "60";
    /** As long as code that does not heed the end of its budget is waited for, and a little for the file. */
    private static final int SECONDS_TO_END = 8;

    @Override
    public String name() {
        return "search";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("PROJECT")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(texts.text("search.project"))
                .build());
        spec.addPositional(PositionalParamSpec.builder()
                .index("1..*")
                .paramLabel("SLIP")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .description(texts.text("search.slips"))
                .build());
        spec.addOption(number(SECONDS, texts.text("search.seconds")));
        spec.addOption(number(TRIES, texts.text("search.tries")));
        spec.addOption(number(SEED, texts.text("search.seed")));
        spec.addOption(number(THREADS, texts.text("search.threads")));
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
        ProjectFile opened = ProjectFile.open(FileText.named(name, asked.texts()));
        Project project = opened.project();
        Session session =
                asked.in(SharedOptions.wording(arguments, asked, project.shown("language"), project.shown("units")));
        opened.remarks().forEach(remark -> session.tell(session.err(), remark));
        Spending spending = Spending.of(arguments, session);
        Bench bench = new Bench(session.catalogue(), WorkshopOption.stock(arguments, session));
        List<String> slips = slips(arguments, bench.work(project), name, session);
        if (slips.isEmpty()) {
            session.out().println(session.texts().text("search.nothing", name));
            return ExitCode.DONE;
        }
        boolean all = true;
        for (String slip : slips) {
            Searching searching = new Searching(bench, opened, slip, session, arguments.hasMatchedOption("--json"));
            all &= searching.run(spending);
            opened = searching.saved;
        }
        return all ? ExitCode.DONE : ExitCode.REFUSED;
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

    /** What a search may spend, as it was typed. */
    private record Spending(Optional<Long> tries, long seconds, int threads, long seed) {
        private static final long LONGEST = TimeUnit.DAYS.toSeconds(7);
        private static final long MOST_TRIES = Long.MAX_VALUE / 2;
        private static final int MOST_THREADS = 256;

        static Spending of(ParseResult arguments, Session session) throws BadArgument {
            if (arguments.hasMatchedOption(SECONDS) && arguments.hasMatchedOption(TRIES)) {
                throw new BadArgument(session.texts().text("search.seconds-or-tries"));
            }
            if (arguments.hasMatchedOption(THREADS) && arguments.hasMatchedOption(TRIES)) {
                throw new BadArgument(session.texts().text("search.tries-one-thread"));
            }
            String tries = arguments.matchedOptionValue(TRIES, "");
            String threads = String.valueOf(Runtime.getRuntime().availableProcessors());
            return new Spending(
                    tries.isEmpty() ? Optional.empty() : Optional.of(number(TRIES, tries, MOST_TRIES, session)),
                    number(SECONDS, arguments.matchedOptionValue(SECONDS, USUAL_SECONDS), LONGEST, session),
                    (int) number(THREADS, arguments.matchedOptionValue(THREADS, threads), MOST_THREADS, session),
                    number(SEED, arguments.matchedOptionValue(SEED, "1"), MOST_TRIES, session));
        }

        private static long number(String option, String typed, long most, Session session) throws BadArgument {
            if (typed.matches("\\d{1,18}")) {
                long number = Long.parseLong(typed);
                if (number >= 1 && number <= most) {
                    return number;
                }
            }
            throw new BadArgument(session.texts().text("search.no-number", option, typed, most));
        }

        SearchBudget budget() {
            return tries.map(most -> SearchBudget.ofTries(most, seed))
                    .orElseGet(() -> SearchBudget.ofTime(Duration.ofSeconds(seconds), System::nanoTime, threads, seed));
        }
    }

    /** The search of one slip. */
    private static final class Searching {
        private final Bench bench;
        private final String id;
        private final Session session;
        private final boolean json;
        private final long from = System.nanoTime();
        private final WorkedProject before;
        private volatile Project best;
        ProjectFile saved;

        Searching(Bench bench, ProjectFile opened, String id, Session session, boolean json) {
            this.bench = bench;
            this.saved = opened;
            this.id = id;
            this.session = session;
            this.json = json;
            this.best = opened.project();
            this.before = bench.work(best);
        }

        /** Searches, saves and prints; false where it could not be searched, or not to its end. */
        boolean run(Spending spending) throws FileTrouble {
            WorkedSlip slip = before.slips().get(id);
            Optional<SlipSearch> search = SlipSearch.of(slip);
            if (search.isEmpty()) {
                session.err().println(session.texts().text("search.not-yet", id));
                slip.remarks().stream().filter(Remark::stops).forEach(remark -> session.tell(session.err(), remark));
                return false;
            }
            SearchBudget budget = spending.budget();
            CountDownLatch ended = new CountDownLatch(1);
            Thread onBreak = new Thread(() -> stop(budget, ended), "end of a search");
            Runtime.getRuntime().addShutdownHook(onBreak);
            boolean whole;
            try {
                whole = search(search.get(), budget);
                keep();
            } finally {
                ended.countDown();
                if (!budget.stopped()) {
                    Runtime.getRuntime().removeShutdownHook(onBreak);
                }
            }
            return whole;
        }

        /** When the maker breaks the program off, what was found until then is kept. */
        private static void stop(SearchBudget budget, CountDownLatch ended) {
            budget.stop();
            try {
                if (!ended.await(SECONDS_TO_END, TimeUnit.SECONDS)) {
                    return; // its bundle does not come back, and nobody should wait for that
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private boolean search(SlipSearch search, SearchBudget budget) {
            Optional<Remark> failed = search.run(budget, this::found);
            failed.ifPresent(remark -> session.tell(session.err(), remark));
            return failed.isEmpty();
        }

        private synchronized void found(SlipSearch.Find find) {
            try {
                best = find.in(before.project());
            } catch (JsonTrouble e) {
                throw new IllegalStateException("what was found is written as JSON", e);
            }
            if (!json) {
                double seconds = (System.nanoTime() - from) / 1e9;
                session.out()
                        .println(session.texts().text("search.found", tenths(seconds), lead(bench.work(best, before))));
                session.out().flush();
            }
        }

        private String tenths(double seconds) {
            return String.format(session.wording().language(), "%.1f", seconds);
        }

        /** The answers that matter most, in a line. */
        private String lead(WorkedProject worked) {
            WorkedSlip slip = worked.slips().get(id);
            SlipWording words = new SlipWording(slip, session.wording());
            return slip.answers().stream()
                    .flatMap(answers -> slip.installed().orElseThrow().calculator().declaration().answers().stream()
                            .filter(answer -> answer.lead())
                            .flatMap(answer -> answers.get(answer.key()).stream()
                                    .map(value -> words.label(answer).toLowerCase(Locale.ROOT) + " "
                                            + words.text(answer, value))))
                    .reduce((one, other) -> one + ", " + other)
                    .orElse("–");
        }

        private void keep() throws FileTrouble {
            WorkedProject worked = bench.work(best, before);
            if (best == before.project()) {
                session.out().println(session.texts().text("search.no-better", id));
            } else {
                saved = saved.save(best);
            }
            WorkedSlip slip = worked.slips().get(id);
            if (json) {
                session.out().print(JsonOut.write(new SlipJson(worked, slip, session.wording()).tree()));
            } else {
                session.out().println();
                new SlipPrinter(worked, slip, false, session).print();
            }
        }
    }
}
