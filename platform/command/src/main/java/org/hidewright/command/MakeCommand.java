package org.hidewright.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.jobcard.RangeChecks;
import org.hidewright.core.packet.PacketFolder;
import org.hidewright.core.packet.PacketTrouble;
import org.hidewright.core.packet.PacketWriting;
import org.hidewright.core.packet.Papers;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.CautionsOnce;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Stock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Works a project out and writes its packet. */
final class MakeCommand implements Subcommand {
    private static final String INTO = "--into";
    private static final String REPLACE = "--replace";
    private static final String DATE = "--date";

    @Override
    public String name() {
        return "make";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(SharedOptions.project(texts.text("make.project")));
        spec.addOption(OptionSpec.builder(INTO)
                .paramLabel("FOLDER")
                .type(String.class)
                .description(texts.text("make.into"))
                .build());
        spec.addOption(SharedOptions.flag(REPLACE, texts.text("make.replace")));
        PacketPapers.describe(spec, texts);
        spec.addOption(OptionSpec.builder(DATE)
                .paramLabel("YYYY-MM-DD")
                .type(String.class)
                .description(texts.text("make.date"))
                .build());
        WorkshopOption.describe(spec, texts);
    }

    @Override
    public int run(ParseResult arguments, Session session) throws BadArgument, FileTrouble {
        String file = arguments.matchedPositionalValue(0, "");
        ProjectFile opened = ProjectFile.open(FileText.named(file, session.texts()));
        opened.remarks().forEach(remark -> session.tell(session.err(), remark));
        return make(file, opened.project(), arguments, session);
    }

    private static int make(String file, Project project, ParseResult arguments, Session asked)
            throws BadArgument, FileTrouble {
        Session session =
                asked.in(SharedOptions.wording(arguments, asked, project.shown("language"), project.shown("units")));
        Papers papers = PacketPapers.of(arguments, project, session);
        LocalDate date = date(arguments.matchedOptionValue(DATE, (String) null), session);
        Stock stock = WorkshopOption.stock(arguments, session);
        try {
            PacketFolder folder = PacketFolder.named(
                    arguments.matchedOptionValue(INTO, PacketFolder.usual(file)), arguments.hasMatchedOption(REPLACE));
            folder.mustBeFreeFor(project);
            Optional<Path> own = folder.ownInside(Path.of(file), project);
            WorkedProject worked = new Bench(session.catalogue(), stock).work(project);
            tell(worked, session);
            if (project.slips().isEmpty()) {
                session.err().println(session.texts().text("trouble.no-slips", file));
                return ExitCode.REFUSED;
            }
            boolean whole = write(worked, papers, date, folder, session);
            own.ifPresent(inside -> session.err()
                    .println(session.texts().text("make.among", folder.path().toString(), inside.toString())));
            session.stops().sayAgain(session);
            return whole && stock.sound() && worked.remarks(Severity.STOP).isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
        } catch (PacketTrouble e) {
            throw new BadArgument(PacketPapers.words(e, session.texts()));
        }
    }

    /** Notes stay on the card. What slips wait for is told where it is; of them it is enough to know which they are. */
    private static void tell(WorkedProject worked, Session session) {
        CautionsOnce once = new CautionsOnce(session.wording());
        for (Remark remark : worked.remarks()) {
            if (remark.severity() != Severity.NOTE
                    && !remark.key().equals("notice." + ProjectNotices.WAITS.key())
                    && once.test(remark)) {
                session.tell(session.err(), remark);
            }
        }
        for (WorkedSlip slip : worked.slips().values()) {
            RangeChecks.own(worked, slip, session.wording()).stream()
                    .filter(check -> once.test(check.about()))
                    .forEach(check ->
                            session.tell(session.err(), check, slip.slip().id()));
        }
        List<String> waiting = worked.slips().values().stream()
                .filter(slip -> slip.state() == WorkedSlip.State.WAITING)
                .map(slip -> slip.slip().id())
                .toList();
        if (!waiting.isEmpty()) {
            session.err().println(session.texts().text("make.waiting", String.join(", ", waiting)));
        }
    }

    /** Whether every part of the packet was written. */
    private static boolean write(
            WorkedProject worked, Papers papers, LocalDate date, PacketFolder folder, Session session)
            throws PacketTrouble {
        Optional<PdfWriter> pdf = Optional.ofNullable(session.paper().pdf());
        Optional<CsvWriter> csv = Optional.ofNullable(session.paper().csv());
        if (pdf.isEmpty()) {
            session.err().println(session.texts().text("trouble.no-writer", "PDF"));
        }
        if (csv.isEmpty()) {
            session.err().println(session.texts().text("trouble.no-writer", "CSV"));
        }
        return new PacketWriting(pdf, csv, session.catalogue().contributors())
                .write(worked, session.wording(), papers, date, folder, new PacketWriting.Told() {
                    @Override
                    public void wrote(Path file) {
                        session.out().println(file);
                    }

                    @Override
                    public void removed(Path file) {
                        session.err().println(session.texts().text("make.removed", file.toString()));
                    }

                    @Override
                    public void kept(Path file) {
                        session.err().println(session.texts().text("make.kept", file.toString()));
                    }

                    @Override
                    public void failed(Remark remark) {
                        session.tell(session.err(), remark);
                    }
                });
    }

    private static LocalDate date(String given, Session session) throws BadArgument {
        try {
            return given == null ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(given);
        } catch (DateTimeParseException e) {
            throw new BadArgument(session.texts().text("trouble.date", given));
        }
    }
}
