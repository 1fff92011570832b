package org.hidewright.core.begin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.item.Item;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.SuitableRows;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.StockLink;

/**
 * A project as it is begun: from a template, with what the workshop has for it and what follows from it, so that there is a
 * whole piece from the first step on and every step only changes it. What was answered so far stands in the project; nothing
 * is kept here.
 */
public final class Beginning {
    private final Catalogue catalogue;
    private final Supplier<Stock> stock;
    private final NewSlips slips;

    /**
     * With what is installed and what the workshop has.
     *
     * @param stock asked for each time, since rows come and go
     * @param wording the words of titles
     */
    public Beginning(Catalogue catalogue, Supplier<Stock> stock, Wording wording) {
        this.catalogue = catalogue;
        this.stock = stock;
        this.slips = new NewSlips(wording);
    }

    /** What can be made. */
    public List<Installed> templates() {
        return Templates.in(catalogue);
    }

    /** The project as a template begins it, with all that follows without a word; what is typical is in these units. */
    public Project begun(Installed template, UnitSystem units) {
        List<Question> questions = questions(template);
        Map<String, Object> answers = new LinkedHashMap<>(new Typical(units).answers(questions));
        answers.putAll(new StockAnswers(rows(Optional.empty()), Map.of()).eachByItself(questions));
        Project project = NewSlips.project(slips.title(template), units, List.of(slips.slip(template, answers)));
        for (Installed follower : following(project, template).ready()) {
            project = following(project, follower.id(), true);
        }
        return project;
    }

    /** The units that a project is shown in. */
    public static UnitSystem units(Project project) {
        return project.shown("units").flatMap(UnitSystem::of).orElse(UnitSystem.METRIC);
    }

    /**
     * The project in other units. As long as nothing was answered it is begun anew, so that what is typical is in them; what
     * was typed stays as it was typed, since no measure of the maker’s is to change.
     */
    public Project shown(Project project, UnitSystem units) {
        return template(project)
                .filter(template -> begun(template, units(project)).text().equals(project.text()))
                .map(template -> begun(template, units))
                .orElseGet(() -> edited(project, now -> now.showing("units", units.key())));
    }

    /** The template that a project is begun with; empty where it has gone. */
    public Optional<Installed> template(Project project) {
        return project.slips().stream()
                .flatMap(slip -> catalogue.find(slip.calculator()).stream())
                .filter(Templates::isTemplate)
                .findFirst();
    }

    /** What could give the template its sizes by a name. */
    public Optional<Installed> giver(Project project) {
        return template(project).flatMap(template -> new Givers(catalogue).of(questions(template)));
    }

    /** Whether the sizes are taken from there. */
    public boolean isGiven(Project project) {
        return giver(project)
                .filter(giver -> project.slip(giver.id()).isPresent())
                .isPresent();
    }

    /** The project with the sizes taken by name, or typed as they are measured. */
    public Project given(Project project, boolean byName) {
        Optional<Installed> giver = giver(project);
        if (giver.isEmpty() || isGiven(project) == byName) {
            return project;
        }
        Installed template = template(project).orElseThrow();
        Map<String, Object> links = new Givers(catalogue).links(questions(template), giver.get());
        Typical typical = new Typical(units(project));
        Map<String, Object> measured = typical.answers(questions(template));
        Optional<String> way = new Givers(catalogue).way(questions(template), giver.get());
        return edited(project, begun -> {
            Project changed = byName
                    ? begun.adding(
                            0, JsonOut.write(slips.slip(giver.get(), typical.answers(questions(giver.get()), way))))
                    : begun.removing(giver.get().id());
            Slip slip = changed.slip(template.id()).orElseThrow();
            for (String key : links.keySet()) {
                Object answer = byName ? links.get(key) : measured.get(key);
                AnswerPath path = AnswerPath.of(key);
                slip = answer == null ? slip.clearing(path) : slip.answering(path, json(answer));
            }
            return changed.with(slip);
        });
    }

    /** What can follow, in the order of the catalogue, each after what it takes from. */
    public List<Follower> followers(Project project) {
        return template(project)
                .map(template -> following(project, template))
                .map(following -> following.all().stream()
                        .map(one -> new Follower(one, project.slip(one.id()).isPresent(), following.asks(one)))
                        .toList())
                .orElse(List.of());
    }

    /** The project with something that follows, and what that takes from; or without it and what takes from it. */
    public Project following(Project project, String calculator, boolean in) {
        Installed template = template(project).orElseThrow();
        Following following = following(project, template);
        Project changed = project;
        for (Installed one : in ? following.with(calculator) : following.without(calculator)) {
            boolean there = changed.slip(one.id()).isPresent();
            if (in && !there) {
                Map<String, Object> slip = slips.slip(one, following.answers(one, preferred(changed, template)));
                changed = edited(changed, now -> now.adding(now.slips().size(), JsonOut.write(slip)));
            } else if (!in && there) {
                changed = edited(changed, now -> now.removing(one.id()));
            }
        }
        return changed;
    }

    /** The rows of the workshop that a question could take, the best first. */
    public List<SuitableRows.Fit> rows(Project project, Question question) {
        return rows(Optional.of(project)).of(question);
    }

    /** The project with a row of the workshop taken at a place; what follows goes by the rows that the piece takes. */
    public Project taking(Project project, String slip, AnswerPath path, StockLink link) {
        Project changed =
                edited(project, now -> now.with(now.slip(slip).orElseThrow().answering(path, json(link.written()))));
        Installed template = template(project).orElseThrow();
        Map<String, String> before = preferred(project, template);
        Map<String, String> after = preferred(changed, template);
        if (before.equals(after)) {
            return changed;
        }
        Following following = following(changed, template);
        for (Installed follower : following.all()) {
            if (changed.slip(follower.id()).isPresent()) {
                Map<String, Object> anew = following.answers(follower, after);
                changed = edited(
                        changed, now -> now.with(renewed(now.slip(follower.id()).orElseThrow(), anew, link)));
            }
        }
        return changed;
    }

    /** Only what was taken from the same table is taken anew: what was typed stays. */
    private static Slip renewed(Slip slip, Map<String, Object> anew, StockLink link) throws JsonTrouble {
        Slip changed = slip;
        for (Map.Entry<String, Object> answer : anew.entrySet()) {
            AnswerPath path = AnswerPath.of(answer.getKey());
            boolean sameTable = slip.answer(path)
                    .flatMap(StockLink::in)
                    .filter(there -> there.table().equals(link.table()))
                    .isPresent();
            if (sameTable) {
                changed = changed.answering(path, json(answer.getValue()));
            }
        }
        return changed;
    }

    /**
     * The project with every part in what follows by the row of the workshop that it is cut from; what the maker answered
     * there stays.
     *
     * @param worked the same project, worked out
     */
    public Project byTheirLeathers(Project project, WorkedProject worked) {
        Optional<WorkedSlip> template =
                template(project).map(installed -> worked.slips().get(installed.id()));
        Optional<Item> item = template.flatMap(WorkedSlip::answers)
                .flatMap(answers -> answers.entries().values().stream()
                        .filter(Item.class::isInstance)
                        .map(Item.class::cast)
                        .findFirst());
        if (item.isEmpty()) {
            return project;
        }
        OtherLeathers leathers = new OtherLeathers(rows(Optional.of(project)), template.get(), item.get());
        Project changed = project;
        for (Follower follower : followers(project)) {
            for (Question table :
                    follower.in() ? OtherLeathers.tables(questions(follower.calculator())) : List.<Question>of()) {
                Slip slip = changed.slip(follower.calculator().id()).orElseThrow();
                if (OtherLeathers.isOurs(slip, table)) {
                    AnswerPath path = AnswerPath.of(table.key());
                    List<Map<String, Object>> rows = leathers.rows(table, preferred(project, follower.calculator()));
                    changed = edited(
                            changed,
                            now -> now.with(rows.isEmpty() ? slip.clearing(path) : slip.answering(path, json(rows))));
                }
            }
        }
        return changed;
    }

    /** The project with copies of all it takes from the workshop, so that a change of the workshop is told. */
    public Project keeping(Project project) {
        List<StockLink> links = project.stock();
        return links.isEmpty()
                ? project
                : edited(project, now -> now.keeping(new Copies(Shelf.of(now.kept(), stock.get()), links).json(true)));
    }

    /** By table, the row that a calculator takes first. */
    private static Map<String, String> preferred(Project project, Installed calculator) {
        Map<String, String> rows = new LinkedHashMap<>();
        project.slip(calculator.id())
                .ifPresent(slip -> questions(calculator)
                        .forEach(question -> slip.answer(AnswerPath.of(question.key()))
                                .flatMap(StockLink::in)
                                .ifPresent(link -> rows.putIfAbsent(link.table(), link.row()))));
        return rows;
    }

    /** The steps there are, in their order; those without anything to answer are left out. */
    public List<Step> steps(Project project) {
        Optional<Installed> template = template(project);
        List<Step> steps = new ArrayList<>(List.of(new Step(Step.Kind.PIECE, List.of(), List.of())));
        if (template.isPresent()) {
            Optional<Installed> giver = giver(project).filter(any -> isGiven(project));
            StepsOf parts = new StepsOf(template.get(), giver, new Givers(catalogue));
            List.of(Step.Kind.SIZE, Step.Kind.MADE, Step.Kind.STOCK).stream()
                    .map(parts::step)
                    .filter(step -> !step.isEmpty())
                    .forEach(steps::add);
            List<Follower> followers = followers(project);
            if (!followers.isEmpty()) {
                steps.add(StepsOf.following(followers));
            }
        }
        return List.copyOf(steps);
    }

    private Following following(Project project, Installed template) {
        return new Following(catalogue, rows(Optional.of(project)), template, new Typical(units(project)));
    }

    private SuitableRows rows(Optional<Project> project) {
        return new SuitableRows(Shelf.of(project.flatMap(Project::kept), stock.get()));
    }

    private static List<Question> questions(Installed calculator) {
        return calculator.calculator().declaration().questions();
    }

    private static String json(Object answer) {
        return JsonOut.line(answer).strip();
    }

    /** A change of a project’s text. */
    private interface Change {
        Project of(Project project) throws JsonTrouble;
    }

    private static Project edited(Project project, Change change) {
        try {
            return change.of(project);
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what is begun is JSON", e);
        }
    }
}
