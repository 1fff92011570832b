package org.hidewright.core.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Remark;

/**
 * A slip read against its calculator's questions, before any link is followed.
 *
 * @param slip as written
 * @param installed its calculator; empty when it is dormant
 * @param entries by question key; empty when dormant
 * @param remarks what was said while reading
 * @param sources the slips it links to by id, each with the question that does
 * @param stock what it takes from the workshop
 */
record ReadSlip(
        Slip slip,
        Optional<Installed> installed,
        Map<String, Entry.Answered> entries,
        List<Remark> remarks,
        Map<String, Links.Foot> sources,
        List<StockUse> stock) {
    /** A slip whose calculator is at fault before it was even called. */
    static ReadSlip broken(Slip slip, Installed installed, RuntimeException fault) {
        Remark remark = Remark.of(
                        ProjectNotices.BROKEN.with(
                                installed.id(), installed.bundle(), String.valueOf(fault.getMessage())),
                        CoreTexts.TEXTS)
                .onSlip(slip.id())
                .atPlace(slip.node().place());
        return new ReadSlip(slip, Optional.of(installed), Map.of(), List.of(remark), Map.of(), List.of());
    }

    boolean broken() {
        return remarks.stream().anyMatch(remark -> remark.key().equals("notice." + ProjectNotices.BROKEN.key()));
    }

    /** Something about the question that is linked to another slip. */
    Remark atLinkTo(String source, Notice notice) {
        Links.Foot foot = sources.get(source);
        return Remark.of(notice, CoreTexts.TEXTS)
                .onSlip(slip.id())
                .atQuestion(foot.path())
                .atPlace(foot.place());
    }
}
