package org.hidewright.api.calculator;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares one question: a component of a question record.
 *
 * <p>The component's type sets the kind: {@code Length}, {@code Angle}, {@code Area}, {@code Mass}, {@code Density},
 * {@code Volume}, {@code Duration}, {@code Money} (limits are plain numbers, of whatever currency), {@code LocalDate},
 * {@code Size}, {@code int} (count), {@code double} (ratio), {@code boolean} (flag), {@code String} (text), an enum
 * (choice), {@code List} of any of the quantities (typed as {@code 3 mm; 4 mm}), a record (a group of questions), a
 * sealed interface of records (one of several variants), {@code List} of a record or of variants (rows). Wrapped in
 * {@code Optional} the question may stay unanswered.
 *
 * <p>The key is the component's name in lower-case words joined by hyphens. Values are written as a maker would type
 * them; bare numbers take {@link #unit()}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Asked {
    /** Symbol of the unit that a bare number is read in and that is shown; empty for kinds without unit. */
    String unit() default "";

    /** Hard lower limit, itself allowed; below it the calculator is not called. Empty: none. */
    String min() default "";

    /** Hard upper limit, itself allowed. Empty: none. */
    String max() default "";

    /** Usual limits as a range, {@code 1-4 mm}; outside them the host adds a note. Empty: none. */
    String usual() default "";

    /** The answer taken when nothing is typed. For groups, rows and variants JSON as in a project file. */
    String preset() default "";

    /** A typical answer where no preset makes sense, used in documentation and contract tests. */
    String example() default "";

    /**
     * The answer of another calculator that suits this question, {@code held-thing.width}: where that calculator is installed, a
     * guided start offers it and links the question to it. Of a group whose questions have answers of one calculator that suit
     * them: with which of its ways to answer a guided start begins there, {@code held-thing.sheets}. Of a text in a table beside an item:
     * {@code item.leather}, where it names leathers as the item calls them, or its parts; a guided start fills a row for each
     * further leather from the workshop. Empty: none.
     */
    String from() default "";

    /**
     * The column of a workshop’s table that suits this question, {@code leather.thickness}: where the maker has rows in it, a
     * guided start offers them and links the question to the one chosen. Of single values alone. Empty: none.
     */
    String stock() default "";

    /**
     * A small drawing of what is measured, {@code belt}: the file {@code pictures/belt.json} beside the calculator, or beside the
     * record of the question where that is of another package. With {@code belt#size} the shapes of it that are {@code of}
     * {@code size} are shown, and of the others those that are of nothing alone, so that questions can share a picture. Empty:
     * none.
     */
    String picture() default "";
}
