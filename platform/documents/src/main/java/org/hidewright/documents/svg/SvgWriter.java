package org.hidewright.documents.svg;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.documents.ArrowLines;
import org.hidewright.documents.PlainDecimal;
import org.hidewright.documents.Roles;
import org.osgi.service.component.annotations.Component;

/**
 * SVG (W3C Recommendation 1.1) whose user unit is the millimetre: width and height in mm, and a view box of the same
 * numbers. Each drawing is a group, and in it each kind of line.
 */
@Component
public final class SvgWriter implements DrawingWriter {
    private static final double MARGIN = 5;
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    @Override
    public String kind() {
        return "svg";
    }

    @Override
    public String ending() {
        return ".svg";
    }

    @Override
    public byte[] write(String title, List<Named> drawings) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            XMLStreamWriter svg =
                    XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
            new Sheet(svg).write(title, drawings);
            svg.close();
        } catch (XMLStreamException broken) { // the stream is memory
            throw new IllegalStateException(broken);
        }
        return bytes.toByteArray();
    }

    /** One file being written. */
    private static final class Sheet {
        private final XMLStreamWriter svg;

        Sheet(XMLStreamWriter svg) {
            this.svg = svg;
        }

        void write(String title, List<Named> drawings) throws XMLStreamException {
            Box box = drawings.stream()
                    .map(named -> named.drawing().bounds())
                    .reduce(Box::with)
                    .orElseThrow()
                    .grown(MARGIN);
            svg.writeStartDocument("UTF-8", "1.0");
            svg.writeCharacters("\n");
            svg.writeStartElement("svg");
            svg.writeDefaultNamespace(NAMESPACE);
            svg.writeAttribute("version", "1.1");
            svg.writeAttribute("width", PlainDecimal.of(box.width()) + "mm");
            svg.writeAttribute("height", PlainDecimal.of(box.height()) + "mm");
            svg.writeAttribute(
                    "viewBox",
                    String.join(
                            " ",
                            PlainDecimal.of(box.minX()),
                            PlainDecimal.of(-box.maxY()),
                            PlainDecimal.of(box.width()),
                            PlainDecimal.of(box.height())));
            titled(title);
            for (Named named : drawings) {
                svg.writeStartElement("g");
                svg.writeAttribute("id", named.id());
                titled(named.title());
                for (Role role : Role.values()) {
                    group(named, role);
                }
                svg.writeEndElement();
                svg.writeCharacters("\n");
            }
            svg.writeEndElement();
            svg.writeEndDocument();
        }

        private void titled(String title) throws XMLStreamException {
            svg.writeCharacters("\n");
            svg.writeStartElement("title");
            svg.writeCharacters(title);
            svg.writeEndElement();
            svg.writeCharacters("\n");
        }

        private void group(Named named, Role role) throws XMLStreamException {
            List<Shape> shapes = new ArrayList<>();
            ArrowLines.in(named.drawing()).stream()
                    .filter(shape -> shape.role() == role)
                    .forEach(shapes::add);
            if (shapes.isEmpty()) {
                return;
            }
            svg.writeStartElement("g");
            svg.writeAttribute("id", named.id() + "." + Roles.name(role));
            SvgLook.of(role).write(svg);
            for (Shape shape : shapes) {
                svg.writeCharacters("\n");
                shape(shape);
            }
            svg.writeCharacters("\n");
            svg.writeEndElement();
            svg.writeCharacters("\n");
        }

        private void shape(Shape shape) throws XMLStreamException {
            if (shape instanceof Path path) {
                svg.writeEmptyElement("path");
                svg.writeAttribute("d", SvgPath.data(path));
            } else if (shape instanceof Circle circle) {
                svg.writeEmptyElement("circle");
                svg.writeAttribute("cx", PlainDecimal.of(circle.centre().x()));
                svg.writeAttribute("cy", PlainDecimal.of(-circle.centre().y()));
                svg.writeAttribute("r", PlainDecimal.of(circle.diameter() / 2));
            } else if (shape instanceof Label label) {
                label(label);
            }
        }

        private void label(Label label) throws XMLStreamException {
            svg.writeStartElement("text");
            svg.writeAttribute(
                    "transform",
                    "translate(" + SvgPath.at(label.at()) + ") rotate(" + PlainDecimal.of(-Math.toDegrees(label.turn()))
                            + ")");
            svg.writeAttribute("font-size", PlainDecimal.of(label.height() / SvgLook.CAPITAL));
            svg.writeAttribute(
                    "text-anchor",
                    label.anchor().along() == 0 ? "start" : label.anchor().along() == 1 ? "end" : "middle");
            svg.writeAttribute("dy", PlainDecimal.of(label.anchor().up() * label.height()));
            svg.writeCharacters(label.text());
            svg.writeEndElement();
        }
    }
}
