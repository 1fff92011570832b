package org.hidewright.testkit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.workshop.WorkshopTable;

/** What is wrong with the columns of a table and their texts, in sentences. */
final class TableTexts {
    private final WorkshopTable<?> table;

    TableTexts(WorkshopTable<?> table) {
        this.table = table;
    }

    /** Why the columns cannot be declared. */
    List<String> undeclared() {
        try {
            return DeclaredTable.of(table).columns().isEmpty()
                    ? List.of(table.getClass().getName() + " has no columns. Give its record components with @Asked.")
                    : List.of();
        } catch (InvalidDeclaration e) {
            return List.of(e.getMessage());
        }
    }

    /** A table that is there already has its title; a new one has both. */
    List<String> missing() {
        DeclaredTable declared = DeclaredTable.of(table);
        Set<String> there = there();
        Set<String> missing = new TreeSet<>(ofColumns(declared));
        if (there.contains(declared.titleKey()) || there.contains(declared.purposeKey())) {
            missing.addAll(List.of(declared.titleKey(), declared.purposeKey()));
        }
        missing.removeAll(there);
        return missing.stream()
                .map(key -> "The text " + key + " is missing. Write it in messages.properties.")
                .toList();
    }

    /** Texts of no column. */
    List<String> idle() {
        DeclaredTable declared = DeclaredTable.of(table);
        Set<String> idle = new TreeSet<>(there());
        idle.removeAll(ofColumns(declared));
        idle.removeAll(List.of(declared.titleKey(), declared.purposeKey()));
        return idle.stream()
                .map(key -> key + " is shown nowhere. Take it out of messages.properties, or see whether its key is"
                        + " right.")
                .toList();
    }

    private Set<String> there() {
        return Bundle.texts(table.getClass()).stringPropertyNames();
    }

    private static List<String> ofColumns(DeclaredTable declared) {
        return declared.columns().stream().flatMap(TableTexts::of).toList();
    }

    private static Stream<String> of(Question column) {
        return Stream.concat(
                Stream.of(column.labelKey(), column.helpKey()),
                column.options().stream().map(option -> option.labelKey()));
    }
}
