package org.hidewright.window.begin;

import java.util.List;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.workshop.Recordable;

/** As long as a project is begun there is nothing round its questions but the workshop: no slips, no pages. */
record NoRound(Taking taking) implements Desk.Round {
    /** Takes a row of the workshop, and lets what follows go by it. */
    interface Taking {
        void take(String slip, AnswerPath path, StockLink row);
    }

    @Override
    public void take(String slip, AnswerPath path, StockLink row) {
        taking.take(slip, path, row);
    }

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
