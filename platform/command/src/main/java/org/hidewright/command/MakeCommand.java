package org.hidewright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.jobcard.JobCard;
import org.hidewright.core.jobcard.JobCardJson;
import org.hidewright.core.jobcard.JobCardRows;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Works a project out and writes its packet. */
final class MakeCommand implements Subcommand {
    private static final String INTO = "--into";
    private static final String PAPER = "--paper";
    private static final String DATE = "--date";

    @Override
    public String name() {
        return "make";
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("PROJECT")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(texts.text("make.project"))
                .build());
        spec.addOption(OptionSpec.builder(INTO)
                .paramLabel("FOLDER")
                .type(String.class)
                .defaultValue("out")
                .description(texts.text("make.into"))
                .build());
        spec.addOption(OptionSpec.builder(PAPER)
                .paramLabel("A4|Letter")
                .type(String.class)
                .description(texts.text("make.paper"))
                .build());
        spec.addOption(OptionSpec.builder(DATE)
                .paramLabel("YYYY-MM-DD")
                .type(String.class)
                .description(texts.text("make.date"))
                .build());
    }

    @Override
    public int run(ParseResult arguments, Session session) {
        try {
            String file = arguments.matchedPositionalValue(0, "");
            ProjectReader.Result read = ProjectReader.read(FileText.read(file, session.texts()));
            if (read.project().isEmpty()) {
                read.remarks().forEach(remark -> session.tell(session.err(), remark));
                return ExitCode.NOT_UNDERSTOOD;
            }
            return make(read.project().get(), arguments, session);
        } catch (BadArgument e) {
            session.err().println(e.getMessage());
            return ExitCode.NOT_UNDERSTOOD;
        }
    }

    private static int make(Project project, ParseResult arguments, Session asked) throws BadArgument {
        Session session = asked.in(SharedOptions.wording(
                arguments,
                asked,
                project.shown("language"),
                project.shown("units").filter(key -> UnitSystem.of(key).isPresent())));
        Paper paper = paper(
                arguments.matchedOptionValue(
                        PAPER,
                        project.shown("paper")
                                .filter(name -> Paper.of(name).isPresent())
                                .orElse("A4")),
                session);
        LocalDate date = date(arguments.matchedOptionValue(DATE, (String) null), session);
        WorkedProject worked = new Bench(session.catalogue()).work(project);
        Path folder = folder(arguments.matchedOptionValue(INTO, "out"), session);
        for (Remark remark : worked.remarks()) {
            if (remark.severity() != Severity.NOTE) {
                session.tell(session.err(), remark);
            }
        }
        boolean whole = write(worked, paper, date, folder, session);
        return whole && worked.remarks(Severity.STOP).isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    /** Whether every part of the packet was written. */
    private static boolean write(WorkedProject worked, Paper paper, LocalDate date, Path folder, Session session)
            throws BadArgument {
        PdfWriter pdf = session.paper().pdf();
        if (pdf == null) {
            session.err().println(session.texts().text("trouble.no-writer", "PDF"));
        } else {
            JobCard card = new JobCard(worked, session.wording());
            save(
                    folder,
                    "job-card.pdf",
                    pdf.write(card.document(date, session.paper().contributors()), paper),
                    session);
        }
        save(folder, "job-card.json", utf8(JobCardJson.write(worked, session.wording(), date)), session);
        CsvWriter csv = session.paper().csv();
        if (csv == null) {
            session.err().println(session.texts().text("trouble.no-writer", "CSV"));
        } else {
            save(folder, "job-card.csv", utf8(csv.write(JobCardRows.of(worked, session.wording()))), session);
        }
        return pdf != null && csv != null;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void save(Path folder, String name, byte[] bytes, Session session) throws BadArgument {
        Path file = folder.resolve(name);
        try {
            Files.write(file, bytes);
            session.out().println(file);
        } catch (IOException e) {
            throw new BadArgument(
                    session.texts().text("trouble.write", file.toString(), String.valueOf(e.getMessage())));
        }
    }

    private static Path folder(String name, Session session) throws BadArgument {
        try {
            return Files.createDirectories(Path.of(name));
        } catch (IOException | InvalidPathException e) {
            throw new BadArgument(session.texts().text("trouble.write", name, String.valueOf(e.getMessage())));
        }
    }

    private static Paper paper(String name, Session session) throws BadArgument {
        return Paper.of(name).orElseThrow(() -> new BadArgument(session.texts().text("trouble.paper", name)));
    }

    private static LocalDate date(String given, Session session) throws BadArgument {
        try {
            return given == null ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(given);
        } catch (DateTimeParseException e) {
            throw new BadArgument(session.texts().text("trouble.date", given));
        }
    }
}
