package org.hidewright.parts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Area;
import org.osgi.service.component.annotations.Component;

/** A piece drawn part by part. */
@Calculates("parts")
@Component(service = Calculator.class)
public final class Parts implements Calculator<Parts.Drawn, Parts.Made> {
    private static final Source GEOMETRY = Source.of("plane-geometry", Source.Kind.DEFINITION);

    /** What is asked. */
    public record Drawn(
            @Asked(
                    example =
                            "[{\"id\":\"front\",\"shape\":{\"rectangle\":{\"width\":\"100 mm\",\"height\":\"80 mm\",\"corner-radius\":\"8 mm\"}},\"thickness\":\"1.8 mm\"},{\"id\":\"back\",\"shape\":{\"rectangle\":{\"width\":\"100 mm\",\"height\":\"80 mm\",\"corner-radius\":\"8 mm\"}},\"thickness\":\"1.8 mm\"}]")
            List<DrawnPart> parts,

            @Asked(example = "[{\"id\":\"front.mouth\",\"kind\":\"mouth\",\"from\":\"180 mm\",\"to\":\"260 mm\"}]")
            Optional<List<DrawnEdge>> edges,

            @Asked(example = "[{\"id\":\"back.rivet\",\"x\":\"50 mm\",\"y\":\"65 mm\",\"width\":\"3 mm\"}]")
            Optional<List<DrawnOpening>> openings,

            @Asked(
                    example =
                            "[{\"id\":\"front.rim\",\"pitch\":\"3.85 mm\"},{\"id\":\"back.rim\",\"pitch\":\"3.85 mm\"}]")
            Optional<List<DrawnStitches>> stitches,

            @Asked(
                    example =
                            "[{\"id\":\"back.lid\",\"line\":{\"from-x\":\"0 mm\",\"from-y\":\"60 mm\",\"to-x\":\"100 mm\",\"to-y\":\"60 mm\"}}]")
            Optional<List<DrawnFold>> folds,

            @Asked(example = "[{\"id\":\"side\",\"lines\":\"front.rim; back.rim\"}]")
            Optional<List<DrawnSeam>> seams,

            @Asked(example = "[{\"id\":\"loop\",\"name\":\"Rivet\",\"holes\":\"back.rivet\"}]")
            Optional<List<DrawnFitting>> fittings,

            @Asked(
                    example =
                            "[{\"id\":\"glue\",\"what\":\"Glue front on back\",\"on\":\"front; back\",\"wait-least\":\"20 min\"},{\"id\":\"stitch\",\"what\":\"Stitch the side\",\"on\":\"side\",\"after\":\"glue\"}]")
            Optional<List<DrawnOperation>> operations,

            @Asked(
                    example =
                            "[{\"id\":\"snap\",\"closed\":{\"top\":\"back\",\"top-x\":\"50 mm\",\"top-y\":\"30 mm\",\"under\":\"front\",\"under-x\":\"50 mm\",\"under-y\":\"30 mm\",\"by\":{\"snap\":{}}}}]")
            Optional<List<Addition>> additions) {}

    /** What is answered. */
    public record Made(
            @Answered(by = "plane-geometry", lead = true) int pieces,

            @Answered(unit = "dm²", step = "0.01 dm²", round = Rounding.UP, by = "plane-geometry", lead = true)
            Area leather,

            @Answered(by = "plane-geometry") Item item) {}

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(Draft.NOTICES.stream(), Additions.NOTICES.stream()).toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(GEOMETRY);
    }

    @Override
    public Outcome<Made> calculate(Drawn drawn, Working working) {
        try {
            Item item = new Draft(drawn).item();
            return Outcome.of(new Made(
                    item.parts().stream().mapToInt(Part::pieces).sum(),
                    Area.ofMm2(item.parts().stream()
                            .mapToDouble(part ->
                                    part.pieces() * Curve.of(part.outline()).area())
                            .sum()),
                    item));
        } catch (Refusal e) {
            return e.outcome();
        }
    }
}
