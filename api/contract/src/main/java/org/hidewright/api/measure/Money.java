package org.hidewright.api.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Objects;

/**
 * An amount of money: a decimal number and its currency. It may be negative, and it is not rounded before it is shown.
 *
 * <p>Immutable. Amounts of two currencies have no sum and no ratio, since no rate is known here. Two are equal when number
 * and currency are; {@code 1.5} and {@code 1.50} are the same number.
 */
public final class Money implements Comparable<Money> {
    private final BigDecimal amount;
    private final Unit currency;

    private Money(BigDecimal amount, Unit currency) {
        this.amount = Objects.requireNonNull(amount, "amount");
        this.currency = Quantity.checked(currency, Dimension.MONEY);
    }

    /**
     * An amount.
     *
     * @param currency as {@link Units#currency} gives it
     * @throws IllegalArgumentException if the unit is no currency
     */
    public static Money of(BigDecimal amount, Unit currency) {
        return new Money(amount, currency);
    }

    /**
     * An amount of which the number is typed or worked out in binary; its shortest decimal form is taken.
     *
     * @throws ArithmeticException if the number is not finite
     * @throws IllegalArgumentException if the unit is no currency
     */
    public static Money of(double amount, Unit currency) {
        return new Money(decimal(amount), currency);
    }

    private static BigDecimal decimal(double number) {
        if (!Double.isFinite(number)) {
            throw new ArithmeticException("an amount of money must be a finite number, not " + number);
        }
        return BigDecimal.valueOf(number);
    }

    /** The number, as exactly as it was reckoned. */
    public BigDecimal amount() {
        return amount;
    }

    /** Its currency, of ISO 4217. */
    public Unit currency() {
        return currency;
    }

    /** @throws IllegalArgumentException if the other is in another currency */
    public Money plus(Money other) {
        return new Money(amount.add(same(other).amount), currency);
    }

    /** @throws IllegalArgumentException if the other is in another currency */
    public Money minus(Money other) {
        return new Money(amount.subtract(same(other).amount), currency);
    }

    /**
     * The amount taken a number of times, to 34 digits.
     *
     * @throws ArithmeticException if the factor is not finite
     */
    public Money times(double factor) {
        return new Money(amount.multiply(decimal(factor), MathContext.DECIMAL128), currency);
    }

    /**
     * The plain ratio of this amount to another.
     *
     * @throws IllegalArgumentException if the other is in another currency
     * @throws ArithmeticException if the other is nothing
     */
    public double per(Money other) {
        return amount.divide(same(other).amount, MathContext.DECIMAL64).doubleValue();
    }

    /** The amount in whole coins of the smallest kind, halves to the even one, as ISO 4217 counts its decimals. */
    public Money rounded() {
        int digits = Currency.getInstance(currency.symbol()).getDefaultFractionDigits();
        return new Money(amount.setScale(digits, RoundingMode.HALF_EVEN), currency);
    }

    private Money same(Money other) {
        if (!other.currency.equals(currency)) {
            throw new IllegalArgumentException(other + " and " + this + " are of two currencies");
        }
        return other;
    }

    /** @throws IllegalArgumentException if the other is in another currency */
    @Override
    public int compareTo(Money other) {
        return amount.compareTo(same(other).amount);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Money that && amount.compareTo(that.amount) == 0 && currency.equals(that.currency);
    }

    @Override
    public int hashCode() {
        return 31 * amount.stripTrailingZeros().hashCode() + currency.hashCode();
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
