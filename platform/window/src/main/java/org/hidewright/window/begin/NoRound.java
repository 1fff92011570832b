package org.hidewright.window.begin;

import java.util.List;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.workshop.Recordable;

/** As long as a project is begun there is nothing round its questions: no slips, no pages. */
final class NoRound implements Desk.Round {
    @Override
    public boolean isFolded(String slip) {
        return false;
    }

    @Override
    public void fold(String slip, boolean folded) {}

    @Override
    public void compare(String slip) {}

    @Override
    public void tryOut(String slip) {}

    @Override
    public void draw(String slip) {}

    @Override
    public void tables(String slip) {}

    @Override
    public List<Recordable> recordable(String slip) {
        return List.of();
    }

    @Override
    public void record(Recordable answer) {}

    @Override
    public void installed(String calculator) {}
}
