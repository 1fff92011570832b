package org.hidewright.core.store;

import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.wording.Remark;

/** A file that could not be opened or saved. The message is for who writes programs, the remarks are for the maker. */
public final class FileTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Remark> remarks;

    public FileTrouble(List<Remark> remarks, Throwable cause) {
        super(remarks.toString(), cause);
        this.remarks = List.copyOf(remarks);
    }

    FileTrouble(Notice notice, Throwable cause) {
        this(List.of(Remark.of(notice, CoreTexts.TEXTS)), cause);
    }

    /** What to tell the maker, the trouble itself first; never empty. */
    public List<Remark> remarks() {
        return remarks;
    }
}
