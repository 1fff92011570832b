package org.hidewright.documents.page;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.document.Figure;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;

/** Figures with their captions: in true size with squares to check the print, or as large as serves. */
final class FigureLayout {
    private static final double BEFORE = 5;
    private static final double CAPTION_GAP = 3;
    private static final double BESIDE = 8;
    private static final double FITTED_HEIGHT = 90;
    private static final double LEGEND_GAP = 3;
    private static final double ROUNDING = 0.01;
    /** A few lines stand under one another however narrow they are. */
    private static final int FEWEST_ROWS = 6;
    /** A small thing is shown larger than life, but not more than this. */
    private static final double[] LARGER = {4, 3, 2.5, 2, 1.5, 1};

    private final Typeface typeface;
    private final double width;
    private final double pageHeight;
    private final CheckSquares squares;

    FigureLayout(Typeface typeface, double width, double pageHeight, CheckSquares squares) {
        this.typeface = typeface;
        this.width = width;
        this.pageHeight = pageHeight - BEFORE;
        this.squares = squares;
    }

    List<Piece> pieces(Figure figure) {
        Optional<Piece> trueSize = figure.isTrueSize() ? trueSize(figure) : Optional.empty();
        if (trueSize.isPresent()) {
            return List.of(trueSize.get());
        }
        String caption = figure.isTrueSize() ? join(figure.reducedText(), figure.caption()) : figure.caption();
        double room = pageHeight - captionHeight(caption);
        FigurePlan plan = fitted(figure.drawing(), figure.isTrueSize() ? room : Math.min(FITTED_HEIGHT, room));
        return List.of(piece(plan, caption, ratio(plan.scale().factor()), List.of()));
    }

    /** With the squares below it, or, where the page is not high enough for that, beside it. */
    private Optional<Piece> trueSize(Figure figure) {
        Piece check = squares.piece(figure.trueSizeText());
        double room = pageHeight - captionHeight(figure.caption());
        Optional<Piece> above = lifeSize(figure.drawing(), width, room - check.before() - check.height())
                .map(plan -> piece(plan, figure.caption(), "1 : 1", List.of()).with(check))
                .filter(piece -> piece.height() + check.before() + check.height() <= pageHeight);
        if (above.isPresent()) {
            return above;
        }
        double left = width - CheckSquares.WIDTH;
        List<Mark> beside =
                check.marks().stream().map(mark -> mark.moved(left, 0)).toList();
        return lifeSize(figure.drawing(), left - BESIDE, room)
                .map(plan -> piece(plan, figure.caption(), "1 : 1", beside))
                .filter(piece -> piece.height() <= pageHeight);
    }

    private static String join(String first, String second) {
        return second.isEmpty() ? first : first + "\n" + second;
    }

    /** Height under a figure, without texts that find no place in it. */
    private double captionHeight(String caption) {
        PieceBuilder trial = new PieceBuilder(typeface);
        return CAPTION_GAP + trial.text(caption, 0, 0, width * 0.8, Style.REASON) + Style.REASON.lineMm();
    }

    private Optional<FigurePlan> lifeSize(Drawing drawing, double roomAcross, double height) {
        for (boolean turned : new boolean[] {false, true}) {
            FigurePlan plan = plan(drawing, 1, turned);
            if (plan.box().width() <= roomAcross && plan.box().height() <= height) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    private FigurePlan fitted(Drawing drawing, double height) {
        for (double larger : LARGER) {
            FigurePlan plan = plan(drawing, larger, false);
            if (fits(plan, height)) {
                return plan;
            }
        }
        for (double smaller = 1.5; smaller < 10; smaller += 0.5) {
            FigurePlan plan = plan(drawing, 1 / smaller, false);
            if (fits(plan, height)) {
                return plan;
            }
        }
        for (int smaller = 10; ; smaller += Math.max(1, smaller / 10)) {
            FigurePlan plan = plan(drawing, 1.0 / smaller, false);
            Box box = drawing.bounds();
            if (fits(plan, height) || Math.max(box.width(), box.height()) / smaller < 1) {
                return plan;
            }
        }
    }

    private FigurePlan plan(Drawing drawing, double factor, boolean turned) {
        return new FigurePlan(drawing, new PaperScale(factor, turned), width * 0.6, typeface);
    }

    private boolean fits(FigurePlan plan, double height) {
        return plan.box().width() <= width && plan.box().height() <= height;
    }

    private static String ratio(double factor) {
        return factor >= 1 ? number(factor) + " : 1" : "1 : " + number(1 / factor);
    }

    private static String number(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-9
                ? Long.toString(Math.round(value))
                : Double.toString(Math.round(value * 10) / 10.0);
    }

    private Piece piece(FigurePlan plan, String caption, String ratio, List<Mark> beside) {
        PieceBuilder piece = new PieceBuilder(typeface);
        piece.add(new Drawn(plan));
        beside.forEach(piece::add);
        double y = piece.bottom() + CAPTION_GAP;
        double ratioWidth = typeface.widthMm(Style.REASON, ratio);
        piece.text(ratio, 0, y, ratioWidth, Style.REASON);
        double x = ratioWidth + 6;
        y = piece.text(caption, x, y, width - x, Style.REASON);
        if (!plan.legend().isEmpty()) {
            legend(plan.legend(), piece, x, caption.isEmpty() ? y : piece.bottom());
        }
        return piece.build(BEFORE);
    }

    /** Each text beside its number, down one column after another: some dozen names are as many pieces on a hide. */
    private void legend(List<String> legend, PieceBuilder piece, double left, double top) {
        double number = typeface.widthMm(Style.REASON, Integer.toString(legend.size())) + LEGEND_GAP;
        double widest = legend.stream()
                .mapToDouble(text -> typeface.widthMm(Style.REASON, text))
                .max()
                .orElse(0);
        int fitting = Math.max(1, (int) ((width - left + BESIDE) / (number + widest + BESIDE)));
        int rows = Math.max(Math.min(legend.size(), FEWEST_ROWS), (legend.size() + fitting - 1) / fitting);
        double across = rows >= legend.size() ? width - left : number + widest + ROUNDING;
        for (int first = 0; first < legend.size(); first += rows) {
            double x = left + first / rows * (across + BESIDE);
            double y = top;
            for (int i = first; i < Math.min(first + rows, legend.size()); i++) {
                piece.text(Integer.toString(i + 1), x, y, number - LEGEND_GAP, Style.REASON);
                y = piece.text(legend.get(i), x + number, y, across - number, Style.REASON);
            }
        }
    }

    /** The drawing itself, at the top left of its piece. */
    private record Drawn(FigurePlan plan) implements Mark {
        @Override
        public double top() {
            return 0;
        }

        @Override
        public double bottom() {
            return plan.box().height();
        }

        @Override
        public void draw(Canvas canvas, double x, double y) {
            plan.draw(canvas, x, y);
        }
    }
}
