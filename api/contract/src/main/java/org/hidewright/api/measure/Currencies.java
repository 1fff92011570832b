package org.hidewright.api.measure;

import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/**
 * The currencies of ISO 4217 that the running Java knows, as units of money; those most asked for stand first. Read only
 * when money is asked for.
 *
 * <p>A sign that several currencies share means the one it is best known for: {@code $} the US dollar; the others are
 * written by their codes.
 */
final class Currencies {
    private static final Map<String, String> SIGNS = Map.of("EUR", "€", "USD", "$", "GBP", "£");
    private static final List<String> FIRST = List.of("EUR", "USD", "GBP");

    static final List<Unit> ALL = Currency.getAvailableCurrencies().stream()
            .filter(currency -> currency.getDefaultFractionDigits() >= 0)
            .map(Currency::getCurrencyCode)
            .sorted(Comparator.comparingInt((String code) -> FIRST.contains(code) ? FIRST.indexOf(code) : FIRST.size())
                    .thenComparing(Comparator.naturalOrder()))
            .map(Currencies::unit)
            .toList();

    private Currencies() {}

    private static Unit unit(String code) {
        String sign = SIGNS.get(code);
        return sign == null ? Unit.of(Dimension.MONEY, code, 1, 1) : Unit.of(Dimension.MONEY, code, 1, 1, sign);
    }

    static boolean isSign(char sign) {
        return SIGNS.containsValue(String.valueOf(sign));
    }
}
