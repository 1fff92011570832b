package org.hidewright.api.workshop;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.osgi.service.component.annotations.ComponentPropertyType;

/** Names the table of a {@link WorkshopTable}. */
@ComponentPropertyType
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Tabulates {
    /** Put before the element names to make the service properties. */
    String PREFIX_ = "workshop.";

    /** The id by which workshop files and links know the table: lower-case words joined by hyphens. */
    String value();
}
