package org.hidewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Turning;

/** The pieces that are cut for an item, or for several, of one leather or of all. */
final class PiecesToCut {
    static final int MOST = 3000;
    /** Millimetres by which a gauge may be off. */
    private static final double GAUGED = 0.05;

    private final Cut cut;
    private final Regions regions;
    private final List<Notice> notices;
    private final Map<String, PartRule> rules = new HashMap<>();

    PiecesToCut(Cut cut, Regions regions, List<Notice> notices) {
        this.cut = cut;
        this.regions = regions;
        this.notices = notices;
        cut.rules().orElse(List.of()).forEach(rule -> rules.put(rule.id(), rule));
    }

    List<CutPiece> pieces() throws Refusal {
        List<Part> parts = parts();
        long count = parts.stream().mapToLong(Part::pieces).sum() * cut.pieces();
        if (count > MOST) {
            throw new Refusal(LayoutNotices.TOO_MANY.at("pieces", count, MOST));
        }
        rulesThere();
        oneThickness(parts);
        List<CutPiece> pieces = new ArrayList<>();
        for (Part part : parts) {
            add(part, pieces);
        }
        return pieces;
    }

    private List<Part> parts() throws Refusal {
        List<String> named = Regions.named(cut.leather()).toList();
        List<Part> parts = cut.item().parts().stream()
                .filter(part -> part.pieces() > 0)
                .filter(part -> named.isEmpty() || named.stream().anyMatch(part::isCalled))
                .toList();
        for (String name : named) {
            if (parts.stream().noneMatch(part -> part.isCalled(name))) {
                throw new Refusal(LayoutNotices.NO_SUCH_LEATHER.at("leather", name, known()));
            }
        }
        return parts;
    }

    /** One hide has one thickness: the first part that needs another is told. */
    private void oneThickness(List<Part> parts) {
        List<Part> known =
                parts.stream().filter(part -> part.thickness().isPresent()).toList();
        known.stream()
                .filter(part -> Math.abs(thickness(part) - thickness(known.get(0))) > GAUGED)
                .findFirst()
                .ifPresent(other -> notices.add(LayoutNotices.TWO_THICKNESSES.at(
                        "leather",
                        known.get(0).id(),
                        Length.ofMm(thickness(known.get(0))),
                        other.id(),
                        Length.ofMm(thickness(other)))));
    }

    private static double thickness(Part part) {
        return part.thickness().orElseThrow();
    }

    private String known() {
        return cut.item().parts().stream()
                .map(Part::id)
                .collect(Collectors.collectingAndThen(
                        Collectors.toCollection(TreeSet::new), ids -> String.join(", ", ids)));
    }

    private void rulesThere() {
        for (String id : rules.keySet().stream().sorted().toList()) {
            if (cut.item().part(id).isEmpty()) {
                notices.add(LayoutNotices.NO_SUCH_PART.at("rules[" + id + "]", id, known()));
            }
            directionThere(id);
            notDrawn(rules.get(id).neverOn())
                    .forEach(name -> notices.add(
                            LayoutNotices.NO_SUCH_REGION.at("rules[" + id + "].never-on", name, drawnRegions())));
            notDrawn(rules.get(id).onlyOn())
                    .forEach(name -> notices.add(LayoutNotices.ONLY_NOWHERE.at(
                            "rules[" + id + "].only-on",
                            name,
                            id,
                            drawnRegions(),
                            rules.get(id).onlyOn().orElseThrow())));
            Regions.named(rules.get(id).onlyOn())
                    .filter(name -> Regions.named(rules.get(id).neverOn()).anyMatch(name::equals))
                    .forEach(name ->
                            notices.add(LayoutNotices.AGAINST_ITSELF.at("rules[" + id + "].never-on", id, name)));
        }
    }

    private void directionThere(String id) {
        boolean asked = rules.get(id)
                .lies()
                .filter(lies -> lies == Lies.ALONG_BACKBONE || lies == Lies.ACROSS_BACKBONE)
                .isPresent();
        boolean without =
                cut.item().part(id).filter(part -> part.direction().isEmpty()).isPresent();
        if (asked && without) {
            notices.add(LayoutNotices.NO_DIRECTION.at("rules[" + id + "].lies", id));
        }
    }

    private Stream<String> notDrawn(Optional<String> names) {
        return Regions.named(names).filter(name -> !regions.names().contains(name));
    }

    private String drawnRegions() {
        return regions.names().isEmpty() ? "–" : String.join(", ", regions.names());
    }

    private void add(Part part, List<CutPiece> pieces) {
        Form drawn = new Form(part, false);
        Form over = part.mirrored() > 0 ? new Form(part, true) : drawn;
        int all = part.pieces() * cut.pieces();
        for (int number = 0; number < all; number++) {
            boolean turnedOver = number % part.pieces() >= part.count();
            String id = all == 1 ? part.id() : part.id() + "-" + (number + 1);
            pieces.add((turnedOver ? over : drawn).piece(id));
        }
    }

    /** What all pieces of a part that lie the same way up have in common. */
    private final class Form {
        private final Part part;
        private final Motion toMiddle;
        private final Curve outline;
        private final Outline exact;
        private final Outline grown;
        private final Outline tight;
        private final Turning turning;
        private final long avoids;
        private final List<Inner> inner;

        Form(Part part, boolean turnedOver) {
            this.part = part;
            Curve asDrawn = largest(PartShape.cutOutline(part));
            Box box = asDrawn.bounds();
            Point middle = Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
            Motion middled = Motion.shift(-middle.x(), -middle.y());
            toMiddle = turnedOver ? middled.then(Motion.mirror(Point.of(0, 0), Point.of(0, 1))) : middled;
            outline = Region.of(asDrawn.moved(toMiddle)).outline();
            exact = Flattened.of(outline);
            double gap = cut.gap().mm();
            grown = grown(gap / 2 + 2 * Flattened.OFF);
            // what is curved never lies edge to edge
            boolean straight = outline.segments().stream().allMatch(Segment.Line.class::isInstance);
            tight = !straight ? grown : gap == 0 ? exact : grown(gap / 2);
            turning = turning(turnedOver);
            Leather leather = rule().flatMap(PartRule::leather).orElse(Leather.FAULTLESS);
            long never = rule().map(regions::avoids).orElse(0L);
            double rim = rule().flatMap(PartRule::hiddenRim).map(Length::mm).orElse(0.0);
            boolean seenInside = rim > 0 && leather == Leather.FAULTLESS;
            avoids = never | Regions.avoids(seenInside ? Leather.SOUND : leather);
            inner = seenInside ? seenInside(rim) : List.of();
        }

        private Outline grown(double round) {
            return Flattened.of(largest(Region.of(outline).grown(round, Corner.POINTED).stream()
                    .map(Region::outline)
                    .toList()));
        }

        /** What is seen of a part whose rim is hidden. */
        private List<Inner> seenInside(double rim) {
            return Region.of(outline).shrunk(rim, Corner.POINTED).stream()
                    .map(seen -> new Inner(Flattened.of(seen.outline()), Regions.avoids(Leather.FAULTLESS)))
                    .toList();
        }

        private Optional<PartRule> rule() {
            return Optional.ofNullable(rules.get(part.id()));
        }

        private Turning turning(boolean turnedOver) {
            Lies lies = rule().flatMap(PartRule::lies).orElse(Lies.ALONG_BACKBONE);
            // whoever asks for a direction means one: that from left to right, and is told so
            boolean asked = rule().flatMap(PartRule::lies).isPresent();
            double slack = Math.toDegrees(
                    rule().flatMap(PartRule::within).orElse(cut.within()).radians());
            double drawn = Math.toDegrees(part.direction().orElse(0));
            double direction = turnedOver ? 180 - drawn : drawn;
            boolean heeded = lies == Lies.AS_DRAWN
                    || lies != Lies.AT_ANY_ANGLE && (part.direction().isPresent() || asked);
            if (!heeded) {
                return Turning.free();
            }
            double turn = switch (lies) {
                case ALONG_BACKBONE -> -direction;
                case ACROSS_BACKBONE -> 90 - direction;
                default -> 0;
            };
            return Turning.about(List.of(turn, turn + 180), slack);
        }

        CutPiece piece(String id) {
            return new CutPiece(
                    id,
                    part,
                    toMiddle,
                    outline,
                    new Piece(id, exact, turning, avoids, inner),
                    new Piece(id, grown, turning, avoids, inner),
                    new Piece(id, tight, turning.quarters().orElse(turning), avoids, inner));
        }
    }

    private static Curve largest(List<Curve> curves) {
        return curves.stream()
                .max(Comparator.comparingDouble(curve -> Math.abs(curve.area())))
                .orElseThrow();
    }
}
