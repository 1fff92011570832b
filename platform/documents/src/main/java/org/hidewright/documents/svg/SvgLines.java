package org.hidewright.documents.svg;

import java.awt.geom.AffineTransform;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.PathData;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.documents.FlatLine;
import org.hidewright.documents.LeftOut;

/** The lines of one SVG: what is drawn itself, and not what is only declared, clips or is hidden. */
final class SvgLines {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final Set<String> GROUPS = Set.of("g", "a", "switch");
    /** What may draw outlines and is not followed. */
    private static final Set<String> NOT_FOLLOWED = Set.of("use", "svg");

    private static final Pattern HIDDEN = Pattern.compile("(?:.*;)?\\s*display\\s*:\\s*none\\b.*", Pattern.DOTALL);
    private static final Pattern MOVED = Pattern.compile("(?:.*;)?\\s*transform\\s*:.*", Pattern.DOTALL);
    private static final Pattern GAP = Pattern.compile("\\s+");

    /**
     * What holds for what is inside an element.
     *
     * @param toMm from the user units there
     * @param names of it and of the groups round it, the nearest first
     */
    private record Group(AffineTransform toMm, List<String> names) {
        /** Inside it nothing is read. */
        static final Group SHUT = new Group(new AffineTransform(), List.of());
    }

    private final XMLStreamReader xml;
    private final Deque<Group> open = new ArrayDeque<>();
    private final List<DrawnLine> lines = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final LeftOut leftOut = new LeftOut();
    /** Where the element begins that is being read. */
    private Place at = Place.START;

    SvgLines(XMLStreamReader xml) {
        this.xml = xml;
    }

    ReadDrawing read() throws XMLStreamException, FileTrouble {
        while (xml.hasNext()) {
            // where one event ends, the next begins
            Place before = new Place(
                    Math.max(1, xml.getLocation().getLineNumber()),
                    Math.max(1, xml.getLocation().getColumnNumber()));
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                at = before;
                open.push(open.isEmpty() ? page() : inside(open.peek()));
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                open.pop();
            }
        }
        leftOut.told().ifPresent(remarks::add);
        return new ReadDrawing(lines, remarks);
    }

    private Group page() throws FileTrouble {
        if (!xml.getLocalName().equals("svg")) {
            throw OutlineNotices.trouble(OutlineNotices.NO_SVG.with(), at);
        }
        Map<String, String> attributes = attributes();
        String viewBox = attributes.getOrDefault("viewBox", "");
        SvgPage page = SvgPage.of(
                        attributes.getOrDefault("width", ""),
                        attributes.getOrDefault("height", ""),
                        viewBox,
                        attributes.getOrDefault("preserveAspectRatio", ""))
                .orElseThrow(() -> unreadable("svg", viewBox));
        if (!page.said()) {
            remarks.add(OutlineNotices.told(OutlineNotices.PIXELS_TAKEN.with(), at));
        }
        return new Group(page.toMm(), names(attributes));
    }

    private FileTrouble unreadable(String entity, String text) {
        return OutlineNotices.trouble(OutlineNotices.DRAWN_UNREADABLE.with(entity, text), at);
    }

    private Group inside(Group round) throws FileTrouble {
        String name = xml.getLocalName();
        boolean ours = xml.getNamespaceURI() == null || xml.getNamespaceURI().equals(NAMESPACE);
        Map<String, String> attributes = attributes();
        if (round == Group.SHUT || !ours || isHidden(attributes)) {
            return Group.SHUT;
        }
        if (NOT_FOLLOWED.contains(name)) {
            leftOut.add(name);
        }
        boolean shape = SvgShape.NAMES.contains(name);
        if (!shape && !GROUPS.contains(name)) {
            return Group.SHUT;
        }
        List<String> names = names(attributes);
        String entity = names.isEmpty() ? name : name + " \"" + names.get(0) + "\"";
        names.addAll(round.names());
        Group group = new Group(moved(round.toMm(), attributes, entity), names);
        if (shape) {
            draw(new SvgShape(name, attributes), entity, group);
        }
        return shape ? Group.SHUT : group;
    }

    private static boolean isHidden(Map<String, String> attributes) {
        return attributes.getOrDefault("display", "").strip().equals("none")
                || HIDDEN.matcher(attributes.getOrDefault("style", "")).matches();
    }

    /** By their local names: where a drawing program puts the name of a layer, it does so in a namespace of its own. */
    private Map<String, String> attributes() {
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            boolean own = xml.getAttributeNamespace(i) == null
                    || xml.getAttributeNamespace(i).isEmpty();
            if (own || xml.getAttributeLocalName(i).equals("label")) {
                attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        return attributes;
    }

    private static List<String> names(Map<String, String> attributes) {
        List<String> names = new ArrayList<>();
        names.add(attributes.getOrDefault("id", ""));
        names.addAll(List.of(GAP.split(attributes.getOrDefault("class", "").strip())));
        names.add(attributes.getOrDefault("label", ""));
        names.removeIf(String::isBlank);
        return names;
    }

    private AffineTransform moved(AffineTransform round, Map<String, String> attributes, String entity)
            throws FileTrouble {
        String style = attributes.getOrDefault("style", "");
        if (MOVED.matcher(style).matches()) {
            throw unreadable(entity, style);
        }
        String text = attributes.getOrDefault("transform", "");
        AffineTransform moved = new AffineTransform(round);
        moved.concatenate(SvgTransform.of(text).orElseThrow(() -> unreadable(entity, text)));
        return moved;
    }

    private void draw(SvgShape shape, String entity, Group group) throws FileTrouble {
        FlatLine.Whose whose = new FlatLine.Whose(entity, at, group.names(), group.toMm());
        try {
            for (Curve curve : PathData.readAll(shape.pathData())) {
                lines.add(FlatLine.of(curve.segments(), curve.isClosed(), whose));
            }
        } catch (PathData.Unreadable e) {
            throw unreadable(entity, e.near());
        } catch (SvgShape.Unreadable e) {
            throw unreadable(entity, e.getMessage());
        }
    }
}
