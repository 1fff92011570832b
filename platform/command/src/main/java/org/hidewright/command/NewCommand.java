package org.hidewright.command;

import java.util.List;
import java.util.Optional;
import org.hidewright.core.Nearest;
import org.hidewright.core.store.FileTrouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Starts something: a project from a template, or a template of one’s own. */
final class NewCommand implements Subcommand {
    private static final String PROJECT = "project";
    private static final String TEMPLATE = "template";
    static final String FROM = "--template";
    static final String REPLACE = "--replace";
    static final String ALL = "--all";
    static final String PRESETS = "--presets";

    @Override
    public String name() {
        return "new";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("project|template")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(texts.text("new.what"))
                .build());
        spec.addPositional(PositionalParamSpec.builder()
                .index("1")
                .paramLabel("FILE|NAME")
                .type(String.class)
                .arity("0..1")
                .description(texts.text("new.name"))
                .build());
        spec.addOption(OptionSpec.builder(FROM)
                .paramLabel("ID")
                .type(String.class)
                .description(texts.text("new.template"))
                .build());
        spec.addOption(SharedOptions.flag(ALL, texts.text("new.all")));
        spec.addOption(SharedOptions.flag(PRESETS, texts.text("new.presets")));
        spec.addOption(SharedOptions.flag(REPLACE, texts.text("new.replace")));
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String what = arguments.matchedPositionalValue(0, "");
        String name = arguments.matchedPositionalValue(1, "");
        if (what.equals(PROJECT)) {
            return new NewProject(session).run(arguments, name);
        } else if (what.equals(TEMPLATE)) {
            for (String option : List.of(FROM, ALL, PRESETS, REPLACE)) {
                if (arguments.hasMatchedOption(option)) {
                    throw new BadArgument(session.texts().text("addons.only-with", option, "new project"));
                }
            }
            return new NewTemplate(session).run(name);
        }
        throw new BadArgument(Nearest.to(what, List.of(PROJECT, TEMPLATE))
                .map(near -> session.texts().text("new.nothing-nearest", what, near))
                .orElseGet(() -> session.texts().text("new.nothing", what)));
    }
}
