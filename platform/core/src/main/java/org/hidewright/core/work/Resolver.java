package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Range;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Bound;
import org.hidewright.core.wording.InUnit;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Entry.Answered;

/** Turns entries into values: follows links, takes one value of each range, checks limits. */
final class Resolver {
    /** Relative; some thousand times what a double is exact to. */
    private static final double LAST_BITS = 1e-12;

    private final String slip;
    private final Function<Link, LinkEnd> links;
    private final RangePick pick;
    private final List<Remark> remarks = new ArrayList<>();
    private boolean complete = true;

    /**
     * What a link leads to.
     *
     * @param value the value; empty when there is none
     * @param answer the declared answer or column the value stands under; null when there is none
     * @param trouble why there is no value; null when there is one
     */
    record LinkEnd(Optional<Object> value, Answer answer, Notice trouble) {
        static LinkEnd none(Notice trouble) {
            return new LinkEnd(Optional.empty(), null, trouble);
        }
    }

    Resolver(String slip, Function<Link, LinkEnd> links, RangePick pick) {
        this.slip = slip;
        this.links = links;
        this.pick = pick;
    }

    List<Remark> remarks() {
        return remarks;
    }

    /** The values of all questions; empty when one of them has none. */
    Optional<Values> resolve(List<Question> questions, Map<String, Answered> entries) {
        Map<String, Object> values = values(questions, entries, "");
        return complete ? Optional.of(Values.of(values)) : Optional.empty();
    }

    private Map<String, Object> values(List<Question> questions, Map<String, Answered> entries, String path) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Question question : questions) {
            Answered answered = entries.get(question.key());
            String at = path.isEmpty() ? question.key() : path + "." + question.key();
            value(question, answered.entry(), at, answered.place())
                    .ifPresent(value -> values.put(question.key(), value));
        }
        return values;
    }

    private Optional<Object> value(Question question, Entry entry, String path, Place place) {
        return value(question, entry, path, path, place);
    }

    /** The value of an entry; what was typed as a range is picked under the path of its own. */
    private Optional<Object> value(Question question, Entry entry, String path, String ownPath, Place place) {
        if (entry instanceof Entry.Quantity quantity) {
            return number(question, quantity.typed(), path, ownPath, place);
        } else if (entry instanceof Entry.TwoSides sides) {
            return size(question, sides, path, ownPath, place);
        } else if (entry instanceof Entry.Several several) {
            return several(question, several, path, ownPath, place);
        } else if (entry instanceof Entry.Stocked stocked) {
            return value(question, stocked.entry(), path, TypedRanges.stocked(stocked), place);
        } else if (entry instanceof Entry.Plain plain) {
            return Optional.of(plain.value());
        } else if (entry instanceof Entry.Linked linked) {
            return linked(question, linked, path);
        } else if (entry instanceof Entry.Group group) {
            return Optional.of(Values.of(values(question.questions(), group.answers(), path)));
        } else if (entry instanceof Entry.OneOf oneOf) {
            return Optional.of(chosen(question, oneOf, path, ""));
        } else if (entry instanceof Entry.Table table) {
            return Optional.of(
                    table.rows().stream().map(row -> row(question, row, path)).toList());
        } else if (entry instanceof Entry.Bad) {
            complete = false;
        }
        return Optional.empty();
    }

    private Object row(Question question, Entry.Row row, String path) {
        String rowPath = path + "[" + row.id() + "]";
        if (row.entry() instanceof Entry.OneOf oneOf) {
            return chosen(question, oneOf, rowPath, row.id());
        }
        if (row.entry() instanceof Entry.Group group) {
            return Values.row(row.id(), values(question.questions(), group.answers(), rowPath));
        }
        complete = false;
        return Values.row(row.id(), Map.of());
    }

    private Chosen chosen(Question question, Entry.OneOf oneOf, String path, String rowId) {
        Variant variant = question.variants().stream()
                .filter(candidate -> candidate.key().equals(oneOf.variant()))
                .findFirst()
                .orElseThrow();
        return Chosen.of(
                oneOf.variant(),
                Values.row(rowId, values(variant.questions(), oneOf.answers(), path + "." + oneOf.variant())));
    }

    private Optional<Object> number(Question question, Typed typed, String path, String ownPath, Place place) {
        double value = pick.value(ownPath, typed.range());
        if (!typed.range().isExact() && pick == RangePick.NOMINAL) {
            say(
                    ProjectNotices.MIDPOINT.with(
                            typed.text(),
                            typed.dimension() == Dimension.MONEY
                                    ? Money.of(value, typed.unit())
                                    : told(question, typed.dimension(), value)),
                    path,
                    place);
        }
        bareFraction(typed, path, place);
        return withinLimits(question, limited(typed.dimension()), tried(typed.range(), value), path, place)
                ? Optional.of(inKind(question.itemKind(), typed.unit(), value))
                : Optional.empty();
    }

    /** A fraction is how inches are written; without a unit it was hardly meant in what the question counts in. */
    private void bareFraction(Typed typed, String path, Place place) {
        boolean metric = typed.unit().equals(Units.MM) || typed.unit().equals(Units.CM);
        if (metric && !typed.unitTyped() && typed.text().indexOf('/') >= 0 && pick == RangePick.NOMINAL) {
            say(ProjectNotices.BARE_FRACTION.with(typed.text(), typed.unit().symbol()), path, place);
        }
    }

    /** What is held against the limits: the whole range where it is worked at its nominal value, else the value tried. */
    private Range tried(Range range, double value) {
        return pick == RangePick.NOMINAL ? range : Range.exact(value);
    }

    private Optional<Object> size(Question question, Entry.TwoSides sides, String path, String ownPath, Place place) {
        Range width = sides.typed().width().range();
        Range height = sides.typed().height().range();
        Size picked = Size.of(
                Length.ofMm(pick.value(TypedRanges.width(ownPath), width)),
                Length.ofMm(pick.value(TypedRanges.height(ownPath), height)));
        boolean good = withinLimits(
                        question, Dimension.LENGTH, tried(width, picked.width().mm()), path, place)
                & withinLimits(
                        question,
                        Dimension.LENGTH,
                        tried(height, picked.height().mm()),
                        path,
                        place);
        bareFraction(sides.typed().width(), path, place);
        bareFraction(sides.typed().height(), path, place);
        if (pick == RangePick.NOMINAL && !(width.isExact() && height.isExact())) {
            say(ProjectNotices.MIDPOINT.with(sides.typed().text(), picked), path, place);
        }
        return good ? Optional.of(picked) : Optional.empty();
    }

    private Optional<Object> several(
            Question question, Entry.Several several, String path, String ownPath, Place place) {
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < several.items().size(); i++) {
            value(question, several.items().get(i), path, TypedRanges.item(ownPath, i), place)
                    .ifPresent(values::add);
        }
        return values.size() == several.items().size() ? Optional.of(List.copyOf(values)) : Optional.empty();
    }

    private Optional<Object> linked(Question question, Entry.Linked linked, String path) {
        LinkEnd end = links.apply(linked.link());
        if (end.trouble() != null) {
            return refuse(end.trouble(), path, linked.place());
        }
        if (!LinkFit.fits(question, end.answer(), end.value().orElseThrow())) {
            return refuse(
                    ProjectNotices.LINK_WRONG_KIND.with(linked.link().toString(), kind(end), question.kind()),
                    path,
                    linked.place());
        }
        Object value = snapped(question, LinkFit.converted(question, end.value().orElseThrow()));
        return linkedWithinLimits(question, value, path, linked.place()) ? Optional.of(value) : Optional.empty();
    }

    /** What the value is: of a whole column a list, though its answer is declared for one row. */
    private static Kind kind(LinkEnd end) {
        return end.value().orElseThrow() instanceof List<?>
                ? Kind.LIST
                : end.answer().kind();
    }

    /** The value put on a limit that it passes by no more than the last bits of a sum or a conversion. */
    private static Object snapped(Question question, Object value) {
        if (value instanceof List<?> items) {
            return items.stream().map(item -> snapped(question, item)).toList();
        } else if (value instanceof Quantity<?> quantity) {
            return Quantities.of(quantity.dimension(), snapped(question, quantity.base()));
        } else if (value instanceof Size size) {
            return Size.of(
                    Length.ofMm(snapped(question, size.width().mm())),
                    Length.ofMm(snapped(question, size.height().mm())));
        }
        return value instanceof Double number ? (Object) snapped(question, number.doubleValue()) : value;
    }

    private static double snapped(Question question, double base) {
        double low = question.min().orElse(base);
        double high = question.max().orElse(base);
        double nearest = Math.min(Math.max(base, low), high);
        return Math.abs(base - nearest) <= LAST_BITS * Math.abs(nearest) ? nearest : base;
    }

    private boolean linkedWithinLimits(Question question, Object value, String path, Place place) {
        if (value instanceof List<?> items) {
            return items.stream().allMatch(item -> linkedWithinLimits(question, item, path, place));
        } else if (value instanceof Quantity<?> quantity) {
            return withinLimits(question, quantity.dimension(), Range.exact(quantity.base()), path, place);
        } else if (value instanceof Size size) {
            return withinLimits(
                            question, Dimension.LENGTH, Range.exact(size.width().mm()), path, place)
                    & withinLimits(
                            question,
                            Dimension.LENGTH,
                            Range.exact(size.height().mm()),
                            path,
                            place);
        } else if (value instanceof Money money) {
            Range amount = Range.exact(money.amount().doubleValue());
            return withinLimits(question, limited(Dimension.MONEY), amount, path, place);
        } else if (value instanceof Number number) {
            return withinLimits(question, Dimension.NUMBER, Range.exact(number.doubleValue()), path, place);
        }
        return true;
    }

    private boolean withinLimits(Question question, Dimension dimension, Range range, String path, Place place) {
        double value = range.nominal();
        if (question.min().isPresent() && value < question.min().getAsDouble()) {
            refuse(
                    ProjectNotices.BELOW_LIMIT.with(
                            told(question, dimension, value),
                            limit(question, dimension, question.min().getAsDouble(), Rounding.UP)),
                    path,
                    place);
            return false;
        }
        if (question.max().isPresent() && value > question.max().getAsDouble()) {
            refuse(
                    ProjectNotices.ABOVE_LIMIT.with(
                            told(question, dimension, value),
                            limit(question, dimension, question.max().getAsDouble(), Rounding.DOWN)),
                    path,
                    place);
            return false;
        }
        boolean endsOutside = question.min().isPresent()
                        && range.low() < question.min().getAsDouble()
                || question.max().isPresent() && range.high() > question.max().getAsDouble();
        if (endsOutside) {
            say(
                    ProjectNotices.RANGE_PAST_LIMIT.with(
                            told(question, dimension, range.low()), told(question, dimension, range.high())),
                    path,
                    place);
        }
        question.usual()
                .filter(usual -> isOutside(question, usual, dimension, value))
                .ifPresent(usual -> say(
                        ProjectNotices.UNUSUAL.with(
                                told(question, dimension, value),
                                told(question, dimension, usual.low()),
                                told(question, dimension, usual.high())),
                        path,
                        place));
        return true;
    }

    /** Whether a value lies outside of what is usual, and reads so. */
    static boolean isOutside(Question question, Range usual, Dimension dimension, double value) {
        return !usual.contains(value)
                && !alike(question, dimension, value, value < usual.low() ? usual.low() : usual.high());
    }

    /** The unit a number is read in where the question has one, as in per cent; quantities find theirs by themselves. */
    private static Optional<Unit> readIn(Question question, Dimension dimension) {
        return question.unit()
                .filter(unit -> dimension == Dimension.NUMBER && unit.dimension() == Dimension.NUMBER)
                .filter(unit -> !unit.equals(Units.ONE));
    }

    /** A value as the question is read. */
    static Object told(Question question, Dimension dimension, double base) {
        return readIn(question, dimension)
                .<Object>map(unit -> new InUnit(base, unit))
                .orElseGet(() -> Quantities.of(dimension, base));
    }

    private static Bound limit(Question question, Dimension dimension, double base, Rounding inward) {
        return readIn(question, dimension)
                .map(unit -> new Bound(base, unit, inward))
                .orElseGet(() -> Bound.of(dimension, base, inward));
    }

    private static boolean alike(Question question, Dimension dimension, double value, double limit) {
        return readIn(question, dimension)
                .map(unit -> Wording.alike(unit, value, limit))
                .orElseGet(() -> Wording.alike(dimension, value, limit));
    }

    private Optional<Object> refuse(Notice notice, String path, Place place) {
        complete = false;
        say(notice, path, place);
        return Optional.empty();
    }

    private void say(Notice notice, String path, Place place) {
        remarks.add(
                Remark.of(notice, CoreTexts.TEXTS).onSlip(slip).atQuestion(path).atPlace(place));
    }

    private static Object inKind(Kind kind, Unit unit, double base) {
        return kind == Kind.COUNT
                ? (Object) (int) Math.rint(base)
                : inUnit(kind.dimension().orElseThrow(), unit, base);
    }

    /** The limits of money are numbers, whatever the currency. */
    private static Dimension limited(Dimension dimension) {
        return dimension == Dimension.MONEY ? Dimension.NUMBER : dimension;
    }

    /** A value of a dimension; of money, in the currency that is the unit. */
    private static Object inUnit(Dimension dimension, Unit unit, double base) {
        return dimension == Dimension.MONEY ? Money.of(base, unit) : Quantities.of(dimension, base);
    }
}
