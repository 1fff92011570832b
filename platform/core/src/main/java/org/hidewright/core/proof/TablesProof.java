package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.brought.BroughtCheck;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.WorkshopNotices;

/** Looks the text of tables over as it is looked over when it is installed, and tells the rest too. */
public final class TablesProof {
    private TablesProof() {}

    /**
     * Looks a text over.
     *
     * @param bundle symbolic name of the bundle that carries it
     * @param installed what its rows may have columns of
     */
    public static Proof of(String text, String bundle, Tables installed) {
        TablesReader.Result read = TablesReader.read(text, bundle);
        List<Remark> remarks = new ArrayList<>(read.remarks());
        if (read.tables().isEmpty()) {
            return new Proof(remarks, 0);
        }
        BroughtTables brought = read.tables().get();
        remarks.addAll(
                BroughtCheck.of(brought, installed.and(brought.columns())).remarks());
        brought.columns().forEach(columns -> taken(columns, installed, remarks));
        return new Proof(remarks, brought.count());
    }

    /** A column that another bundle has brought already is left out once both are there. */
    private static void taken(Brought columns, Tables installed, List<Remark> remarks) {
        String id = columns.table().id();
        installed
                .find(id)
                .ifPresent(table -> columns.table().columns().stream()
                        .flatMap(question -> table.column(question.key()).stream())
                        .filter(there -> !there.bundle().equals(columns.bundle()))
                        .forEach(there -> remarks.add(Remark.of(
                                WorkshopNotices.COLUMN_TAKEN.with(columns.bundle(), there.key(), id, there.bundle()),
                                CoreTexts.TEXTS))));
    }

    /** What is installed and the columns that a bundle brings itself. */
    public static Tables with(Tables installed, Collection<String> texts, String bundle) {
        Tables all = installed;
        for (String text : texts) {
            all = all.and(TablesReader.read(text, bundle)
                    .tables()
                    .map(BroughtTables::columns)
                    .orElse(List.of()));
        }
        return all;
    }
}
