package org.hidewright.core.template;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Dimension;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Measure;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.expression.Worth;
import org.hidewright.core.json.JsonOut;

/**
 * What a drawing asks of the calculator that draws, with places that expressions fill. Worked, it is a tree of maps, lists and
 * texts as it would stand in a project file.
 */
sealed interface Sketch {
    /** The number of a row, from 1, where a row is drawn several times. */
    String NTH = "nth";

    /** As it is worked where names are worth something. */
    Object drawn(Map<String, Worth> names, Rows rows) throws ExpressionTrouble;

    /** How many rows there may be altogether. */
    final class Rows {
        static final int MOST = 500;
        private int left = MOST;

        /** Whether there is room for another. */
        boolean one() {
            return --left >= 0;
        }

        boolean wereTooMany() {
            return left < 0;
        }
    }

    /** JSON that stands as it is written. */
    record Fixed(String json) implements Sketch {
        @Override
        public Object drawn(Map<String, Worth> names, Rows rows) {
            return new JsonOut.Raw(json);
        }
    }

    /** One expression, as it would be typed: {@code 12.5 mm}. */
    record Worked(Expression expression) implements Sketch {
        private static final Map<Dimension, String> UNITS = Map.of(
                Dimension.LENGTH, "mm",
                Dimension.ANGLE, "rad",
                Dimension.AREA, "mm²",
                Dimension.MASS, "g",
                Dimension.DURATION, "s",
                Dimension.NUMBER, "");

        @Override
        public Object drawn(Map<String, Worth> names, Rows rows) throws ExpressionTrouble {
            Worth worth = expression.worth(names);
            if (worth instanceof Worth.Truth truth) {
                return truth.yes() ? "yes" : "no";
            }
            return worth instanceof Worth.Amount amount ? typed(amount) : ((Worth.Word) worth).text();
        }

        private static String typed(Worth.Amount amount) {
            Dimension dimension = amount.measure().dimension().orElseThrow();
            String unit = UNITS.get(dimension);
            return plain(amount.inBase(dimension)) + (unit.isEmpty() ? "" : " " + unit);
        }

        /** Whether it can be written so that it is read again as what it is. */
        static boolean canBeTyped(Sort sort) {
            return !(sort instanceof Measure measure)
                    || measure.dimension().filter(UNITS::containsKey).isPresent();
        }
    }

    /** A text with amounts in it, lengths in millimetres: {@code M 0 0 H {width}}. */
    record Filled(List<Object> pieces) implements Sketch {
        @Override
        public Object drawn(Map<String, Worth> names, Rows rows) throws ExpressionTrouble {
            StringBuilder text = new StringBuilder();
            for (Object piece : pieces) {
                if (piece instanceof Expression expression) {
                    Worth worth = expression.worth(names);
                    text.append(
                            worth instanceof Worth.Amount amount
                                    ? plain(amount.number())
                                    : ((Worth.Word) worth).text());
                } else {
                    text.append(piece);
                }
            }
            return text.toString();
        }

        /** Yes and no are no text. */
        static boolean canStand(Sort sort) {
            return sort != Sort.Plain.TRUTH;
        }
    }

    /**
     * Members by key.
     *
     * @param when whether it is drawn at all
     * @param each how often, in a list
     */
    record Group(Map<String, Sketch> members, Optional<Expression> when, Optional<Expression> each) implements Sketch {
        @Override
        public Object drawn(Map<String, Worth> names, Rows rows) throws ExpressionTrouble {
            Map<String, Object> drawn = new LinkedHashMap<>();
            for (Map.Entry<String, Sketch> member : members.entrySet()) {
                if (!(member.getValue() instanceof Group group) || group.isDrawn(names)) {
                    drawn.put(member.getKey(), member.getValue().drawn(names, rows));
                }
            }
            return drawn;
        }

        boolean isDrawn(Map<String, Worth> names) throws ExpressionTrouble {
            return when.isEmpty() || ((Worth.Truth) when.get().worth(names)).yes();
        }
    }

    /** Members one after the other. */
    record Several(List<Sketch> items) implements Sketch {
        @Override
        public Object drawn(Map<String, Worth> names, Rows rows) throws ExpressionTrouble {
            List<Object> drawn = new ArrayList<>();
            for (Sketch item : items) {
                if (item instanceof Group group) {
                    repeat(group, names, rows, drawn);
                } else {
                    drawn.add(item.drawn(names, rows));
                }
            }
            return drawn;
        }

        private static void repeat(Group group, Map<String, Worth> names, Rows rows, List<Object> drawn)
                throws ExpressionTrouble {
            long times = group.each().isEmpty()
                    ? 1
                    : Math.round(((Worth.Amount) group.each().get().worth(names)).number());
            for (long nth = 1; nth <= times && rows.one(); nth++) {
                Map<String, Worth> inRow = new HashMap<>(names);
                inRow.put(NTH, Worth.number(nth));
                if (group.isDrawn(inRow)) {
                    drawn.add(group.drawn(inRow, rows));
                }
            }
        }
    }

    /** The names that can stand in a drawing. */
    static Map<String, Sort> names(Map<String, Sort> names) {
        Map<String, Sort> all = new HashMap<>(names);
        all.put(NTH, Measure.NUMBER);
        return all;
    }

    /** Without an exponent, and without the last bits of a sum. */
    private static String plain(double number) {
        return new BigDecimal(number)
                .setScale(12, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
