package org.hidewright.core.catalogue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.standard.StandardTables;

/** What is installed. Looking a calculator up is what loads it, so a start pays only for what is used. */
public interface Catalogue {
    /** The calculator with this id, if it is installed and sound. */
    Optional<Installed> find(String id);

    /** Ids of all calculators, in alphabetical order. */
    List<String> ids();

    /** The bundle that would bring a calculator which is not among these, if it is here all the same. */
    default Optional<Away> away(String id) {
        return Optional.empty();
    }

    /** The tables of the workshop: those every workshop has, and those that bundles bring or extend. */
    Tables tables();

    /** What adds sections to the job card, in the order of the sections. */
    List<Contributor> contributors();

    /** What is wrong with calculators that were looked at and cannot be used. */
    List<Remark> problems();

    /** A catalogue of given calculators, all from one bundle. */
    static Catalogue of(String bundle, DeclaredCalculator... calculators) {
        Map<String, Installed> byId = new LinkedHashMap<>();
        Arrays.stream(calculators)
                .map(calculator -> new Installed(calculator, bundle))
                .forEach(installed -> byId.put(installed.id(), installed));
        return new Catalogue() {
            private Tables tables;

            @Override
            public Optional<Installed> find(String id) {
                return Optional.ofNullable(byId.get(id));
            }

            @Override
            public List<String> ids() {
                return byId.keySet().stream().sorted().toList();
            }

            @Override
            public synchronized Tables tables() {
                tables = tables == null ? Tables.of(StandardTables.brought()) : tables;
                return tables;
            }

            @Override
            public List<Contributor> contributors() {
                return List.of();
            }

            @Override
            public List<Remark> problems() {
                return List.of();
            }
        };
    }
}
