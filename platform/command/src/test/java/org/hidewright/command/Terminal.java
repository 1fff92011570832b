package org.hidewright.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.document.Document;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.window.ProjectWindow;
import org.mockito.Mockito;

/** A command line with writers that note what they were given. */
final class Terminal {
    final Map<String, Paper> papers = new HashMap<>();
    Document document;
    Paper paper;
    PdfWriter pdf = (given, sheet) -> {
        document = given;
        paper = sheet;
        papers.put(given.title(), sheet);
        return "%PDF of a test".getBytes(StandardCharsets.UTF_8);
    };
    CsvWriter csv = rows ->
            String.join("\n", rows.stream().map(row -> String.join("|", row)).toList());
    List<DrawingWriter> drawings =
            List.of(new PlainDrawings("svg"), new PlainDrawings("dxf"), new PlainDrawings("old"));
    List<DrawingReader> readers = List.of();
    AddOns addOns = Mockito.mock(AddOns.class);
    /** None unless a test brings one; no test can have a screen. */
    ProjectWindow window;

    String typed = "";
    String out;
    String err;

    private final Catalogue catalogue;

    Terminal(Calculator<?, ?>... calculators) {
        this(Catalogue.of(
                "org.example.kit",
                List.of(calculators).stream().map(RecordCalculator::of).toArray(DeclaredCalculator[]::new)));
    }

    Terminal(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    int run(String... arguments) {
        ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
        ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
        PaperServices services = new PaperServices() {
            @Override
            public PdfWriter pdf() {
                return pdf;
            }

            @Override
            public CsvWriter csv() {
                return csv;
            }

            @Override
            public List<DrawingWriter> drawings() {
                return drawings;
            }

            @Override
            public List<DrawingReader> readers() {
                return readers;
            }
        };
        int code = new CommandLineRun(
                        catalogue,
                        () -> addOns,
                        services,
                        () -> Optional.ofNullable(window),
                        "1.2.3",
                        new BufferedReader(new StringReader(typed)),
                        new PrintStream(outBytes, true, StandardCharsets.UTF_8),
                        new PrintStream(errBytes, true, StandardCharsets.UTF_8))
                .run(arguments);
        out = outBytes.toString(StandardCharsets.UTF_8);
        err = errBytes.toString(StandardCharsets.UTF_8);
        return code;
    }

    /** Writes the ids of its drawings. */
    private record PlainDrawings(String kind) implements DrawingWriter {
        @Override
        public String ending() {
            return "." + kind;
        }

        @Override
        public byte[] write(String title, List<Named> drawings) {
            return drawings.stream().map(Named::id).toList().toString().getBytes(StandardCharsets.UTF_8);
        }
    }
}
