package org.hidewright.layout.task;

/**
 * A place within a piece that asks for better leather than the rest of it, as what is seen of a part whose rim is hidden.
 *
 * @param outline about the same point as that of the piece
 * @param avoids the kinds of zones that may not lie under it, as of a piece
 */
public record Inner(Outline outline, long avoids) {}
