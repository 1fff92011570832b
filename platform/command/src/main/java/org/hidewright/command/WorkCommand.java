package org.hidewright.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.jobcard.SlipJson;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Stock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Works one calculation out with what is typed on the command line. */
final class WorkCommand implements Subcommand {
    private static final String WORKING = "--working";
    /** No id ends so. */
    private static final String PROJECT = ".json";

    @Override
    public String name() {
        return "work";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("ID")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(texts.text("work.id"))
                .build());
        spec.addPositional(PositionalParamSpec.builder()
                .index("1..*")
                .paramLabel("KEY=VALUE|@FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .description(texts.text("work.questions"))
                .build());
        spec.addOption(SharedOptions.flag("--json", texts.text("work.json")));
        spec.addOption(SharedOptions.flag(WORKING, texts.text("work.working")));
        WorkshopOption.describe(spec, texts);
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String id = arguments.matchedPositionalValue(0, "");
        Optional<Installed> installed = session.catalogue().find(id);
        if (installed.isEmpty()) {
            session.err().println(unknown(id, session));
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (installed.get().takesItem()) {
            throw new BadArgument(session.texts().text("work.takes-item", id));
        }
        List<String> typed = arguments.matchedPositionalValue(1, List.of());
        TypedUnits units = new TypedUnits(
                installed.get().calculator().declaration(), session.wording().units());
        String questions = QuestionArguments.json(typed, session.texts(), units::read);
        Stock stock = WorkshopOption.stock(arguments, session);
        WorkedProject worked = work(id, questions, new Bench(session.catalogue(), stock));
        WorkedSlip slip = worked.slips().get(id);
        if (arguments.hasMatchedOption("--json")) {
            session.out().print(JsonOut.write(withoutPlaces(new SlipJson(worked, slip, session.wording()).tree())));
        } else {
            new SlipPrinter(worked, slip, arguments.hasMatchedOption(WORKING), session).print();
            if (!stock.sound()) {
                session.stops().sayAgain(session);
            }
        }
        return stock.sound() && slip.state() == WorkedSlip.State.WORKED ? ExitCode.DONE : ExitCode.REFUSED;
    }

    /** There is no file here whose lines could be told. */
    private static Map<String, Object> withoutPlaces(Map<String, Object> tree) {
        for (Object notice : (List<?>) tree.get("notices")) {
            ((Map<?, ?>) notice).keySet().removeAll(Set.of("line", "column"));
        }
        return tree;
    }

    static String unknown(String id, Session session) {
        if (id.endsWith(PROJECT)) {
            return session.texts().text("trouble.calculator-project", id);
        }
        for (AddOn addOn : session.addOns().get().all()) {
            if (addOn.calculators().contains(id)) {
                if (addOn.state() == State.OFF) {
                    return session.texts().text("trouble.calculator-off", id, addOn.id());
                } else if (addOn.state() == State.LEFT_OUT) {
                    return session.texts().text("trouble.calculator-left-out", id, addOn.id());
                } else if (addOn.state() == State.FAILED) {
                    return session.texts().text("trouble.calculator-failed", id, addOn.id());
                } else if (addOn.state() == State.WAITING) {
                    return session.texts().text("trouble.calculator-waiting", id, addOn.id());
                }
            }
        }
        if (session.catalogue().ids().contains(id)) { // why is told when the command ends, as of every calculator
            return session.texts().text("trouble.calculator-broken", id);
        }
        return Nearest.to(id, session.catalogue().ids())
                .map(near -> session.texts().text("trouble.calculator-nearest", id, near))
                .orElseGet(() -> session.texts().text("trouble.calculator", id));
    }

    /** One slip on a project of its own, so that a command line and a project file are read by the same code. */
    private static WorkedProject work(String id, String questions, Bench bench) {
        String text = "{\"hidewright\": 1, \"slips\": [{\"id\": " + JsonText.quoted(id) + ", \"calculator\": "
                + JsonText.quoted(id) + ", \"questions\": " + questions + "}]}";
        Project project = ProjectReader.read(text).project().orElseThrow();
        return bench.work(project);
    }
}
