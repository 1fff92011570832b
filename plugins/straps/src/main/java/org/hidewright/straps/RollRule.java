package org.hidewright.straps;

/** Which length of a roll is meant; over N turns of thickness t the rules differ by about π N t. */
enum RollRule {
    /** Sum of the circles at the middle of each layer; also the area rule. */
    LAYERS,
    /** The spiral from the core’s radius to the roll’s outer radius. */
    SPIRAL,
    /** The spiral of the mid-line of a layer that starts on the core. */
    SPIRAL_OF_MID_LINE
}
