package org.hidewright.stitching;

/** What a thread is spun of, with its density: Morton and Hearle, Table 5.1, and for linen a handbook of fibres. */
public enum Fibre {
    POLYESTER(1.39),
    NYLON(1.14),
    LINEN(1.53),
    COTTON(1.52),
    SILK(1.34),
    ARAMID(1.44);

    private final double gramsPerCm3;

    Fibre(double gramsPerCm3) {
        this.gramsPerCm3 = gramsPerCm3;
    }

    double gramsPerCm3() {
        return gramsPerCm3;
    }
}
