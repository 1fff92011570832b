package org.hidewright.command;

import java.util.Optional;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.explain.CatalogueJson;
import org.hidewright.core.explain.ExplanationJson;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Explains a calculator: what it asks, what it answers, by which formulas and on whose word. */
final class ExplainCommand implements Subcommand {
    @Override
    public String name() {
        return "explain";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("ID")
                .type(String.class)
                .required(false)
                .arity("0..1")
                .description(texts.text("explain.id"))
                .build());
        spec.addOption(SharedOptions.flag("--json", texts.text("explain.json")));
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String id = arguments.matchedPositionalValue(0, "");
        boolean json = arguments.hasMatchedOption("--json");
        if (id.isEmpty()) {
            if (json) {
                session.out().print(CatalogueJson.write(session.catalogue(), session.wording()));
            } else {
                new Overview(session).calculators();
            }
            return ExitCode.DONE;
        }
        Optional<Installed> installed = session.catalogue().find(id);
        if (installed.isEmpty()) {
            session.err().println(WorkCommand.unknown(id, session));
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (json) {
            session.out().print(new ExplanationJson(installed.get(), session.wording()).write());
        } else {
            new ExplanationPrinter(installed.get(), session).print();
        }
        return ExitCode.DONE;
    }
}
