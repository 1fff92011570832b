package org.hidewright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.find.Findable;
import org.hidewright.core.find.Finder;
import org.hidewright.core.find.Group;
import org.hidewright.core.find.InstalledThings;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Finds calculators, templates and what they ask by words of their titles and help. */
final class FindCommand implements Subcommand {
    @Override
    public String name() {
        return "find";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .paramLabel("WORDS")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .required(true)
                .arity("1..*")
                .description(texts.text("find.words"))
                .build());
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        List<String> words = arguments.matchedPositionalValue(0, List.of());
        String text = String.join(" ", words);
        Finder finder = new Finder(InstalledThings.of(session.catalogue(), session.wording()));
        Map<Group, List<Findable>> found = finder.find(text);
        if (found.isEmpty()) {
            session.err()
                    .println(finder.meant(text)
                            .map(word -> session.texts().text("find.meant", text, word))
                            .orElseGet(() -> session.texts().text("find.none", text)));
            return ExitCode.REFUSED;
        }
        found.forEach((group, things) -> print(group, things, session));
        session.out().println(session.texts().text("find.next"));
        return ExitCode.DONE;
    }

    private static void print(Group group, List<Findable> things, Session session) {
        CommandTexts texts = session.texts();
        session.out()
                .println(
                        group == Group.TEMPLATE
                                ? texts.text("find.template")
                                : group == Group.CALCULATOR
                                        ? texts.text("find.calculator")
                                        : texts.text("find.question"));
        List<List<String>> rows = new ArrayList<>();
        for (Findable thing : things) {
            String key = thing.goal().question();
            rows.add(List.of(
                    thing.goal().calculator() + (key.isEmpty() ? "" : " " + key), thing.title(), thing.where()));
        }
        new TextTable(rows).print(session.out());
        session.out().println();
    }
}
