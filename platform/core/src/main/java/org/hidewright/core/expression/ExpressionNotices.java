package org.hidewright.core.expression;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with an expression. */
public final class ExpressionNotices {
    public static final NoticeKind EXPRESSION_UNEXPECTED = NoticeKind.stop("expression-unexpected");
    public static final NoticeKind EXPRESSION_UNKNOWN_NAME = NoticeKind.stop("expression-unknown-name");
    public static final NoticeKind EXPRESSION_UNKNOWN_NAME_NEAREST = NoticeKind.stop("expression-unknown-name-nearest");
    public static final NoticeKind EXPRESSION_NO_SUCH_WORD = NoticeKind.stop("expression-no-such-word");
    public static final NoticeKind EXPRESSION_NO_SUCH_WORD_NEAREST = NoticeKind.stop("expression-no-such-word-nearest");
    public static final NoticeKind EXPRESSION_MISSING_IS = NoticeKind.stop("expression-missing-is");
    public static final NoticeKind EXPRESSION_UNKNOWN_UNIT = NoticeKind.stop("expression-unknown-unit");
    public static final NoticeKind EXPRESSION_NOT_ALIKE = NoticeKind.stop("expression-not-alike");
    public static final NoticeKind EXPRESSION_WRONG_SORT = NoticeKind.stop("expression-wrong-sort");
    public static final NoticeKind EXPRESSION_NO_ROOT = NoticeKind.stop("expression-no-root");
    public static final NoticeKind EXPRESSION_HOW_MANY = NoticeKind.stop("expression-how-many");
    public static final NoticeKind EXPRESSION_NO_POWER = NoticeKind.stop("expression-no-power");
    public static final NoticeKind EXPRESSION_TOO_LONG = NoticeKind.stop("expression-too-long");
    public static final NoticeKind EXPRESSION_TOO_DEEP = NoticeKind.stop("expression-too-deep");
    public static final NoticeKind EXPRESSION_DIVIDES_BY_NOTHING = NoticeKind.stop("expression-divides-by-nothing");
    public static final NoticeKind EXPRESSION_NO_AMOUNT = NoticeKind.stop("expression-no-amount");

    private ExpressionNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                EXPRESSION_UNEXPECTED,
                EXPRESSION_UNKNOWN_NAME,
                EXPRESSION_UNKNOWN_NAME_NEAREST,
                EXPRESSION_NO_SUCH_WORD,
                EXPRESSION_NO_SUCH_WORD_NEAREST,
                EXPRESSION_MISSING_IS,
                EXPRESSION_UNKNOWN_UNIT,
                EXPRESSION_NOT_ALIKE,
                EXPRESSION_WRONG_SORT,
                EXPRESSION_NO_ROOT,
                EXPRESSION_HOW_MANY,
                EXPRESSION_NO_POWER,
                EXPRESSION_TOO_LONG,
                EXPRESSION_TOO_DEEP,
                EXPRESSION_DIVIDES_BY_NOTHING,
                EXPRESSION_NO_AMOUNT);
    }
}
