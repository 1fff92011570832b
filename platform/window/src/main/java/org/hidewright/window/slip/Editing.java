package org.hidewright.window.slip;

import java.util.Optional;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.Answering;
import org.hidewright.window.words.WindowTexts;

/**
 * What the editors of questions need.
 *
 * @param answers takes what is typed
 * @param links where questions can be linked to answers; empty where they are only typed
 */
public record Editing(Inks inks, WindowTexts texts, Answering answers, Optional<Desk> links) {}
