package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.Worth;

/**
 * A value of a template as a formula, so that the working shows each allowance with its numbers. Names are written with low
 * lines, since a hyphen between two symbols of a formula takes one from the other.
 */
record Explained(NamedValue.Worked value) {
    /** Where its author says nothing; the kind is the least that can be said of it: nobody looked it up. */
    static final Source UNSAID = Source.of("template-author", Source.Kind.COMMON_PRACTICE);

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(?:[.-][a-z][a-z0-9]*)*");

    /** Whether there is something to show: an amount that hangs on others. */
    static boolean isWorth(Expression expression) {
        return !expression.names().isEmpty();
    }

    Formula formula() {
        Expression expression = value.expression();
        String right = NAME.matcher(expression.text())
                .replaceAll(
                        found -> expression.names().contains(found.group()) ? symbol(found.group()) : found.group());
        return Formula.of(
                "value-" + value.name(), symbol(value.name()) + " = " + right.replace('*', '·'), value.source());
    }

    /** Its name in words, for the working. */
    String title() {
        String words = value.name().replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A name as a symbol of a formula. */
    static String symbol(String name) {
        return name.replace('-', '_').replace('.', '_');
    }

    void tell(Map<String, Worth> names, Working working) {
        if (!(names.get(value.name()) instanceof Worth.Amount amount) || !isShown(amount)) {
            return;
        }
        List<Object> put = new ArrayList<>();
        for (String name : value.expression().names()) {
            if (names.get(name) instanceof Worth.Amount given && isShown(given)) {
                put.add(symbol(name));
                put.add(Worths.shown(given));
            }
        }
        working.step(formula(), Worths.shown(amount), put.toArray());
    }

    private static boolean isShown(Worth.Amount amount) {
        return amount.measure().dimension().isPresent();
    }
}
