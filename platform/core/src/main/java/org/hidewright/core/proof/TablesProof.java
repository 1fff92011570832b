package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.core.brought.BroughtCheck;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;

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
        return new Proof(remarks, brought.count());
    }
}
