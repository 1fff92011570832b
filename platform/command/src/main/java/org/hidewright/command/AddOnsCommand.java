package org.hidewright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnsJson;
import org.hidewright.core.store.FileTrouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Lists the bundles that can be turned on and off, installs and removes add-ons, and turns bundles on and off. */
final class AddOnsCommand implements Subcommand {
    private static final String INSTALL = "install";
    private static final String REMOVE = "remove";
    private static final String ON = "on";
    private static final String OFF = "off";
    private static final List<String> ACTIONS = List.of(INSTALL, REMOVE, ON, OFF);

    private static final String REPLACE = "--replace";
    private static final String FOLLOW = "--follow";
    private static final String JSON = "--json";

    @Override
    public String name() {
        return "addons";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel("install|remove|on|off")
                .type(String.class)
                .arity("0..1")
                .description(texts.text("addons.action"))
                .build());
        spec.addPositional(PositionalParamSpec.builder()
                .index("1..*")
                .paramLabel("NAME|FILE|FOLDER")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("0..*")
                .description(texts.text("addons.named"))
                .build());
        spec.addOption(SharedOptions.flag(REPLACE, texts.text("addons.replace")));
        spec.addOption(SharedOptions.flag(FOLLOW, texts.text("addons.follow")));
        spec.addOption(SharedOptions.flag(JSON, texts.text("addons.json")));
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String action = arguments.matchedPositionalValue(0, "");
        List<String> named = arguments.matchedPositionalValue(1, List.of());
        checkAction(action, named, arguments, session);
        switch (action) {
            case INSTALL -> install(named, arguments, session);
            case REMOVE -> remove(named.get(0), session);
            case ON, OFF -> turn(named.get(0), action.equals(ON), session);
            default -> list(arguments.hasMatchedOption(JSON), session);
        }
        return ExitCode.DONE;
    }

    private static void checkAction(String action, List<String> named, ParseResult arguments, Session session)
            throws BadArgument {
        CommandTexts texts = session.texts();
        if (!action.isEmpty() && !ACTIONS.contains(action)) {
            throw new BadArgument(Nearest.to(action, ACTIONS)
                    .map(near -> texts.text("addons.no-action-nearest", action, near))
                    .orElseGet(() -> texts.text("addons.no-action", action, String.join(", ", ACTIONS))));
        } else if (!action.isEmpty() && named.isEmpty()) {
            throw new BadArgument(
                    action.equals(INSTALL) ? texts.text("addons.no-file") : texts.text("addons.no-name", action));
        } else if (!action.equals(INSTALL) && named.size() > 1) {
            throw new BadArgument(texts.text("trouble.left-over", named.get(1)));
        } else if (!action.equals(INSTALL) && arguments.hasMatchedOption(REPLACE)) {
            throw new BadArgument(texts.text("addons.only-with", REPLACE, "addons install"));
        } else if (!action.equals(INSTALL) && arguments.hasMatchedOption(FOLLOW)) {
            throw new BadArgument(texts.text("addons.only-with", FOLLOW, "addons install"));
        } else if (!action.isEmpty() && arguments.hasMatchedOption(JSON)) {
            throw new BadArgument(texts.text("addons.only-with", JSON, "addons"));
        }
    }

    /** Calculators are made as well, so that one that cannot be used is told. */
    private static void list(boolean json, Session session) {
        List<AddOn> all = session.addOns().get().all();
        all.stream()
                .filter(addOn -> addOn.state() == State.ON)
                .flatMap(addOn -> addOn.calculators().stream())
                .forEach(session.catalogue()::find);
        session.catalogue().tables();
        if (json) {
            session.out().print(AddOnsJson.write(all));
            return;
        }
        if (all.isEmpty()) {
            session.out().println(session.texts().text("addons.none"));
        }
        for (AddOn addOn : all) {
            String state = state(addOn, session.texts());
            print(
                    addOn.origin() == Origin.PROGRAM
                            ? session.texts().text("addons.program", called(addOn), state)
                            : session.texts().text("addons.maker", called(addOn), state),
                    addOn,
                    session);
        }
        session.out().println();
        session.out().println(session.texts().text("addons.more"));
    }

    private static String state(AddOn addOn, CommandTexts texts) {
        return switch (addOn.state()) {
            case ON -> texts.text("addons.on");
            case OFF -> texts.text("addons.off");
            case LEFT_OUT -> texts.text("addons.left-out");
            case FAILED -> texts.text("addons.failed");
            case NEXT_START -> texts.text("addons.next-start");
        };
    }

    /** By the name that commands know it by. */
    private static String called(AddOn addOn) {
        return addOn.id().isEmpty() ? addOn.name() : addOn.id() + " " + addOn.version();
    }

    private static void print(String line, AddOn addOn, Session session) {
        session.out().println(line);
        if (!addOn.name().equals(addOn.id()) && !addOn.id().isEmpty()) {
            session.out().println("    " + addOn.name());
        }
        brings(addOn, session).forEach(brought -> session.out().println("    " + brought));
    }

    private static List<String> brings(AddOn addOn, Session session) {
        List<String> lines = new ArrayList<>();
        if (!addOn.calculators().isEmpty()) {
            lines.add(session.texts().text("addons.calculators", String.join(", ", addOn.calculators())));
        }
        if (!addOn.tables().isEmpty()) {
            lines.add(session.texts().text("addons.tables", String.join(", ", addOn.tables())));
        }
        return lines;
    }

    private static void install(List<String> named, ParseResult arguments, Session session)
            throws FileTrouble, BadArgument {
        boolean follow = arguments.hasMatchedOption(FOLLOW);
        List<Path> files = new ArrayList<>();
        for (String name : named) {
            Path file = FileText.named(name, session.texts());
            if (follow && Files.exists(file) && !Files.isDirectory(file)) {
                throw new BadArgument(session.texts().text("addons.follow-folder", name));
            }
            files.add(file);
        }
        List<AddOn> before = session.addOns().get().all();
        List<AddOn> installed = session.addOns().get().install(files, arguments.hasMatchedOption(REPLACE), follow);
        session.out().println(session.texts().text("addons.rights"));
        session.out().println();
        for (AddOn addOn : installed) {
            String state = state(addOn, session.texts());
            boolean there = before.contains(addOn);
            print(
                    there
                            ? session.texts().text("addons.there-already", called(addOn), state)
                            : session.texts().text("addons.installed", called(addOn), state),
                    addOn,
                    session);
        }
        session.out().println();
        if (follow) {
            files.forEach(file -> session.out().println(session.texts().text("addons.follows", file.toString())));
        }
        session.out()
                .println(session.texts()
                        .text("addons.installed-more", installed.get(0).id()));
    }

    private static void remove(String name, Session session) throws FileTrouble {
        AddOn removed = session.addOns().get().remove(name);
        session.out().println(session.texts().text("addons.removed", called(removed)));
        tellDormant(removed, session);
    }

    private static void turn(String name, boolean on, Session session) throws FileTrouble {
        AddOn before = session.addOns().get().turn(name, on);
        boolean wasOn = before.state() != State.OFF;
        if (on) {
            session.out()
                    .println(
                            wasOn
                                    ? session.texts().text("addons.still-on", before.id())
                                    : session.texts().text("addons.turned-on", before.id()));
        } else if (wasOn) {
            session.out().println(session.texts().text("addons.turned-off", before.id()));
            tellDormant(before, session);
        } else {
            session.out().println(session.texts().text("addons.still-off", before.id()));
        }
    }

    private static void tellDormant(AddOn gone, Session session) {
        if (!gone.calculators().isEmpty()) {
            session.out().println(session.texts().text("addons.dormant", String.join(", ", gone.calculators())));
        }
    }
}
