package org.hidewright.edges;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;

/** What is told where finishing can hurt somebody. */
final class Cautions {
    static final NoticeKind DYES_AND_FINISHES = NoticeKind.caution("dyes-and-finishes");
    static final NoticeKind SOLVENT_FIRE = NoticeKind.caution("solvent-fire");
    static final NoticeKind LEATHER_DUST = NoticeKind.caution("leather-dust");
    static final NoticeKind BLADE = NoticeKind.caution("blade");
    static final NoticeKind CHROME_HEAT = NoticeKind.caution("chrome-heat");
    static final NoticeKind LASER_CHAR = NoticeKind.caution("laser-char");
    static final NoticeKind LASER_NEVER = NoticeKind.caution("laser-never");

    static final List<NoticeKind> KINDS =
            List.of(DYES_AND_FINISHES, SOLVENT_FIRE, LEATHER_DUST, BLADE, CHROME_HEAT, LASER_CHAR, LASER_NEVER);

    private Cautions() {}

    static List<Notice> of(Schedule schedule, Tannage tannage, DyeKind dye, boolean laser) {
        List<Notice> notices = new ArrayList<>();
        boolean dyed = schedule.has(Work.DYE);
        if (dyed || schedule.has(Work.PAINT) || schedule.has(Work.SEAL) || schedule.has(Work.BURNISH)) {
            notices.add(DYES_AND_FINISHES.with());
        }
        if (dyed && dye.burnsEasily() || schedule.has(Work.CEMENT_TURN) || schedule.has(Work.GLUE_AND_STITCH)) {
            notices.add(SOLVENT_FIRE.with());
        }
        if (schedule.all().stream().anyMatch(step -> step.task().work().makesDust())) {
            notices.add(LEATHER_DUST.with());
        }
        if (schedule.all().stream().anyMatch(step -> step.task().work().needsABlade())) {
            notices.add(BLADE.with());
        }
        if (tannage.holdsChrome()) {
            notices.add(CHROME_HEAT.with());
        }
        if (laser) {
            notices.add(tannage == Tannage.BONDED ? LASER_NEVER.with() : LASER_CHAR.with());
        }
        return notices;
    }
}
