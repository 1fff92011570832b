package org.hidewright.core.window;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.core.wording.UnitSystem;

/** The program as a window. A service, made when a window is first asked for. */
public interface ProjectWindow {
    /**
     * What a window is opened with.
     *
     * @param project file to show at once
     * @param workshop file with the maker’s tools and stock
     * @param language of every text
     * @param units of what says nothing of them itself; empty where nobody asked for any
     * @param pictures folder to put pictures of each main state into; the window closes itself after the last
     */
    record Opening(
            Optional<Path> project,
            Optional<Path> workshop,
            Locale language,
            Optional<UnitSystem> units,
            Optional<Path> pictures) {}

    /**
     * Shows the window until the maker closes it. Must be called on the first thread of the program: some systems draw
     * on no other.
     *
     * @return exit code of the program, 0 where all went well
     */
    int open(Opening opening);
}
