package org.hidewright.core.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopReader;

/** Projects written and worked in a line, for tests. */
public final class Shop {
    public static final Wording ENGLISH = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private final Catalogue catalogue;

    public Shop(Calculator<?, ?>... calculators) {
        this(Catalogue.of(
                "org.example.kit",
                Arrays.stream(calculators).map(RecordCalculator::of).toArray(DeclaredCalculator[]::new)));
    }

    public Shop(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public Bench bench() {
        return new Bench(catalogue);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** A project of slips written as JSON objects. */
    public static String projectText(String... slips) {
        return "{\"hidewright\": 1, \"name\": \"Kit\", \"slips\": [\n" + String.join(",\n", slips) + "\n]}";
    }

    public static String slip(String id, String calculator, String questions) {
        return "{\"id\": \"" + id + "\", \"calculator\": \"" + calculator + "\", \"questions\": {" + questions + "}}";
    }

    /** Questions with apostrophes in place of quotes, which read easier in a test. */
    public static String json(String withApostrophes) {
        return withApostrophes.replace('\'', '"');
    }

    public static Project project(String text) {
        ProjectReader.Result read = ProjectReader.read(text);
        return read.project()
                .orElseThrow(() -> new AssertionError(read.remarks().toString()));
    }

    /** A bench with a workshop file in use; apostrophes stand for quotes. */
    public Bench benchWith(String workshop) {
        return new Bench(catalogue, Stock.of(catalogue::tables).with(workshop(workshop)));
    }

    /** A workshop file; apostrophes stand for quotes. */
    public static Workshop workshop(String text) {
        WorkshopReader.Result read = WorkshopReader.read(json(text));
        return read.workshop()
                .orElseThrow(() -> new AssertionError(read.remarks().toString()));
    }

    public WorkedProject work(String... slips) {
        return bench().work(project(projectText(slips)));
    }

    /** One slip with these questions; apostrophes stand for quotes. */
    public WorkedSlip one(String calculator, String questions) {
        return work(slip("s", calculator, json(questions))).slips().get("s");
    }

    /** Keys of remarks without {@code notice.}, in order. */
    public static List<String> keys(List<Remark> remarks) {
        return remarks.stream()
                .map(remark -> remark.key().replaceFirst("^notice\\.", ""))
                .toList();
    }

    /** What, where, why and next of a remark in one piece; where is in the slip if the remark is a slip's own. */
    public static String said(Remark remark) {
        return ENGLISH.what(remark) + " | " + ENGLISH.where(remark).orElse("") + " | " + ENGLISH.why(remark) + " | "
                + ENGLISH.next(remark);
    }
}
