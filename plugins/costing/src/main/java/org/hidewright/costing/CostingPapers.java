package org.hidewright.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Slip;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.osgi.service.component.annotations.Component;

/**
 * The papers of costing, each apart from the job card: the shopping list for the shop, the quote for the customer, the cost
 * sheet for the maker alone. Only slips that were worked are on them, so that nobody buys or quotes by an old number.
 */
@Component(service = SectionContributor.class)
public final class CostingPapers implements SectionContributor {
    private static final String BUNDLE = "org.hidewright.costing.";
    private static final String WITHOUT_PRICE = "without-price";
    private static final int LINES_TO_SIGN = 2;

    @Override
    public List<Section> sections(JobView job) {
        PaperWords words = new PaperWords(job.language());
        return Stream.of(costSheet(job, words), shoppingList(job, words), quote(job, words))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Section> paper(String name, PaperWords words, List<Block> blocks) {
        return blocks.isEmpty()
                ? List.of()
                : List.of(Section.of(BUNDLE + name, words.text(name + ".title"), blocks)
                        .apart());
    }

    private static List<Section> costSheet(JobView job, PaperWords words) {
        List<Block> blocks = new ArrayList<>();
        for (Slip slip : costed(job)) {
            Table.Builder lines = Table.builder()
                    .caption(slip.title())
                    .column(words.text("cost-line.kind"))
                    .column(words.text("cost-line.of"))
                    .numbers(words.text("cost-line.amount"))
                    .numbers(words.text("cost-sheet.share"));
            double together = number(slip, "together");
            slip.answers()
                    .get("lines")
                    .rows()
                    .forEach(row -> lines.row(
                            value(row, "kind"),
                            value(row, "of"),
                            value(row, "amount"),
                            words.share(row.cells().get("amount").number().orElse(0) / together)));
            lines.row(words.text("cost.answer.together"), "", shown(slip, "together"), words.share(1));
            blocks.add(lines.build());
            blocks.add(byLine(slip, words, together));
            blocks.add(byBatch(slip, words));
            blocks.add(values(
                    slip,
                    "each",
                    "materials-each",
                    "once-only",
                    "each-afterwards",
                    "hands-on-together",
                    "estimated",
                    "estimated-each",
                    "one-more-hour",
                    "one-more-of-waste",
                    "outlay"));
            told(slip, blocks);
        }
        for (Slip slip : job.worked("price")) {
            blocks.add(captioned(
                    slip,
                    "price",
                    "paid",
                    "tax",
                    "fees",
                    "kept",
                    "profit",
                    "margin",
                    "markup",
                    "cost-covered",
                    "wholesale",
                    "wholesale-profit"));
            told(slip, blocks);
        }
        for (Slip slip : job.worked("break-even")) {
            blocks.add(captioned(slip, "pieces", "left-by-each"));
            told(slip, blocks);
        }
        if (!blocks.isEmpty()) {
            blocks.add(0, Paragraph.quiet(words.text("paper.cost-sheet-private")));
        }
        return paper("cost-sheet", words, blocks);
    }

    /** What was costed by typed rows, and what by an item. */
    private static List<Slip> costed(JobView job) {
        return Stream.of("cost", "item-cost")
                .flatMap(calculator -> job.worked(calculator).stream())
                .toList();
    }

    private static Bars byLine(Slip slip, PaperWords words, double together) {
        return Bars.of(
                words.text("paper.cost-sheet-bars"),
                slip.answers().get("lines").rows().stream()
                        .map(row -> {
                            double amount = row.cells().get("amount").number().orElse(0);
                            String of = value(row, "of");
                            return Bars.Bar.of(
                                    value(row, "kind") + (of.isEmpty() ? "" : ", " + of),
                                    amount,
                                    words.share(amount / together));
                        })
                        .toList());
    }

    private static Bars byBatch(Slip slip, PaperWords words) {
        return Bars.of(
                words.text("paper.cost-sheet-by-batch"),
                slip.answers().get("by-batch").rows().stream()
                        .map(row -> Bars.Bar.of(
                                words.text("paper.cost-sheet-batch", value(row, "pieces")),
                                row.cells().get("each").number().orElse(0),
                                value(row, "each")))
                        .toList());
    }

    /** What a number is worth stands with it: a cost without its buckle is no cost to ask a price by. */
    private static void told(Slip slip, List<Block> blocks) {
        if (!slip.notices().isEmpty()) {
            blocks.add(Checks.of(slip.notices()));
        }
    }

    private static List<Section> shoppingList(JobView job, PaperWords words) {
        List<Slip> slips = costed(job).stream()
                .filter(slip -> !rows(slip, "to-buy").isEmpty()
                        || !rows(slip, WITHOUT_PRICE).isEmpty())
                .toList();
        List<Block> blocks = new ArrayList<>();
        for (Slip slip : slips) {
            blocks.add(Paragraph.of(
                    words.text("paper.shopping-list-for", slip.title(), pieces(slip), shown(slip, "outlay"))));
            blocks.add(TickList.of(Stream.concat(
                            rows(slip, "to-buy").stream()
                                    .map(row -> TickList.Step.of(
                                            toBuy(row, words),
                                            words.text(
                                                    "paper.shopping-list-detail",
                                                    value(row, "sold-in"),
                                                    value(row, "needed"),
                                                    value(row, "paid")))),
                            rows(slip, WITHOUT_PRICE).stream()
                                    .map(row -> TickList.Step.of(
                                            withoutPrice(row, words), words.text("paper.shopping-list-unpriced"))))
                    .toList()));
        }
        if (slips.stream().anyMatch(slip -> !rows(slip, WITHOUT_PRICE).isEmpty())) {
            blocks.add(Paragraph.of(words.text("paper.shopping-list-unpriced-help")));
        }
        if (!slips.isEmpty()) {
            blocks.add(Paragraph.quiet(words.text("paper.shopping-list-help")));
            if (slips.size() > 1) {
                blocks.add(Paragraph.quiet(words.text("paper.shopping-list-shared")));
            }
        }
        return paper("shopping-list", words, blocks);
    }

    private static String toBuy(JobView.Row row, PaperWords words) {
        String of = value(row, "of");
        return of.isEmpty()
                ? words.text("paper.shopping-list-plain", value(row, "to-buy"), value(row, "kind"))
                : words.text("paper.shopping-list-line", value(row, "to-buy"), of, value(row, "kind"));
    }

    /** Fittings by their count, thread by its length. */
    private static String withoutPrice(JobView.Row row, PaperWords words) {
        String of = value(row, "of");
        return of.isEmpty()
                ? words.text("paper.shopping-list-amount", value(row, "kind"), value(row, "needed"))
                : words.text("paper.shopping-list-line", value(row, "needed"), of, value(row, "kind"));
    }

    /** What a customer may see: no cost, no margin, no workings. */
    private static List<Section> quote(JobView job, PaperWords words) {
        List<Block> blocks = new ArrayList<>();
        for (Slip slip : job.worked("price")) {
            Map<String, JobView.Answer> asked = slip.questions();
            if (asked.containsKey("customer")) {
                blocks.add(Paragraph.of(
                        words.text("paper.quote-for", asked.get("customer").value())));
            }
            String described =
                    asked.containsKey("described") ? asked.get("described").value() : job.project();
            blocks.add(Table.builder()
                    .column(words.text("quote.what"))
                    .numbers(words.text("price.pieces"))
                    .numbers(words.text("quote.each"))
                    .numbers(words.text("quote.together"))
                    .row(described, asked.get("pieces").value(), shown(slip, "paid"), shown(slip, "order"))
                    .build());
            Table.Builder terms = Table.builder().column("").column("");
            if (number(slip, "tax") > 0) {
                terms.row(words.text("quote.tax"), words.text("paper.quote-tax-in-each", shown(slip, "tax")));
            }
            if (number(slip, "deposit") > 0) {
                terms.row(words.text("price.answer.deposit"), shown(slip, "deposit"));
                terms.row(words.text("price.answer.rest"), shown(slip, "rest"));
            }
            terms.row(
                    words.text("price.ready"),
                    asked.containsKey("ready") ? asked.get("ready").value() : words.text("paper.quote-to-be-agreed"));
            if (asked.containsKey("valid-until")) {
                terms.row(
                        words.text("price.valid-until"),
                        asked.get("valid-until").value());
            }
            blocks.add(terms.build());
            blocks.add(Paragraph.quiet(words.text("paper.quote-leather")));
            blocks.add(NoteSpace.of(words.text("paper.quote-agreed"), LINES_TO_SIGN));
        }
        return paper("quote", words, blocks);
    }

    private static Table values(Slip slip, String... keys) {
        return values(Table.builder(), slip, keys);
    }

    private static Table captioned(Slip slip, String... keys) {
        return values(Table.builder().caption(slip.title()), slip, keys);
    }

    private static Table values(Table.Builder table, Slip slip, String... keys) {
        table.column("").numbers("");
        for (String key : keys) {
            if (slip.answers().containsKey(key)) {
                table.row(slip.answers().get(key).label(), shown(slip, key));
            }
        }
        return table.build();
    }

    /** None where the calculator has no such answer. */
    private static List<JobView.Row> rows(Slip slip, String key) {
        return slip.answers().containsKey(key) ? slip.answers().get(key).rows() : List.of();
    }

    private static String pieces(Slip slip) {
        return slip.questions().get("pieces").value();
    }

    private static double number(Slip slip, String key) {
        return slip.answers().get(key).number().orElse(0);
    }

    private static String shown(Slip slip, String key) {
        return slip.answers().get(key).inline();
    }

    private static String value(JobView.Row row, String key) {
        return row.cells().containsKey(key) ? row.cells().get(key).inline() : "";
    }
}
