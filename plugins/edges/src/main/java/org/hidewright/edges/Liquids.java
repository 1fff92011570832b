package org.hidewright.edges;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;

/** How much of each liquid a schedule takes. */
final class Liquids {
    static final Formula NEEDED = Formula.of("liquid-needed", "V = S · q · (1 + l)", Origins.ARITHMETIC);

    private Liquids() {}

    /** The area each liquid covers, every coat counted. */
    static Map<Liquid, Area> covered(List<EdgePlan> edges, Optional<Faces> faces) {
        Map<Liquid, Area> areas = new EnumMap<>(Liquid.class);
        for (EdgePlan plan : edges) {
            Edge edge = plan.edge();
            for (Task task : plan.tasks()) {
                Area face = edge.face();
                switch (task.work()) {
                    case DYE -> areas.merge(Liquid.DYE, face, Area::plus);
                    case BURNISH -> areas.merge(Liquid.BURNISHING, face, Area::plus);
                    case PAINT -> areas.merge(Liquid.EDGE_PAINT, face, Area::plus);
                    case WAX -> areas.merge(Liquid.WAX, face, Area::plus);
                    case CEMENT_TURN -> areas.merge(Liquid.GLUE, cemented(edge), Area::plus);
                    default -> {
                        // nothing out of a bottle
                    }
                }
            }
        }
        faces.ifPresent(all -> {
            add(areas, Liquid.DYE, all.together().times(all.dyeCoats()));
            add(areas, Liquid.SEALER, all.together().times(all.sealerCoats()));
        });
        return areas;
    }

    private static void add(Map<Liquid, Area> areas, Liquid liquid, Area area) {
        if (area.mm2() > 0) {
            areas.merge(liquid, area, Area::plus);
        }
    }

    /** Both what is turned and what it is turned on to. */
    private static Area cemented(Edge edge) {
        EdgeFinish.Turned turned = (EdgeFinish.Turned) edge.finish();
        return Area.ofMm2(2 * edge.together().mm() * turned.turnedBack().mm());
    }

    /**
     * Millilitres for an area.
     *
     * @param mlPerSquareMetre what a coat takes
     * @param lost share that stays in brush, cloth and pot, on top
     */
    static Volume needed(Area area, double mlPerSquareMetre, double lost, Working working) {
        Volume needed = Volume.ofMl(area.in(Units.M2) * mlPerSquareMetre * (1 + lost));
        working.step(NEEDED, needed, "S", area, "q", mlPerSquareMetre, "l", lost);
        return needed;
    }
}
