package org.hidewright.command;

import org.hidewright.core.project.Project;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.PutAway;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.Stock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/**
 * Puts what is left of a project that is cut, such as the rest of a hide, away into the workshop file. First the project keeps copies of
 * what it took, so that it is worked later as it was cut.
 */
final class PutAwayCommand implements Subcommand {
    @Override
    public String name() {
        return "put-away";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(SharedOptions.project(texts.text("put-away.project")));
        WorkshopOption.describe(spec, texts);
    }

    @Override
    public int run(ParseResult arguments, Session session) throws BadArgument, FileTrouble {
        String workshop = arguments.matchedOptionValue(WorkshopOption.NAME, "");
        if (workshop.isEmpty()) {
            throw new BadArgument(session.texts().text("put-away.which-workshop"));
        }
        String name = arguments.matchedPositionalValue(0, "");
        ProjectFile project = ProjectFile.open(FileText.named(name, session.texts()));
        project.remarks().forEach(remark -> session.tell(session.err(), remark));
        WorkshopFile file =
                WorkshopFile.open(FileText.named(workshop, session.texts()), Stock.of(session.catalogue()::tables));
        file.remarks().forEach(remark -> session.tell(session.err(), remark));
        if (!file.stock().sound()) {
            return ExitCode.REFUSED;
        }
        WorkedProject worked = new Bench(session.catalogue(), file.stock()).work(project.project());
        PutAway away = PutAway.of(worked, session.catalogue().tables(), file.text());
        if (away.rows().isEmpty()) {
            session.out().println(session.texts().text("put-away.nothing", name));
            return ExitCode.DONE;
        }
        Project kept = KeepCommand.with(new Copies(worked.shelf(), worked.stock()).json(false), project.project());
        project.save(kept);
        file.save(away.workshop());
        session.out().println(session.texts().text("put-away.done", workshop));
        away.rows()
                .forEach(put -> session.out()
                        .println("  " + put.table() + "[" + put.row() + "]  " + became(put.became(), session)));
        return away.rows().stream().anyMatch(put -> put.became() == PutAway.Became.OTHERWISE_NOW)
                ? ExitCode.REFUSED
                : ExitCode.DONE;
    }

    private static String became(PutAway.Became became, Session session) {
        return switch (became) {
            case CHANGED -> session.texts().text("put-away.changed");
            case ADDED -> session.texts().text("put-away.added");
            case OTHERWISE_NOW -> session.texts().text("put-away.otherwise-now");
            case THERE_ALREADY -> session.texts().text("put-away.there-already");
        };
    }
}
