package org.hidewright.layout.engine;

/**
 * Whether two parts overlap, and how deep. What merely touches, or comes nearer than a hair, counts as overlapping, so
 * that no layout of the engine rests on the last digit of a sum.
 *
 * <p>The depth is that of Gardeyn and Wauters, arXiv 2509.13329: for each pair of poles the length by which they
 * overlap, going smoothly to nought where they do not (here by a parabola that ends soon, so that most pairs of poles need no
 * root), weighted by the smaller radius; the whole scaled by the size of both parts. It is a surrogate: greater than nought for
 * any two parts, and told only of those that do overlap.
 */
final class Meeting {
    /** Share of the diameter within which things count as touching. */
    private static final double HAIR = 1e-9;

    /** Share of the greater diameter: poles that overlap less count less, and nothing once they are as far apart. */
    private static final double SMOOTH = 0.01;

    /** So many of the largest poles are tried first: most places that will not do are told by them. */
    private static final int FIRST_POLES = 10;

    private Meeting() {}

    /**
     * Whether two parts overlap whose boxes do.
     *
     * @param dx how far {@code b} lies from {@code a} by their points of reference
     */
    static boolean overlaps(Turned a, Turned b, double dx, double dy) {
        return polesOverlap(a, b, dx, dy) || edgesCross(a, b, dx, dy) || oneHoldsTheOther(a, b, dx, dy);
    }

    private static boolean polesOverlap(Turned a, Turned b, double dx, double dy) {
        int ofA = Math.min(FIRST_POLES, a.poleX.length);
        int ofB = Math.min(FIRST_POLES, b.poleX.length);
        for (int one = 0; one < ofA; one++) {
            double x = a.poleX[one] - dx;
            double y = a.poleY[one] - dy;
            double radius = a.form.poleRadius[one];
            for (int other = 0; other < ofB; other++) {
                double offX = x - b.poleX[other];
                double offY = y - b.poleY[other];
                double sum = radius + b.form.poleRadius[other];
                if (offX * offX + offY * offY < sum * sum) {
                    return true;
                }
            }
        }
        return false;
    }

    static boolean edgesCross(Turned a, Turned b, double dx, double dy) {
        double hair = HAIR * Math.max(a.form.diameter, b.form.diameter);
        return cross(a, 1, b, 1, dx, dy, hair, hair * Math.max(a.form.diameter, b.form.diameter));
    }

    private static boolean cross(
            Turned a, int nodeA, Turned b, int nodeB, double dx, double dy, double hair, double level) {
        double[] boxA = a.box;
        double[] boxB = b.box;
        int atA = 4 * nodeA;
        int atB = 4 * nodeB;
        if (boxA[atA] > boxB[atB + 2] + dx + hair
                || boxA[atA + 2] + hair < boxB[atB] + dx
                || boxA[atA + 1] > boxB[atB + 3] + dy + hair
                || boxA[atA + 3] + hair < boxB[atB + 1] + dy) {
            return false;
        }
        boolean leafA = nodeA >= a.leaves;
        boolean leafB = nodeB >= b.leaves;
        if (leafA && leafB) {
            return leavesCross(a, nodeA - a.leaves, b, nodeB - b.leaves, dx, dy, hair, level);
        }
        // the box with the longer way round is opened first
        boolean openA = leafB
                || !leafA
                        && boxA[atA + 2] - boxA[atA] + boxA[atA + 3] - boxA[atA + 1]
                                > boxB[atB + 2] - boxB[atB] + boxB[atB + 3] - boxB[atB + 1];
        if (openA) {
            return cross(a, 2 * nodeA, b, nodeB, dx, dy, hair, level)
                    || cross(a, 2 * nodeA + 1, b, nodeB, dx, dy, hair, level);
        }
        return cross(a, nodeA, b, 2 * nodeB, dx, dy, hair, level)
                || cross(a, nodeA, b, 2 * nodeB + 1, dx, dy, hair, level);
    }

    private static boolean leavesCross(
            Turned a, int leafA, Turned b, int leafB, double dx, double dy, double hair, double level) {
        int lastA = a.firstEdge[leafA + 1];
        int firstB = b.firstEdge[leafB];
        int lastB = b.firstEdge[leafB + 1];
        double[] boxB = b.box;
        int atB = 4 * (b.leaves + leafB);
        double lowX = boxB[atB] + dx - hair;
        double lowY = boxB[atB + 1] + dy - hair;
        double highX = boxB[atB + 2] + dx + hair;
        double highY = boxB[atB + 3] + dy + hair;
        for (int edge = a.firstEdge[leafA]; edge < lastA; edge++) {
            double x1 = a.x[edge];
            double y1 = a.y[edge];
            double x2 = a.x[edge + 1];
            double y2 = a.y[edge + 1];
            if (x1 < lowX && x2 < lowX
                    || x1 > highX && x2 > highX
                    || y1 < lowY && y2 < lowY
                    || y1 > highY && y2 > highY) {
                continue;
            }
            double ax = x2 - x1;
            double ay = y2 - y1;
            double offX = dx - x1;
            double offY = dy - y1;
            double before = ax * (b.y[firstB] + offY) - ay * (b.x[firstB] + offX);
            for (int other = firstB; other < lastB; other++) {
                double after = ax * (b.y[other + 1] + offY) - ay * (b.x[other + 1] + offX);
                boolean sameSide = before > level && after > level || before < -level && after < -level;
                if (!sameSide && straddles(x1, y1, x2, y2, b, other, dx, dy, hair, level)) {
                    return true;
                }
                before = after;
            }
        }
        return false;
    }

    /** Whether the ends of an edge lie on both sides of another one whose ends do so of it, and their boxes meet. */
    private static boolean straddles(
            double x1,
            double y1,
            double x2,
            double y2,
            Turned b,
            int other,
            double dx,
            double dy,
            double hair,
            double level) {
        double x3 = b.x[other] + dx;
        double y3 = b.y[other] + dy;
        double x4 = b.x[other + 1] + dx;
        double y4 = b.y[other + 1] + dy;
        if (Math.max(x1, x2) + hair < Math.min(x3, x4)
                || Math.max(x3, x4) + hair < Math.min(x1, x2)
                || Math.max(y1, y2) + hair < Math.min(y3, y4)
                || Math.max(y3, y4) + hair < Math.min(y1, y2)) {
            return false;
        }
        double bx = x4 - x3;
        double by = y4 - y3;
        double one = bx * (y1 - y3) - by * (x1 - x3);
        double two = bx * (y2 - y3) - by * (x2 - x3);
        return !(one > level && two > level || one < -level && two < -level);
    }

    /** Whether one lies wholly within the other, told by a corner, where no edges cross. */
    private static boolean oneHoldsTheOther(Turned a, Turned b, double dx, double dy) {
        boolean mayHoldB =
                a.minX <= b.minX + dx && a.maxX >= b.maxX + dx && a.minY <= b.minY + dy && a.maxY >= b.maxY + dy;
        if (mayHoldB) {
            return Rings.holds(a.x, a.y, a.edges, b.x[0] + dx, b.y[0] + dy);
        }
        boolean mayHoldA =
                b.minX + dx <= a.minX && b.maxX + dx >= a.maxX && b.minY + dy <= a.minY && b.maxY + dy >= a.maxY;
        return mayHoldA && Rings.holds(b.x, b.y, b.edges, a.x[0] - dx, a.y[0] - dy);
    }

    /**
     * The depth of two parts that overlap; with the square root of an area as its unit.
     *
     * @param enough told only as long as it stays below; beyond, some number that is not less
     */
    static double depth(Turned a, Turned b, double dx, double dy, double enough) {
        double scale = scale(a.form, b.form);
        double smooth = SMOOTH * Math.max(a.form.diameter, b.form.diameter);
        double square = smooth * smooth;
        double most = (enough / scale) * (enough / scale) - square;
        double[] radiusA = a.form.poleRadius;
        double[] radiusB = b.form.poleRadius;
        double[] poleX = b.poleX;
        double[] poleY = b.poleY;
        double sum = 0;
        for (int one = 0; one < radiusA.length; one++) {
            double x = a.poleX[one] - dx;
            double y = a.poleY[one] - dy;
            double radius = radiusA[one];
            double reach = radius + smooth;
            if (x + reach < b.polesMinX
                    || x - reach > b.polesMaxX
                    || y + reach < b.polesMinY
                    || y - reach > b.polesMaxY) {
                continue;
            }
            for (int other = 0; other < radiusB.length; other++) {
                double offX = x - poleX[other];
                double offY = y - poleY[other];
                double away = offX * offX + offY * offY;
                double radiusOther = radiusB[other];
                double limit = reach + radiusOther;
                if (away < limit * limit) {
                    double deep = radius + radiusOther - Math.sqrt(away);
                    double counted = deep >= smooth ? deep : (deep + smooth) * (deep + smooth) / (4 * smooth);
                    sum += counted * Math.min(radius, radiusOther);
                }
            }
            if (sum >= most) {
                break;
            }
        }
        return Math.sqrt(sum + square) * scale;
    }

    static double scale(Form a, Form b) {
        return a.extent * b.extent;
    }
}
