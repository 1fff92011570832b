package org.hidewright.costing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.costing.ItemCost.FittingPrice;
import org.hidewright.costing.ItemCost.NoPriceLine;
import org.hidewright.costing.ItemCost.OtherLeather;
import org.hidewright.costing.ItemCost.Whole;
import org.hidewright.costing.PieceCost.FittingUsed;
import org.hidewright.costing.PieceCost.LeatherUsed;
import org.hidewright.costing.PieceCost.ThreadUsed;

/**
 * Leather, fittings and thread of one piece with their prices. A row that names parts or fittings has those; what no row
 * names goes to the leather that was asked first, and to the first price of fittings that names none.
 */
final class ItemMaterials {
    static final Formula OF_PART = Formula.of("part-leather", "B = k · a", Origins.ARITHMETIC);
    static final Formula LEATHER = Formula.of("item-leather", "N = Σ(B)", Origins.ARITHMETIC);
    static final List<Formula> FORMULAS =
            List.of(OF_PART, LEATHER, ItemThread.RATIO, ItemThread.ROW, ItemThread.BY_HABIT, ItemThread.ALL);

    private static final NoticeKind NO_SUCH_PART = NoticeKind.check("item-no-such-part");
    private static final NoticeKind NO_SUCH_FITTING = NoticeKind.check("item-no-such-fitting");
    private static final NoticeKind UNPRICED_FITTINGS = NoticeKind.check("item-fittings-unpriced");
    private static final NoticeKind UNPRICED_THREAD = NoticeKind.check("item-thread-unpriced");
    static final List<NoticeKind> NOTICES =
            List.of(NO_SUCH_PART, NO_SUCH_FITTING, UNPRICED_FITTINGS, UNPRICED_THREAD, ItemThread.HABIT);

    /** The row of what was asked first. */
    private static final String FIRST = "";

    private final Whole whole;
    private final Item item;
    private final List<Notice> notices;
    private final List<LeatherUsed> leather;
    private final List<FittingUsed> hardware;
    private final List<Fitting> unpriced = new ArrayList<>();
    private final Length thread;

    /** Tells what has no price, and what is named and is not there. */
    ItemMaterials(Whole whole, Working working, List<Notice> notices) {
        this.whole = whole;
        this.item = whole.item();
        this.notices = notices;
        this.leather = leatherOf(working);
        this.hardware = hardwareOf();
        this.thread = ItemThread.of(item, whole.tail(), working, notices);
        if (thread.mm() > 0 && !threadHasPrice()) {
            notices.add(UNPRICED_THREAD.at(whole.threadPrice().isEmpty() ? "thread-price" : "thread-length", thread));
        }
    }

    List<LeatherUsed> leather() {
        return leather;
    }

    List<FittingUsed> hardware() {
        return hardware;
    }

    List<ThreadUsed> thread() {
        return threadHasPrice()
                ? List.of(new ThreadUsed(
                        FIRST,
                        thread,
                        whole.threadLength().get(),
                        whole.threadPrice().get()))
                : List.of();
    }

    private boolean threadHasPrice() {
        return whole.threadLength().isPresent() && whole.threadPrice().isPresent();
    }

    List<NoPriceLine> withoutPrice() {
        return WithoutPrice.of(unpriced, threadHasPrice() ? Length.ofMm(0) : thread, whole.pieces(), whole.spoilage());
    }

    Area leatherInPiece() {
        return leather.stream().map(LeatherUsed::used).reduce(Area.ofMm2(0), Area::plus);
    }

    Length threadInPiece() {
        return thread;
    }

    private List<LeatherUsed> leatherOf(Working working) {
        List<OtherLeather> others = whole.otherLeather().orElse(List.of());
        Map<String, Double> mm2 = new LinkedHashMap<>();
        mm2.put(FIRST, 0.0);
        others.forEach(row -> mm2.put(row.id(), 0.0));
        for (Part part : item.parts()) {
            String row = others.stream()
                    .filter(other -> isOf(part, other))
                    .findFirst()
                    .map(OtherLeather::id)
                    .orElse(FIRST);
            double each = PartShape.cutArea(part);
            working.step(OF_PART, Area.ofMm2(each * part.pieces()), "k", part.pieces(), "a", Area.ofMm2(each));
            mm2.merge(row, each * part.pieces(), Double::sum);
        }
        others.forEach(this::partsThere);
        List<LeatherUsed> used = new ArrayList<>();
        used.add(new LeatherUsed(
                FIRST,
                Area.ofMm2(mm2.get(FIRST)),
                whole.waste(),
                whole.wasteOf(),
                whole.leatherArea(),
                whole.leatherPrice()));
        others.forEach(row -> used.add(new LeatherUsed(
                row.id(),
                Area.ofMm2(mm2.get(row.id())),
                row.waste().orElse(whole.waste()),
                whole.wasteOf(),
                row.area(),
                row.price())));
        used.removeIf(row -> row.used().base() == 0);
        used.forEach(row -> working.step(LEATHER, row.used()));
        return List.copyOf(used);
    }

    private static boolean isOf(Part part, OtherLeather row) {
        return named(row.parts()).anyMatch(part::isCalled);
    }

    private void partsThere(OtherLeather row) {
        List<String> unknown = named(row.parts())
                .filter(name -> item.parts().stream().noneMatch(part -> part.isCalled(name)))
                .toList();
        if (!unknown.isEmpty()) {
            notices.add(NO_SUCH_PART.at(
                    "other-leather[" + row.id() + "].parts",
                    String.join(", ", unknown),
                    sorted(item.parts().stream().map(Part::id))));
        }
    }

    private List<FittingUsed> hardwareOf() {
        List<FittingPrice> prices = whole.hardware().orElse(List.of());
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Fitting fitting : item.fittings()) {
            Optional<FittingPrice> price = prices.stream()
                    .filter(row -> namesOf(row).contains(fitting.id()))
                    .findFirst()
                    .or(() -> prices.stream()
                            .filter(row -> namesOf(row).isEmpty())
                            .findFirst());
            price.ifPresentOrElse(row -> counts.merge(row.id(), 1, Integer::sum), () -> unpriced.add(fitting));
        }
        prices.forEach(this::fittingsThere);
        if (!unpriced.isEmpty()) {
            notices.add(UNPRICED_FITTINGS.at(
                    "hardware",
                    unpriced.size(),
                    unpriced.stream().map(Fitting::id).collect(Collectors.joining(", "))));
        }
        return prices.stream()
                .filter(row -> counts.containsKey(row.id()))
                .map(row -> new FittingUsed(row.id(), counts.get(row.id()), row.price()))
                .toList();
    }

    private static List<String> namesOf(FittingPrice row) {
        return named(row.fittings().orElse("")).toList();
    }

    private void fittingsThere(FittingPrice row) {
        List<String> unknown = namesOf(row).stream()
                .filter(name -> item.fittings().stream()
                        .noneMatch(fitting -> fitting.id().equals(name)))
                .toList();
        if (!unknown.isEmpty()) {
            notices.add(NO_SUCH_FITTING.at(
                    "hardware[" + row.id() + "].fittings",
                    String.join(", ", unknown),
                    sorted(item.fittings().stream().map(Fitting::id))));
        }
    }

    private static String sorted(Stream<String> ids) {
        return ids.collect(
                Collectors.collectingAndThen(Collectors.toCollection(TreeSet::new), known -> String.join(", ", known)));
    }

    /** Names with semicolons between them, as steps of an item name what they are done on. */
    private static Stream<String> named(String text) {
        return Stream.of(text.split(";")).map(String::strip).filter(name -> !name.isEmpty());
    }
}
