package org.hidewright.core.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;

/**
 * The hide that somebody has drawn: of all closed lines the largest; every other one is a flaw or a region of it, by its name.
 *
 * <p>What cannot be one is told and left out.
 */
public final class HideOutlines {
    /** Less is a speck; a layout takes none either. */
    private static final double LEAST_MM2 = 1;
    /** So far over the edge of the hide, a line that follows the edge still follows it, in millimetres. */
    private static final double ALONG_MM = 0.05;
    /** The share of the hide from which on a line is its outline once more. */
    private static final double SAME = 0.999;

    private final List<Remark> remarks = new ArrayList<>();
    private final List<Outlined> flaws = new ArrayList<>();
    private final Optional<Outlined> hide;

    public HideOutlines(ReadDrawing drawing) {
        remarks.addAll(drawing.remarks());
        List<DrawnLine> closed =
                drawing.lines().stream().filter(DrawnLine::closed).toList();
        Optional<DrawnLine> largest = closed.stream()
                .max(Comparator.comparingDouble(DrawnLine::area))
                .filter(line -> line.area() >= LEAST_MM2)
                .or(() -> closed.stream().filter(HideOutlines::crosses).findFirst());
        if (largest.isEmpty()) {
            remarks.add(Remark.of(OutlineNotices.NO_OUTLINE.with(), CoreTexts.TEXTS));
        }
        tellOpen(drawing.lines().stream().filter(line -> !line.closed()).toList());
        Corners drawn = Corners.of(largest.map(DrawnLine::places).orElse(List.of()));
        hide = largest.flatMap(line -> hide(line, drawn.from(drawn.left(), drawn.bottom())));
        if (hide.isPresent()) {
            flaws(closed.stream().filter(line -> line != largest.get()).toList(), drawn);
        }
    }

    /** Empty where there is none; why is told. */
    public Optional<Outlined> hide() {
        return hide;
    }

    /** What is drawn on it, in the order of the drawing. */
    public List<Outlined> flaws() {
        return List.copyOf(flaws);
    }

    /** What is to be told, that of the reading first. */
    public List<Remark> remarks() {
        return List.copyOf(remarks);
    }

    private void tell(Notice notice, Place at) {
        remarks.add(OutlineNotices.told(notice, at));
    }

    /** The longest is named, since an outline that was left open is longer than the strokes of a letter. */
    private void tellOpen(List<DrawnLine> open) {
        open.stream()
                .max(Comparator.comparingDouble(DrawnLine::length))
                .ifPresent(longest -> tell(
                        OutlineNotices.OPEN_LINES.with(
                                open.size(),
                                longest.entity(),
                                Length.ofMm(longest.length()),
                                Length.ofMm(longest.gap())),
                        longest.at()));
    }

    private Optional<Outlined> hide(DrawnLine line, Corners corners) {
        Optional<Point> crossing = crossing(corners);
        crossing.ifPresent(place -> tell(
                OutlineNotices.HIDE_CROSSES_ITSELF.with(line.entity(), Length.ofMm(place.x()), Length.ofMm(place.y())),
                line.at()));
        return crossing.isPresent() ? Optional.empty() : Optional.of(outlined("", line, corners));
    }

    /** Of a line that crosses itself in its middle, one half takes the area of the other away. */
    private static boolean crosses(DrawnLine line) {
        Corners corners = Corners.of(line.places());
        return corners.isOutline() && crossing(corners).isPresent();
    }

    private static Optional<Point> crossing(Corners corners) {
        return Faults.of(corners.curve()).stream().map(Fault::place).findFirst();
    }

    private static Outlined outlined(String kind, DrawnLine line, Corners corners) {
        return new Outlined(kind, line, corners.text(), Region.of(corners.curve()));
    }

    private void flaws(List<DrawnLine> lines, Corners drawn) {
        List<DrawnLine> specks = new ArrayList<>();
        List<DrawnLine> unnamed = new ArrayList<>();
        for (DrawnLine line : lines) {
            Corners corners = Corners.of(line.places()).from(drawn.left(), drawn.bottom());
            Optional<Notice> trouble = corners.isOutline() ? trouble(line, corners) : Optional.empty();
            trouble.ifPresent(notice -> tell(notice, line.at()));
            if (trouble.filter(notice -> notice.kind() != OutlineNotices.FLAW_CROSSES_EDGE)
                    .isPresent()) {
                continue;
            }
            if (!corners.isOutline() || line.area() < LEAST_MM2) {
                specks.add(line);
            } else {
                Optional<String> kind = Kind.of(line.names());
                flaws.addAll(onLeather(outlined(kind.orElse(Kind.UNNAMED), line, corners), trouble.isPresent()));
                if (kind.isEmpty()) {
                    unnamed.add(line);
                }
            }
        }
        if (!unnamed.isEmpty()) {
            tell(
                    OutlineNotices.TAKEN_AS_MARKED.with(named(unnamed)),
                    unnamed.get(0).at());
        }
        if (!specks.isEmpty()) {
            tell(
                    OutlineNotices.SPECKS.with(specks.size(), Area.ofMm2(LEAST_MM2), named(specks)),
                    specks.get(0).at());
        }
    }

    /** What of a flaw lies on the hide, by itself where it reaches over the edge. */
    private List<Outlined> onLeather(Outlined flaw, boolean overTheEdge) {
        if (!overTheEdge) {
            return List.of(flaw);
        }
        return hide.orElseThrow().region().common(flaw.region()).stream()
                .map(part -> Corners.of(
                        part.outline().segments().stream().map(Segment::start).toList()))
                .filter(Corners::isOutline)
                .map(corners -> outlined(flaw.kind(), flaw.line(), corners))
                .filter(part -> part.region().area() >= LEAST_MM2)
                .toList();
    }

    private static String named(List<DrawnLine> lines) {
        int most = 12;
        String names = lines.stream()
                .limit(most)
                .map(line -> line.entity() + " (" + line.at().line() + ")")
                .collect(Collectors.joining(", "));
        return lines.size() > most ? names + ", …" : names;
    }

    /** Why an outline is no flaw of the hide. */
    private Optional<Notice> trouble(DrawnLine line, Corners corners) {
        Optional<Point> crossing = crossing(corners);
        if (crossing.isPresent()) {
            Point place = crossing.get();
            return Optional.of(OutlineNotices.FLAW_CROSSES_ITSELF.with(
                    line.entity(), Length.ofMm(place.x()), Length.ofMm(place.y())));
        }
        Region leather = hide.orElseThrow().region();
        Region flaw = Region.of(corners.curve());
        Box box = flaw.bounds();
        Point middle = Point.of((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        if (leather.edgeDistance(middle) > Math.hypot(box.width(), box.height()) / 2) {
            // it comes nowhere near the edge; for a hundred flaws of a traced hide the overlay below would take minutes
            return leather.contains(middle)
                    ? Optional.empty()
                    : Optional.of(OutlineNotices.FLAW_OUTSIDE.with(line.entity()));
        }
        double within = leather.common(flaw).stream().mapToDouble(Region::area).sum();
        double hair = ALONG_MM * flaw.edgeLength();
        if (within > SAME * leather.area()) {
            return Optional.of(OutlineNotices.HIDE_TWICE.with(line.entity()));
        }
        if (within < Math.min(hair, flaw.area() / 2)) {
            return Optional.of(OutlineNotices.FLAW_OUTSIDE.with(line.entity()));
        }
        return within < flaw.area() - hair
                ? Optional.of(OutlineNotices.FLAW_CROSSES_EDGE.with(
                        line.entity(),
                        Area.ofMm2(flaw.area() - within),
                        Kind.of(line.names()).orElse(Kind.UNNAMED)))
                : Optional.empty();
    }
}
