package org.hidewright.straps;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.ReadSection.Bar;
import org.hidewright.straps.ReadSection.Fold;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.Stretch;
import org.hidewright.straps.geometry.Teardrop;

/** Settles the numbers of each section: thickness, inside radius, neutral line; or says why it cannot be. */
final class SectionReader {
    static final NoticeKind NO_SECTIONS = NoticeKind.stop("strap-no-sections");
    static final NoticeKind DUPLICATE_ID = NoticeKind.stop("strap-duplicate-id");
    static final NoticeKind UNKNOWN_SECTION = NoticeKind.stop("strap-unknown-section");
    static final NoticeKind NOT_A_BEND = NoticeKind.stop("strap-not-a-bend");
    static final NoticeKind BENDS_IN_A_CIRCLE = NoticeKind.stop("strap-bends-in-a-circle");
    static final NoticeKind FLAT_BAR_TURN = NoticeKind.stop("strap-flat-bar-turn");
    static final NoticeKind CORNER_TOO_LARGE = NoticeKind.stop("strap-corner-too-large");
    static final NoticeKind THICKER_THAN_STRAP = NoticeKind.stop("strap-thicker-than-strap");
    static final NoticeKind CONTACT_TOO_NEAR = NoticeKind.stop("contact-too-near");
    static final List<NoticeKind> KINDS = List.of(
            NO_SECTIONS,
            DUPLICATE_ID,
            UNKNOWN_SECTION,
            NOT_A_BEND,
            BENDS_IN_A_CIRCLE,
            FLAT_BAR_TURN,
            CORNER_TOO_LARGE,
            THICKER_THAN_STRAP,
            CONTACT_TOO_NEAR);

    /** Stands for the section where there is only one turn-back. */
    static final Phrase THIS_TURN_BACK = Phrase.of("this-turn-back");

    private static final double QUARTER_TURN = Math.PI / 2;

    private final StrapLayout.Strap strap;
    private final Map<String, Section> byId = new LinkedHashMap<>();
    private final List<Notice> stops = new ArrayList<>();

    SectionReader(StrapLayout.Strap strap) {
        this.strap = strap;
    }

    List<Notice> stops() {
        return stops;
    }

    /** The sections; to be used only if there are no stops. */
    List<ReadSection> read() {
        if (strap.sections().isEmpty()) {
            stops.add(NO_SECTIONS.at("sections"));
        }
        for (Section section : strap.sections()) {
            if (byId.put(section.id(), section) != null) {
                stops.add(DUPLICATE_ID.at(StrapLayout.place(section), section.id()));
            }
        }
        List<ReadSection> read = new ArrayList<>();
        for (Section section : strap.sections()) {
            checkThickness(section);
            if (stops.isEmpty()) {
                section(section).ifPresent(read::add);
            }
        }
        return stops.isEmpty() ? LegsApart.lay(read) : read;
    }

    /** The notice about an id that no section has, the nearest one named. */
    static Notice unknown(String place, String typed, List<String> known) {
        return UNKNOWN_SECTION.at(place, typed, Nearest.to(typed, known).orElseGet(() -> String.join(", ", known)));
    }

    private List<String> ids() {
        return strap.sections().stream().map(Section::id).toList();
    }

    private void checkThickness(Section section) {
        double most = strap.thickness().mm();
        List<Length> thicknesses = new ArrayList<>();
        section.thickness().ifPresent(thicknesses::add);
        Optional<Preparation> preparation = Optional.empty();
        if (section instanceof Section.Bend bend) {
            preparation = Optional.of(bend.preparation());
        } else if (section instanceof Section.TurnBack turnBack) {
            preparation = Optional.of(turnBack.preparation());
            turnBack.thicknessBefore().ifPresent(thicknesses::add);
            turnBack.thicknessAfter().ifPresent(thicknesses::add);
        }
        preparation.ifPresent(prepared -> {
            if (prepared instanceof Preparation.Skived skived) {
                thicknesses.add(skived.thicknessLeft());
            } else if (prepared instanceof Preparation.Grooved grooved) {
                thicknesses.add(grooved.web());
            }
        });
        thicknesses.stream()
                .filter(thickness -> thickness.mm() > most + 1e-9)
                .findFirst()
                .ifPresent(thick -> stops.add(
                        THICKER_THAN_STRAP.at(StrapLayout.place(section), section.id(), thick, strap.thickness())));
    }

    private Optional<ReadSection> section(Section section) {
        if (section instanceof Section.Straight straight) {
            return Optional.of(run(section, straight.length(), straight.ramp()));
        }
        if (section instanceof Section.Overlap overlap) {
            return Optional.of(run(section, overlap.length(), overlap.ramp()));
        }
        if (section instanceof Section.Bend bend) {
            return bend(bend);
        }
        return turnBack((Section.TurnBack) section);
    }

    private ReadSection run(Section section, Length length, Length ramp) {
        Piece piece = new Piece.Run(section.id(), length.mm(), thickness(section, new Preparation.None()));
        return new ReadSection(section, piece, ramp.mm(), Optional.empty());
    }

    /** Thickness in a section: what a skive leaves, else its own, else the strap's. */
    private double thickness(Section section, Preparation preparation) {
        if (preparation instanceof Preparation.Skived skived) {
            return skived.thicknessLeft().mm();
        }
        return section.thickness().orElse(strap.thickness()).mm();
    }

    private static double ramp(Preparation preparation) {
        return preparation instanceof Preparation.Skived skived ? skived.ramp().mm() : 0;
    }

    private FoldRule rule(Optional<Double> own, Section section, Preparation preparation) {
        Optional<Double> measured = own.or(strap::measuredNeutralLine);
        boolean bend = section instanceof Section.Bend;
        return FoldRule.of(
                measured,
                bend ? ((Section.Bend) section).outside() : ((Section.TurnBack) section).outside(),
                preparation,
                thickness(section, preparation));
    }

    private Optional<ReadSection> bend(Section.Bend bend) {
        Optional<Double> radius = insideRadius(bend, new HashSet<>());
        if (radius.isEmpty()) {
            return Optional.empty();
        }
        double thickness = thickness(bend, bend.preparation());
        FoldRule rule = rule(bend.measuredNeutralLine(), bend, bend.preparation());
        Optional<Core.FlatBar> flatBar = flatBar(bend);
        List<Stretch> stretches = new ArrayList<>();
        if (flatBar.isPresent()) {
            roundFlatBar(
                    bend,
                    flatBar.get(),
                    new Stretch.Arc(QUARTER_TURN, radius.get(), thickness, rule.k(), bend.outside()),
                    stretches);
        } else {
            stretches.add(new Stretch.Arc(bend.turn().radians(), radius.get(), thickness, rule.k(), bend.outside()));
        }
        Fold fold = new Fold(
                bend.outside(), bend.preparation(), bend.turn().radians(), radius.get(), thickness, rule, bar(bend));
        return stops.isEmpty()
                ? Optional.of(new ReadSection(
                        bend, new Piece.Bend(bend.id(), stretches), ramp(bend.preparation()), Optional.of(fold)))
                : Optional.empty();
    }

    private static Optional<Bar> bar(Section.Bend bend) {
        if (bend.core() instanceof Core.RoundBar round) {
            return Optional.of(Bar.round(round.diameter().mm()));
        }
        return bend.core() instanceof Core.FlatBar flat
                ? Optional.of(new Bar(
                        flat.barThickness().mm(),
                        flat.barWidth().mm(),
                        flat.cornerRadius().mm()))
                : Optional.empty();
    }

    /** A corner at each quarter turn; between them the thickness of the bar, then its width, and so on. */
    private void roundFlatBar(Section.Bend bend, Core.FlatBar bar, Stretch.Arc corner, List<Stretch> stretches) {
        double corners = bend.turn().radians() / QUARTER_TURN;
        if (Math.abs(corners - Math.rint(corners)) > 1e-9) {
            stops.add(FLAT_BAR_TURN.at(StrapLayout.place(bend), bend.id(), bend.turn()));
            return;
        }
        double smaller = Math.min(bar.barThickness().mm(), bar.barWidth().mm());
        if (2 * bar.cornerRadius().mm() > smaller + 1e-9) {
            stops.add(
                    CORNER_TOO_LARGE.at(StrapLayout.place(bend), bend.id(), bar.cornerRadius(), Length.ofMm(smaller)));
            return;
        }
        for (int i = 0; i < Math.rint(corners); i++) {
            if (i > 0) {
                double side = (i % 2 == 1 ? bar.barThickness() : bar.barWidth()).mm();
                stretches.add(new Stretch.Level(
                        Math.max(0, side - 2 * bar.cornerRadius().mm()), corner.thicknessMm()));
            }
            stretches.add(corner);
        }
    }

    /** The inside radius; for a bend round another that bend’s radius, its thickness and the glue. */
    private Optional<Double> insideRadius(Section.Bend bend, Set<String> outer) {
        Core core = bend.core();
        if (core instanceof Core.AroundBend around) {
            if (!outer.add(bend.id())) {
                stops.add(BENDS_IN_A_CIRCLE.at(StrapLayout.place(bend), bend.id()));
                return Optional.empty();
            }
            return inner(bend, around)
                    .flatMap(inner -> insideRadius(inner, outer)
                            .map(r -> r
                                    + thickness(inner, inner.preparation())
                                    + strap.glueGap().mm()));
        }
        if (core instanceof Core.OwnLayers own) {
            return Optional.of(ownLayers(own));
        }
        if (core instanceof Core.RoundBar bar) {
            return Optional.of(bar.diameter().mm() / 2);
        }
        return Optional.of(
                core instanceof Core.FlatBar flat
                        ? flat.cornerRadius().mm()
                        : ((Core.Radius) core).insideRadius().mm());
    }

    /** Half of the layers with a glue line between each two faces; folded flat there is no room inside at all. */
    private double ownLayers(Core.OwnLayers own) {
        if (own.insideRadius().isPresent() || own.layers() == 0) {
            return own.insideRadius().orElse(Length.ZERO).mm();
        }
        double layer = own.layerThickness().orElse(strap.thickness()).mm();
        return (own.layers() * layer + (own.layers() + 1) * strap.glueGap().mm()) / 2;
    }

    private Optional<Section.Bend> inner(Section.Bend bend, Core.AroundBend around) {
        Section inner = byId.get(around.bend());
        if (inner instanceof Section.Bend found) {
            return Optional.of(found);
        }
        String place = StrapLayout.place(bend);
        stops.add(
                inner == null ? unknown(place, around.bend(), ids()) : NOT_A_BEND.at(place, around.bend(), bend.id()));
        return Optional.empty();
    }

    /** The flat bar a bend goes round, itself or inside other bends. */
    private Optional<Core.FlatBar> flatBar(Section.Bend bend) {
        Section.Bend innermost = bend;
        while (innermost.core() instanceof Core.AroundBend around) {
            innermost = (Section.Bend) byId.get(around.bend());
        }
        return innermost.core() instanceof Core.FlatBar flat ? Optional.of(flat) : Optional.empty();
    }

    /** A leg is no thicker than the section that it goes on in: one that is skived is skived to the middle of the bar. */
    private double leg(Section.TurnBack section, int side, double thickness) {
        int neighbour = strap.sections().indexOf(section) + side;
        if (neighbour < 0 || neighbour >= strap.sections().size()) {
            return thickness;
        }
        Section beside = strap.sections().get(neighbour);
        return beside instanceof Section.Straight || beside instanceof Section.Overlap
                ? Math.min(thickness, thickness(beside, new Preparation.None()))
                : thickness;
    }

    private Optional<ReadSection> turnBack(Section.TurnBack section) {
        double thickness = thickness(section, section.preparation());
        double before = section.thicknessBefore().map(Length::mm).orElseGet(() -> leg(section, -1, thickness));
        double after = section.thicknessAfter().map(Length::mm).orElseGet(() -> leg(section, 1, thickness));
        double bar = section.barDiameter().mm();
        double contact = section.contact().mm();
        FoldRule rule = rule(section.measuredNeutralLine(), section, section.preparation());
        if (!Teardrop.fits(bar, contact, Math.max(before, after), rule.k())
                || !Teardrop.fits(bar, contact, Math.min(before, after), rule.k())) {
            stops.add(CONTACT_TOO_NEAR.at(
                    StrapLayout.place(section),
                    section.id(),
                    section.contact(),
                    Length.ofMm(bar / 2 + rule.k() * Math.max(before, after))));
            return Optional.empty();
        }
        Piece piece = new Piece.TurnBack(section.id(), bar, contact, before, after, rule.k(), section.outside());
        Fold fold = new Fold(
                section.outside(),
                section.preparation(),
                Math.PI,
                bar / 2,
                Math.max(before, after),
                rule,
                Optional.of(Bar.round(bar)));
        return Optional.of(new ReadSection(section, piece, ramp(section.preparation()), Optional.of(fold)));
    }
}
