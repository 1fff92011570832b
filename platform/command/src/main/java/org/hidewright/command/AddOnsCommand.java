package org.hidewright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnsJson;
import org.hidewright.core.addons.TakenId;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Lists the bundles that can be turned on and off, installs and removes add-ons, and turns bundles on and off. */
final class AddOnsCommand implements Subcommand {
    private static final String NAME = "addons";
    private static final String LIST = "";
    private static final String INSTALL = "install";
    private static final String CHECK = "check";
    private static final String UPDATE = "update";
    private static final String BACK = "back";
    private static final String REMOVE = "remove";
    private static final String ON = "on";
    private static final String OFF = "off";
    private static final String INDEX = "index";
    private static final String APPLY = "apply";
    private static final String PROFILE = "profile";
    private static final String TRUST = "trust";
    private static final String DISTRUST = "distrust";

    private static final String REPLACE = "--replace";
    private static final String FOLLOW = "--follow";
    private static final String FROM = "--from";
    private static final String OLDER = "--older";
    private static final String ONLY = "--try";
    private static final String JSON = "--json";
    private static final List<String> OPTIONS = List.of(REPLACE, FOLLOW, FROM, OLDER, ONLY, JSON);

    /** What each action takes: how many names, and which options. */
    private static final Map<String, Rule> RULES = rules();

    /** What an action takes: how many names at least and at most, and which options. */
    private record Rule(int least, int most, List<String> options) {}

    private static Map<String, Rule> rules() {
        Map<String, Rule> rules = new LinkedHashMap<>();
        rules.put(LIST, new Rule(0, 0, List.of(JSON, FROM)));
        rules.put(INSTALL, new Rule(1, Integer.MAX_VALUE, List.of(REPLACE, FOLLOW, FROM, OLDER)));
        rules.put(CHECK, new Rule(1, Integer.MAX_VALUE, List.of()));
        rules.put(UPDATE, new Rule(0, Integer.MAX_VALUE, List.of(FROM)));
        rules.put(BACK, new Rule(0, 0, List.of()));
        rules.put(REMOVE, new Rule(1, 1, List.of()));
        rules.put(ON, new Rule(1, 1, List.of()));
        rules.put(OFF, new Rule(1, 1, List.of()));
        rules.put(INDEX, new Rule(1, 1, List.of()));
        rules.put(APPLY, new Rule(1, 1, List.of(ONLY)));
        rules.put(PROFILE, new Rule(1, 1, List.of(FROM)));
        rules.put(TRUST, new Rule(0, Integer.MAX_VALUE, List.of()));
        rules.put(DISTRUST, new Rule(1, 1, List.of()));
        return rules;
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .paramLabel(String.join("|", actions()))
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
        spec.addOption(OptionSpec.builder(FROM)
                .paramLabel("FOLDER")
                .type(String.class)
                .description(texts.text("addons.from"))
                .build());
        spec.addOption(SharedOptions.flag(OLDER, texts.text("addons.older")));
        spec.addOption(SharedOptions.flag(REPLACE, texts.text("addons.replace")));
        spec.addOption(SharedOptions.flag(FOLLOW, texts.text("addons.follow")));
        spec.addOption(SharedOptions.flag(ONLY, texts.text("addons.try")));
        spec.addOption(SharedOptions.flag(JSON, texts.text("addons.json")));
    }

    private static List<String> actions() {
        return RULES.keySet().stream().filter(action -> !action.isEmpty()).toList();
    }

    @Override
    public int run(ParseResult arguments, Session asked) throws BadArgument, FileTrouble {
        Session session = asked.in(SharedOptions.wording(arguments, asked, Optional.empty(), Optional.empty()));
        String action = arguments.matchedPositionalValue(0, LIST);
        List<String> named = arguments.matchedPositionalValue(1, List.of());
        checkAction(action, named, arguments, session.texts());
        if (action.equals(CHECK)) {
            return AddOnsCheck.of(named, session);
        }
        String from = arguments.matchedOptionValue(FROM, "");
        Supplies supplies = new Supplies(session);
        switch (action) {
            case INSTALL -> {
                if (from.isEmpty()) {
                    install(named, arguments, session);
                } else {
                    supplies.install(from, named, arguments.hasMatchedOption(OLDER));
                }
            }
            case UPDATE -> supplies.update(from, named);
            case BACK -> supplies.back();
            case INDEX -> supplies.index(named.get(0));
            case APPLY -> supplies.apply(named.get(0), arguments.hasMatchedOption(ONLY));
            case PROFILE -> supplies.profile(named.get(0), from);
            case TRUST -> new TrustPrinter(session).trust(named);
            case DISTRUST -> new TrustPrinter(session).distrust(named.get(0));
            case REMOVE -> remove(named.get(0), session);
            case ON, OFF -> turn(named.get(0), action.equals(ON), session);
            default -> {
                if (from.isEmpty()) {
                    list(arguments.hasMatchedOption(JSON), session);
                } else {
                    supplies.offers(from);
                }
            }
        }
        return ExitCode.DONE;
    }

    private static void checkAction(String action, List<String> named, ParseResult arguments, CommandTexts texts)
            throws BadArgument {
        Rule rule = RULES.get(action);
        if (rule == null) {
            throw new BadArgument(Nearest.to(action, actions())
                    .map(near -> texts.text("addons.no-action-nearest", action, near))
                    .orElseGet(() -> texts.text("addons.no-action", action, String.join(", ", actions()))));
        } else if (named.size() < rule.least()) {
            throw new BadArgument(missing(action, texts));
        } else if (named.size() > rule.most()) {
            throw new BadArgument(texts.text("trouble.left-over", named.get(rule.most())));
        }
        for (String option : OPTIONS) {
            if (arguments.hasMatchedOption(option) && !rule.options().contains(option)) {
                throw new BadArgument(texts.text("addons.only-with", option, with(option)));
            }
        }
        boolean from = arguments.hasMatchedOption(FROM);
        if (action.equals(UPDATE) && !from) {
            throw new BadArgument(texts.text("addons.from-missing"));
        }
        for (String option : from ? List.of(REPLACE, FOLLOW, JSON) : List.of(OLDER)) {
            if (arguments.hasMatchedOption(option)) {
                throw new BadArgument(
                        from
                                ? texts.text("addons.not-from", option, FROM)
                                : texts.text("addons.only-from", option, FROM));
            }
        }
    }

    /** Asks for what an action does its work with. */
    private static String missing(String action, CommandTexts texts) {
        return switch (action) {
            case INSTALL, CHECK -> texts.text("addons.no-file", action);
            case INDEX -> texts.text("addons.no-folder", action);
            case APPLY, PROFILE -> texts.text("addons.no-path", action);
            case DISTRUST -> texts.text("addons.no-maker", action);
            default -> texts.text("addons.no-name", action);
        };
    }

    /** The commands that an option goes with. */
    private static String with(String option) {
        return RULES.keySet().stream()
                .filter(action -> RULES.get(action).options().contains(option))
                .map(action -> action.isEmpty() ? NAME : NAME + " " + action)
                .collect(Collectors.joining(", "));
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
            case WAITING -> texts.text("addons.waiting");
        };
    }

    /** By the name that commands know it by. */
    private static String called(AddOn addOn) {
        return addOn.id().isEmpty() ? addOn.name() : addOn.id() + " " + addOn.version();
    }

    private static void print(String line, AddOn addOn, Session session) {
        session.out().println(line);
        if (!addOn.name().equals(addOn.id()) && !addOn.id().isEmpty()) {
            session.out().println("    " + addOn.name(session.wording().language()));
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
        if (!addOn.follows().isEmpty()) {
            lines.add(session.texts().text("addons.followed", addOn.follows()));
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
        boolean nothingNew = before.containsAll(installed);
        if (!nothingNew) {
            session.out()
                    .println(
                            installed.stream().anyMatch(AddOn::code)
                                    ? session.texts().text("addons.rights")
                                    : session.texts().text("addons.texts-alone"));
            session.out().println();
        }
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
        if (nothingNew) {
            return;
        }
        session.out().println();
        List<Moved> moved = installed.stream()
                .filter(addOn -> addOn.state() != State.OFF)
                .map(addOn -> new Moved(addOn.id(), "", addOn.version(), addOn.calculators(), false))
                .toList();
        TakenId.after(before, new AddOnChange(moved, List.of(), List.of(), false))
                .forEach(taken -> session.tell(session.out(), taken.remark()));
        if (follow) {
            files.forEach(file -> session.out().println(session.texts().text("addons.follows", file.toString())));
        }
        session.out()
                .println(session.texts()
                        .text("addons.installed-more", installed.get(0).id()));
    }

    private static void remove(String name, Session session) throws FileTrouble {
        List<Remark> dependents = session.addOns().get().dependents(name);
        AddOn removed = session.addOns().get().remove(name);
        session.out().println(session.texts().text("addons.removed", called(removed)));
        tellDormant(removed, session);
        dependents.forEach(needed -> session.tell(session.out(), needed));
    }

    private static void turn(String name, boolean on, Session session) throws FileTrouble {
        List<Remark> dependents = on ? List.of() : session.addOns().get().dependents(name);
        AddOn before = session.addOns().get().turn(name, on);
        boolean wasOn = before.state() != State.OFF && before.state() != State.WAITING;
        if (on) {
            session.out()
                    .println(
                            wasOn
                                    ? session.texts().text("addons.still-on", before.id())
                                    : session.texts().text("addons.turned-on", before.id()));
        } else if (wasOn) {
            session.out().println(session.texts().text("addons.turned-off", before.id()));
            tellDormant(before, session);
            dependents.forEach(needed -> session.tell(session.out(), needed));
        } else {
            session.out().println(session.texts().text("addons.still-off", before.id()));
        }
    }

    private static void tellDormant(AddOn gone, Session session) {
        List<String> dormant = new ArrayList<>(gone.calculators());
        for (TakenId taken : TakenId.in(session.addOns().get().all())) {
            boolean left = taken.left().equals(gone.id());
            if ((left || taken.keeps().equals(gone.id())) && dormant.remove(taken.id())) {
                session.out()
                        .println(session.texts()
                                .text("addons.works-on", taken.id(), left ? taken.keeps() : taken.left()));
            }
        }
        if (!dormant.isEmpty()) {
            session.out().println(session.texts().text("addons.dormant", String.join(", ", dormant)));
        }
    }
}
