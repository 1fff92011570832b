package org.hidewright.api.workshop;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * Declares the columns of one table of the workshop by a record, each component annotated with
 * {@link org.hidewright.api.calculator.Asked}.
 *
 * <p>The class carries {@link Tabulates} and is published as a service. Where a table of that id is there already, its
 * columns are added to it; of two columns with one key the one that came first stays. Every row has a stable id beside its
 * columns, which is not declared.
 *
 * <p>Columns hold single values or lists of them, none holds other columns. A column that a row may leave empty is
 * {@code Optional}. Texts live in {@code messages.properties} beside the class: {@code ID.title} and {@code ID.purpose} of a
 * new table, {@code ID.column} and {@code ID.column.help} of each column.
 *
 * @param <R> the record
 */
@ConsumerType
public interface WorkshopTable<R extends Record> {}
