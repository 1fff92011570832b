package org.hidewright.command;

import java.util.List;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.WorkshopNotices;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Keeps copies of the rows that a project takes from the workshop in its file. */
final class KeepCommand implements Subcommand {
    private static final String RENEW = "--renew";

    @Override
    public String name() {
        return "keep";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(SharedOptions.project(texts.text("keep.project")));
        WorkshopOption.describe(spec, texts);
        spec.addOption(SharedOptions.flag(RENEW, texts.text("keep.renew")));
    }

    @Override
    public int run(ParseResult arguments, Session session) throws BadArgument, FileTrouble {
        boolean rowsThere = arguments.hasMatchedOption(WorkshopOption.NAME)
                || session.catalogue().tables().haveRows();
        if (arguments.hasMatchedOption(RENEW) && !rowsThere) {
            throw new BadArgument(session.texts().text("keep.renew-from"));
        }
        String name = arguments.matchedPositionalValue(0, "");
        ProjectFile opened = ProjectFile.open(FileText.named(name, session.texts()));
        opened.remarks().forEach(remark -> session.tell(session.err(), remark));
        return keep(opened, name, arguments, session);
    }

    private static int keep(ProjectFile opened, String name, ParseResult arguments, Session session)
            throws FileTrouble, BadArgument {
        Stock stock = WorkshopOption.stock(arguments, session);
        Bench bench = new Bench(session.catalogue(), stock);
        WorkedProject worked = bench.work(opened.project());
        if (worked.stock().isEmpty()) {
            session.out().println(session.texts().text("keep.nothing", name));
            return tellTrouble(worked, stock, session);
        }
        Copies copies = new Copies(worked.shelf(), worked.stock());
        WorkedProject kept = bench.work(with(copies.json(arguments.hasMatchedOption(RENEW)), opened.project()));
        if (kept.shelf().rows().isEmpty()) {
            return tellTrouble(worked, stock, session);
        }
        boolean changed = !opened.project()
                .kept()
                .filter(before -> before.sameAs(kept.project().kept().orElseThrow()))
                .isPresent();
        if (changed) {
            opened.save(kept.project());
        }
        session.out()
                .println(
                        changed
                                ? session.texts().text("keep.done", name)
                                : session.texts().text("keep.same", name));
        kept.shelf().rows().forEach(row -> session.out().println("  " + row));
        return tellTrouble(kept, stock, session);
    }

    private static int tellTrouble(WorkedProject worked, Stock stock, Session session) {
        List<Remark> trouble = worked.remarks().stream()
                .filter(WorkshopNotices::raised)
                .filter(remark -> !remark.key().equals("notice." + WorkshopNotices.WORKSHOP_NOT_KEPT.key()))
                .toList();
        trouble.forEach(remark -> session.tell(session.err(), remark));
        return stock.sound() && trouble.stream().noneMatch(Remark::stops) ? ExitCode.DONE : ExitCode.REFUSED;
    }

    static Project with(String copies, Project project) {
        try {
            return project.keeping(copies);
        } catch (JsonTrouble e) {
            throw new IllegalStateException("copies are written as JSON", e);
        }
    }
}
