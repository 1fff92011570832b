package org.hidewright.core.expression;

/**
 * One sign, number, name or word of an expression.
 *
 * @param text as written
 * @param worth of a number with its unit, or of a word; else null
 * @param from where it begins in the whole text, from 0
 */
record Symbol(Type type, String text, Worth worth, int from) {
    enum Type {
        AMOUNT,
        WORD,
        NAME,
        SIGN,
        END
    }

    boolean is(String sign) {
        return (type == Type.SIGN || type == Type.NAME) && text.equals(sign);
    }
}
