package org.hidewright.api.calculator;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Declares one answer: a component of an answer record.
 *
 * <p>Types: the kinds of {@link Asked} without variants, {@link Phrase}, and
 * {@code org.hidewright.api.drawing.Drawing}. Answers are exact; rounding happens once, where they are shown.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Answered {
    /** Symbol of the unit it is shown in. */
    String unit() default "";

    /**
     * Whether the unit is the point of the answer, as where one thickness is told in ounces, millimetres and inches: it
     * is then shown in it also where the maker works in another system.
     */
    boolean keepUnit() default false;

    /** The step it is shown to on paper in metric, for example {@code 0.1 mm}; empty: three decimals. */
    String step() default "";

    /** The direction rounding is safe in when shown. */
    Rounding round() default Rounding.NEAREST;

    /** Key of the formula or source the answer comes from; the host prints its source. */
    String by() default "";

    /** Whether this is an answer the maker looks for first: it is shown largest. */
    boolean lead() default false;

    /**
     * Of rows, the table of the workshop that they can be put away into, such as {@code hides} for what is left of leather that was cut: each
     * column has the key of one of the table. They are for the workshop, and not shown on paper; so a text in them may be
     * longer than a page, as the outline of a hide is.
     */
    String stock() default "";

    /** Whether it is also written as files for machines that cut, in true size; of drawings in millimetres alone. */
    boolean asFile() default false;
}
