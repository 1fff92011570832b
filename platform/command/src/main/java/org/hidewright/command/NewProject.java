package org.hidewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.Nearest;
import org.hidewright.core.begin.Givers;
import org.hidewright.core.begin.NewSlips;
import org.hidewright.core.begin.Templates;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.jobcard.PresetsTaken;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.project.Slip;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import picocli.CommandLine.ParseResult;

/**
 * Starts a project from a template: asks what has no preset, and writes a project file that can be made. What another
 * calculator answers, such as the size of a thing by its name, becomes a slip of its own that the template takes from.
 */
final class NewProject {
    private static final String EXAMPLES = "notice." + ProjectNotices.EXAMPLES_TAKEN.key();

    private final Session session;
    private final Bench bench;
    private final Givers givers;
    private final NewSlips slips;
    private final List<Object> before = new ArrayList<>();
    /** The answers of the template that nobody gave. */
    private final Map<String, Object> examples = new LinkedHashMap<>();

    NewProject(Session session) {
        this.session = session;
        this.bench = new Bench(session.catalogue());
        this.givers = new Givers(session.catalogue());
        this.slips = new NewSlips(session.wording());
    }

    int run(ParseResult arguments, String name) throws BadArgument, FileTrouble {
        String id = arguments.matchedOptionValue(NewCommand.FROM, "");
        if (id.isEmpty()) {
            throw new BadArgument(session.texts().text("new.which-template", String.join(", ", templates())));
        }
        Optional<Installed> template = session.catalogue().find(id);
        if (template.isEmpty() || !Templates.isTemplate(template.get())) {
            throw new BadArgument(noTemplate(id));
        }
        Path file = FileText.named(name.isEmpty() ? id + ".json" : name, session.texts());
        if (Files.exists(file) && !arguments.hasMatchedOption(NewCommand.REPLACE)) {
            throw new BadArgument(session.texts().text("new.project-there", file.toString()));
        }
        Dialogue dialogue = new Dialogue(session, template.get().calculator().texts());
        if (arguments.hasMatchedOption(NewCommand.PRESETS)) {
            dialogue.askNothing();
        }
        Map<String, Object> answered = ask(template.get(), arguments.hasMatchedOption(NewCommand.ALL), dialogue);
        String text = project(name.isEmpty() ? slips.title(template.get()) : named(file), template.get(), answered);
        try {
            WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadArgument(
                    session.texts().text("new.not-written", file.toString(), String.valueOf(e.getMessage())));
        }
        if (dialogue.ended()) {
            session.out().println(session.texts().text("new.rest-preset"));
        }
        return tell(file, work(text), id);
    }

    private List<String> templates() {
        return Templates.in(session.catalogue()).stream().map(Installed::id).toList();
    }

    private String noTemplate(String id) {
        return Nearest.to(id, templates())
                .map(near -> session.texts().text("new.no-template-nearest", id, near))
                .orElseGet(() -> session.texts().text("new.no-template", id, String.join(", ", templates())));
    }

    /** The questions that have no preset, or all of them, or none. */
    private Map<String, Object> ask(Installed template, boolean all, Dialogue dialogue) throws BadArgument {
        dialogue.title(template, all);
        Map<String, Object> answered = new LinkedHashMap<>();
        Set<String> measured = new HashSet<>();
        for (Question question : template.calculator().declaration().questions()) {
            if (answered.containsKey(question.key())
                    || !all && question.preset().isPresent()
                    || question.optional()) {
                continue;
            }
            Optional<Installed> giver = givers.of(question);
            boolean offered = giver.isPresent() && measured.add(giver.get().id());
            if (offered
                    && dialogue.takesFrom(
                            giver.get(),
                            givers.takers(template.calculator().declaration().questions(), giver.get()))) {
                takeFrom(giver.get(), template, dialogue, answered);
            } else {
                dialogue.ask(question, answered, path -> faults(template, answered, path));
                if (dialogue.tookExample()) {
                    examples.put(question.key(), answered.get(question.key()));
                }
            }
        }
        return answered;
    }

    /** A slip of the calculator that gives, and links to it from every question that it suits. */
    private void takeFrom(Installed giver, Installed template, Dialogue dialogue, Map<String, Object> answered)
            throws BadArgument {
        Map<String, Object> given = new LinkedHashMap<>();
        Map<String, Object> taken = new LinkedHashMap<>();
        Dialogue inside = dialogue.of(
                giver.calculator().texts(),
                givers.way(template.calculator().declaration().questions(), giver));
        for (Question question : giver.calculator().declaration().questions()) {
            if (!question.optional()) {
                inside.ask(question, given, path -> faults(giver, given, path));
                if (inside.tookExample()) {
                    taken.put(question.key(), given.get(question.key()));
                }
            }
        }
        before.add(slip(giver, given, taken));
        answered.putAll(givers.links(template.calculator().declaration().questions(), giver));
    }

    /** What is wrong with one answer, or inside it, as the project would tell it. */
    private List<Remark> faults(Installed calculator, Map<String, Object> answered, String path) {
        WorkedProject worked = work(project(slips.title(calculator), calculator, answered));
        return worked.slips().get(calculator.id()).remarks().stream()
                .filter(Remark::stops)
                .filter(remark ->
                        remark.question().equals(path) || remark.question().startsWith(path + "."))
                .toList();
    }

    private WorkedProject work(String text) {
        return bench.work(ProjectReader.read(text).project().orElseThrow(() -> new IllegalStateException(text)));
    }

    private String project(String name, Installed calculator, Map<String, Object> answered) {
        List<Object> all = new ArrayList<>(before);
        all.add(slip(calculator, answered, examples));
        return NewSlips.text(name, session.wording().units(), all);
    }

    /** @param taken those of the answers that nobody gave */
    private Map<String, Object> slip(Installed calculator, Map<String, Object> answered, Map<String, Object> taken) {
        Map<String, Object> slip = slips.slip(calculator, answered);
        if (!taken.isEmpty()) {
            slip.put(Slip.EXAMPLES, taken);
        }
        return slip;
    }

    /** The name of a project whose file was named: two of a template are told apart by it, also where their packets lie. */
    private static String named(Path file) {
        String words = IdWords.of(file.getFileName().toString().replaceFirst("\\.json$", ""));
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private int tell(Path file, WorkedProject worked, String id) {
        WorkedSlip slip = worked.slips().get(id);
        worked.remarks().stream()
                .filter(remark -> remark.stops() || remark.key().equals(EXAMPLES))
                .forEach(remark -> session.tell(session.err(), remark));
        List<String> presets = new PresetsTaken(slip, session.wording()).lines();
        session.out().println();
        if (!presets.isEmpty()) {
            session.out().println(session.texts().text("new.presets-taken", String.join("; ", presets)));
            session.out().println("  " + session.texts().text("new.presets-change"));
            session.out().println();
        }
        session.out().println(session.texts().text("new.project-done", file.toString()));
        session.out().println("  " + session.texts().text("new.project-make", file.toString()));
        return slip.state() == WorkedSlip.State.WORKED ? ExitCode.DONE : ExitCode.REFUSED;
    }
}
