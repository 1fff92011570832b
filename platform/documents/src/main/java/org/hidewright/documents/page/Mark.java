package org.hidewright.documents.page;

/** One thing drawn, at its place within a piece: it reaches from {@code top} to {@code bottom}. */
interface Mark {
    double top();

    double bottom();

    /** Draws it with the piece's top left corner at a place on the sheet. */
    void draw(Canvas canvas, double x, double y);

    /** The same mark, moved within its piece. */
    default Mark moved(double right, double down) {
        Mark self = this;
        return new Mark() {
            @Override
            public double top() {
                return self.top() + down;
            }

            @Override
            public double bottom() {
                return self.bottom() + down;
            }

            @Override
            public void draw(Canvas canvas, double x, double y) {
                self.draw(canvas, x + right, y + down);
            }
        };
    }
}
