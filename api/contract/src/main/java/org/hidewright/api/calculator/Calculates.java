package org.hidewright.api.calculator;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.osgi.service.component.annotations.ComponentPropertyType;

/**
 * Names a {@link Calculator}.
 *
 * <p>On a Declarative Services component it is also a property of the service, so that the host knows the id before any
 * class of the calculator is loaded.
 */
@ComponentPropertyType
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Calculates {
    /** Put before the element names to make the service properties. */
    String PREFIX_ = "calculator.";

    /** The service property that holds the id: a component property of one value is named by its annotation. */
    String ID_PROPERTY = PREFIX_ + "calculates";

    /** The id by which projects and commands know it: lower-case words joined by hyphens. Never changed once published. */
    String value();

    /** Version of the declaration; raised when a question changes its key or meaning. */
    int version() default 1;
}
