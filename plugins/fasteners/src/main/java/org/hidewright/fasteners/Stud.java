package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/**
 * The two holes of a stud: for its screw in the part that carries it, and for its neck in the strap that closes over it, with
 * the slit that lets the head through. The slit lies on the side where the strap is held, so that the pull comes on uncut leather.
 */
@Calculates("stud")
@Component(service = Calculator.class)
public final class Stud implements Calculator<Stud.Closure, Stud.Cut> {
    private static final Formula SLIT = Formula.of("stud-slit", "l = π · (D - h) / 2", Origins.GEOMETRY);
    private static final Formula PLAY = Formula.of("stud-play", "y = H - T", Origins.GEOMETRY);

    private static final NoticeKind HEAD_NO_WIDER = NoticeKind.stop("stud-head-no-wider");
    private static final NoticeKind NECK_TOO_LOW = NoticeKind.check("stud-neck-too-low");
    private static final NoticeKind NECK_TOO_HIGH = NoticeKind.check("stud-neck-too-high");
    private static final NoticeKind STRAP_TOO_NARROW = NoticeKind.check("stud-strap-too-narrow");
    private static final NoticeKind SLIT_SIDE = NoticeKind.note("stud-slit-side");

    /** So much of the screw reaches into the stud at least, or it pulls out (common practice). */
    private static final Length BITE = Length.ofMm(1.5);
    /** A strap that has more room than this under the head slides and opens by itself (common practice). */
    private static final double MOST_PLAY_MM = 1.5;

    /** What is asked. */
    public record Closure(
            @Asked(example = "{\"measured\":{\"thickness\":\"2.4 mm\"}}")
            Stack carrying,

            @Asked(example = "{\"measured\":{\"thickness\":\"2.4 mm\"}}")
            Stack strap,

            @Asked(
                    example =
                            "{\"post-diameter\":\"3 mm\",\"post-length\":\"4 mm\",\"head-diameter\":\"6 mm\",\"neck-diameter\":\"3.5 mm\",\"neck-height\":\"3 mm\"}")
            StudSizes stud,

            @Asked(unit = "mm", min = "1 mm", max = "1 m", usual = "10-50 mm", example = "20 mm")
            Optional<Length> strapWidth,

            @Asked(unit = "mm", min = "0.5 mm", max = "6 mm", usual = "1-2 mm", preset = "1.5 mm")
            Length endHole,

            @Asked(preset = "medium") Temper temper,
            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked Use use) {}

    /** What is answered. */
    public record Cut(
            @Answered(unit = "mm", step = "0.1 mm", by = "hole-exact", lead = true)
            Length screwHole,

            @Answered(unit = "mm", step = "0.1 mm", by = "hole-exact", lead = true)
            Length closingHole,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.DOWN, by = "stud-slit", lead = true)
            Length slitAtMost,

            @Answered(unit = "mm", step = "0.1 mm", by = "stud-habit")
            Length endHole,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "hole-edge")
            Length toTip,

            @Answered(unit = "mm", step = "0.1 mm", by = "stud-play")
            Length play,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "post-least")
            Length screwFrom,

            @Answered Drawing closing,
            @Answered List<HoleRow> holes,
            @Answered List<TestHole> tests,
            @Answered List<TestSlit> testSlits,
            @Answered Drawing testRow) {}

    @Override
    public Outcome<Cut> calculate(Closure asked, Working working) {
        StudSizes stud = asked.stud();
        Optional<Notice> swapped =
                PostLength.swapped(asked.carrying(), "carrying").or(() -> PostLength.swapped(asked.strap(), "strap"));
        if (swapped.isPresent()) {
            return Outcome.refuse(swapped.get());
        }
        ShankHole screw = ShankHole.of(stud.postDiameter(), asked.temper());
        ShankHole neck = ShankHole.of(stud.neckDiameter(), asked.temper());
        if (stud.headDiameter().mm() <= neck.wanted().mm()) {
            return Outcome.refuse(HEAD_NO_WIDER.at("stud.head-diameter", stud.headDiameter(), neck.wanted()));
        }
        List<Notice> notices = new ArrayList<>();
        Holes holes = new Holes(asked.made(), asked.use(), working, notices);
        Optional<Notice> kerf = holes.add("screw", screw, stud.headDiameter())
                .or(() -> holes.addPulled("closing", neck, stud.headDiameter()));
        if (kerf.isPresent()) {
            return Outcome.refuse(kerf.get());
        }
        working.source("screw-hole", screw.source());
        working.source("closing-hole", neck.source());
        Length slit = stud.headDiameter().minus(neck.wanted()).times(Math.PI / 2);
        working.step(SLIT, slit, "D", stud.headDiameter(), "h", neck.wanted());
        PostLength screws = PostLength.clipped(asked.carrying(), BITE, Origins.STUD_HABIT);
        screws.takeDown(working);
        notices.addAll(screws.check(stud.lengths(), "stud.post-length"));
        Length play = stud.neckHeight().minus(asked.strap().thickest());
        working.step(PLAY, play, "H", stud.neckHeight(), "T", asked.strap().thickest());
        HoleRow closing = holes.rows().get(1);
        check(asked, play, closing, notices);
        Cautions.tell(asked.use(), asked.made(), notices);
        List<TestHole> tests = TestHole.around(neck, holes.punches());
        return Outcome.of(
                new Cut(
                        screw.wanted(),
                        neck.wanted(),
                        slit,
                        asked.endHole(),
                        closing.fromEdge(),
                        play,
                        screws.shortest(),
                        StudClosing.drawn(closing, slit, asked.endHole()),
                        holes.rows(),
                        tests,
                        TestSlit.upTo(slit),
                        TestHole.drawn(tests)),
                notices);
    }

    private static void check(Closure asked, Length play, HoleRow closing, List<Notice> notices) {
        Length height = asked.stud().neckHeight();
        Length loose = height.minus(asked.strap().thinnest());
        if (play.mm() < -1e-9) {
            notices.add(
                    NECK_TOO_LOW.at("stud.neck-height", height, asked.strap().thickest()));
        } else if (loose.mm() > MOST_PLAY_MM + 1e-9) {
            notices.add(NECK_TOO_HIGH.at("stud.neck-height", loose, Length.ofMm(MOST_PLAY_MM)));
        }
        asked.strapWidth()
                .filter(width -> width.mm() < 2 * closing.fromEdge().mm() - 1e-9)
                .ifPresent(width -> notices.add(STRAP_TOO_NARROW.at(
                        "strap-width", width, closing.fromEdge().times(2), closing.fromEdge())));
        notices.add(SLIT_SIDE.with());
    }

    @Override
    public List<Formula> formulas() {
        return Stream.of(Holes.FORMULAS, PostLength.FORMULAS, List.of(SLIT, PLAY))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.of(
                        Holes.NOTICES,
                        List.of(PostLength.TOO_SHORT, PostLength.ENDS_SWAPPED),
                        Cautions.KINDS,
                        List.of(HEAD_NO_WIDER, NECK_TOO_LOW, NECK_TOO_HIGH, STRAP_TOO_NARROW, SLIT_SIDE))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<String> phrases() {
        return List.of(StudClosing.TIP, StudClosing.ANCHORED);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.HOLE_HABIT, Origins.POST_HABIT, Origins.STUD_HABIT);
    }
}
