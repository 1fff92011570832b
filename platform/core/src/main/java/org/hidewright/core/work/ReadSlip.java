package org.hidewright.core.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Remark;

/**
 * A slip read against its calculator's questions, before any link is followed.
 *
 * @param slip as written
 * @param installed its calculator; empty when it is dormant
 * @param entries by question key; empty when dormant
 * @param remarks what was said while reading
 * @param sources ids of the slips it links to
 */
record ReadSlip(
        Slip slip,
        Optional<Installed> installed,
        Map<String, Entry.Answered> entries,
        List<Remark> remarks,
        Set<String> sources) {}
