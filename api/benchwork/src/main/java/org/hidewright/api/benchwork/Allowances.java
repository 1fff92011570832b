package org.hidewright.api.benchwork;

/**
 * How much leather a held thing takes. All lengths are millimetres; nothing is rounded.
 *
 * <p>Leather stretches and crushes, so each is where a test piece starts and not where it ends.
 */
public final class Allowances {
    private Allowances() {}

    /**
     * Distance between the side seams of two flat panels that are sewn round a body: half its girth, and ease. Common practice;
     * exact for thin panels, since the girth of a body of width w and thickness t that they touch is at most 2 w + 2 t.
     */
    public static double flatPanels(double width, double thickness, double ease) {
        return width + thickness + ease;
    }

    /**
     * Width of leather that is moulded wet over a body lying on a flat back, without its flange: over the top and down both
     * sides, round the outside of the bends. Common practice.
     *
     * @param depth how far the body stands up from the back
     * @param leather thickness of the leather
     */
    public static double moulded(double width, double depth, double leather) {
        return width + 2 * depth + 2 * leather;
    }

    /**
     * Leather that a bend takes, along the middle of its thickness. Published for sheet metal with the neutral line at half the
     * thickness; for leather folded damp, common practice.
     *
     * @param insideRadius radius of what it is bent round
     * @param angleRad by how much it is turned
     */
    public static double bend(double insideRadius, double leather, double angleRad) {
        return angleRad * (insideRadius + leather / 2);
    }

    /**
     * By how much an inner layer is shorter than the outer one round a common bend, so that it lies smooth when it is closed:
     * the angle times the distance between the middles of both layers. Plane geometry.
     */
    public static double innerShorter(double outerLeather, double innerLeather, double angleRad) {
        return angleRad * (outerLeather + innerLeather) / 2;
    }

    /**
     * Width of a strip that is folded round an edge and covers both faces: plane geometry, its two bends of a quarter turn round
     * the corners of the stack, along the middle of its thickness.
     *
     * @param cover how far it reaches in on either face
     * @param stack thickness of what it goes round
     */
    public static double binding(double cover, double stack, double leather) {
        return 2 * cover + stack + 2 * bend(0, leather, Math.PI / 2);
    }
}
