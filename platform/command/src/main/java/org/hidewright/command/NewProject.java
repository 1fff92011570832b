package org.hidewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.Nearest;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;
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
    private final Session session;
    private final Bench bench;
    private final List<Object> before = new ArrayList<>();

    NewProject(Session session) {
        this.session = session;
        this.bench = new Bench(session.catalogue());
    }

    int run(ParseResult arguments, String name) throws BadArgument, FileTrouble {
        String id = arguments.matchedOptionValue(NewCommand.FROM, "");
        if (id.isEmpty()) {
            throw new BadArgument(session.texts().text("new.which-template", String.join(", ", templates())));
        }
        Optional<Installed> template = session.catalogue().find(id);
        if (template.isEmpty() || !isTemplate(template.get())) {
            throw new BadArgument(noTemplate(id));
        }
        Path file = FileText.named(name.isEmpty() ? id + ".json" : name, session.texts());
        if (Files.exists(file) && !arguments.hasMatchedOption(NewCommand.REPLACE)) {
            throw new BadArgument(session.texts().text("new.project-there", file.toString()));
        }
        Map<String, Object> answered = ask(template.get(), arguments);
        String text = project(template.get(), answered);
        try {
            WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadArgument(
                    session.texts().text("new.not-written", file.toString(), String.valueOf(e.getMessage())));
        }
        return tell(file, work(text), id);
    }

    /** It answers an item, and what it asks can be answered one by one. */
    private static boolean isTemplate(Installed installed) {
        Declaration declaration = installed.calculator().declaration();
        return declaration.answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM)
                && declaration.questions().stream()
                        .noneMatch(question -> question.kind() == Kind.ROWS || question.kind() == Kind.ITEM);
    }

    private List<String> templates() {
        return session.catalogue().ids().stream()
                .filter(id -> session.catalogue()
                        .find(id)
                        .filter(NewProject::isTemplate)
                        .isPresent())
                .toList();
    }

    private String noTemplate(String id) {
        return Nearest.to(id, templates())
                .map(near -> session.texts().text("new.no-template-nearest", id, near))
                .orElseGet(() -> session.texts().text("new.no-template", id, String.join(", ", templates())));
    }

    /** The questions that have no preset, or all of them, or none. */
    private Map<String, Object> ask(Installed template, ParseResult arguments) {
        boolean all = arguments.hasMatchedOption(NewCommand.ALL);
        Dialogue dialogue = new Dialogue(session, template.calculator().texts());
        if (arguments.hasMatchedOption(NewCommand.PRESETS)) {
            dialogue.askNothing();
        }
        dialogue.title(template);
        Map<String, Object> answered = new LinkedHashMap<>();
        Set<String> measured = new HashSet<>();
        for (Question question : template.calculator().declaration().questions()) {
            if (answered.containsKey(question.key())
                    || !all && question.preset().isPresent()
                    || question.optional()) {
                continue;
            }
            Optional<Installed> giver = giver(question);
            boolean offered = giver.isPresent() && measured.add(giver.get().id());
            if (offered
                    && dialogue.takesFrom(
                            giver.get(),
                            takers(template.calculator().declaration().questions(), giver.get()))) {
                takeFrom(giver.get(), template, dialogue, answered);
            } else {
                dialogue.ask(question, answered, path -> faults(template, answered, path));
            }
        }
        return answered;
    }

    /** The calculator whose answer suits a question, or one in a group, where it is installed. */
    private Optional<Installed> giver(Question question) {
        return Stream.concat(
                        question.from().stream(), question.questions().stream().flatMap(one -> one.from().stream()))
                .flatMap(from -> session.catalogue().find(from.substring(0, from.indexOf('.'))).stream())
                .findFirst();
    }

    /** Links to what is given, from every question that it suits; a group of such questions has them inside. */
    private Map<String, Object> links(List<Question> questions, Installed giver) {
        Map<String, Object> links = new LinkedHashMap<>();
        for (Question question : questions) {
            if (giver(question).filter(found -> found.id().equals(giver.id())).isPresent()) {
                links.put(
                        question.key(),
                        question.from()
                                .<Object>map(from ->
                                        Map.of("from", giver.id(), "answer", from.substring(from.indexOf('.') + 1)))
                                .orElseGet(() -> links(question.questions(), giver)));
            }
        }
        return links;
    }

    private List<Question> takers(List<Question> questions, Installed giver) {
        return questions.stream()
                .filter(question -> giver(question)
                        .filter(found -> found.id().equals(giver.id()))
                        .isPresent())
                .flatMap(question -> question.kind() == Kind.GROUP
                        ? takers(question.questions(), giver).stream()
                        : Stream.of(question))
                .toList();
    }

    /** A slip of the calculator that gives, and links to it from every question that it suits. */
    private void takeFrom(Installed giver, Installed template, Dialogue dialogue, Map<String, Object> answered) {
        Map<String, Object> given = new LinkedHashMap<>();
        Dialogue inside = dialogue.of(giver.calculator().texts());
        for (Question question : giver.calculator().declaration().questions()) {
            if (!question.optional()) {
                inside.ask(question, given, path -> faults(giver, given, path));
            }
        }
        before.add(slip(giver.id(), giver, given));
        answered.putAll(links(template.calculator().declaration().questions(), giver));
    }

    /** What is wrong with one answer, or inside it, as the project would tell it. */
    private List<Remark> faults(Installed calculator, Map<String, Object> answered, String path) {
        WorkedProject worked = work(project(calculator, answered));
        return worked.slips().get(calculator.id()).remarks().stream()
                .filter(Remark::stops)
                .filter(remark ->
                        remark.question().equals(path) || remark.question().startsWith(path + "."))
                .toList();
    }

    private WorkedProject work(String text) {
        return bench.work(ProjectReader.read(text).project().orElseThrow(() -> new IllegalStateException(text)));
    }

    private String project(Installed calculator, Map<String, Object> answered) {
        Map<String, Object> project = new LinkedHashMap<>();
        project.put("hidewright", ProjectReader.FORMAT);
        project.put("name", title(calculator));
        List<Object> slips = new ArrayList<>(before);
        slips.add(slip(calculator.id(), calculator, answered));
        project.put("slips", slips);
        return JsonOut.write(project);
    }

    private Map<String, Object> slip(String id, Installed calculator, Map<String, Object> answered) {
        Map<String, Object> slip = new LinkedHashMap<>();
        slip.put("id", id);
        slip.put("calculator", calculator.id());
        slip.put("from", calculator.bundle());
        slip.put("title", title(calculator));
        slip.put("questions", new LinkedHashMap<>(answered));
        return slip;
    }

    private String title(Installed calculator) {
        return session.wording()
                .text(
                        calculator.calculator().texts(),
                        calculator.calculator().declaration().titleKey());
    }

    private int tell(Path file, WorkedProject worked, String id) {
        WorkedSlip slip = worked.slips().get(id);
        worked.remarks().stream().filter(Remark::stops).forEach(remark -> session.tell(session.err(), remark));
        session.out().println();
        session.out().println(session.texts().text("new.project-done", file.toString()));
        session.out().println("  " + session.texts().text("new.project-make", file.toString()));
        return slip.state() == WorkedSlip.State.WORKED ? ExitCode.DONE : ExitCode.REFUSED;
    }
}
