package org.hidewright.api.calculator;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names a {@link Calculator}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Calculates {
    /** The id by which projects and commands know it: lower-case words joined by hyphens. Never changed once published. */
    String value();

    /** Version of the declaration; raised when a question changes its key or meaning. */
    int version() default 1;
}
