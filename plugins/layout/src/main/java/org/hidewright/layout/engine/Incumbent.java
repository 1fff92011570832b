package org.hidewright.layout.engine;

/** The shortest legal layout that any of several searches has found so far. */
final class Incumbent {
    private final Places places;
    private final Places trial;
    private final Offer offer;
    private volatile double length = Double.POSITIVE_INFINITY;

    Incumbent(int parts, Offer offer) {
        places = new Places(parts);
        trial = new Places(parts);
        this.offer = offer;
    }

    /** Who is told of a layout, and may refuse it. */
    interface Offer {
        boolean accepts(double length, Places places);
    }

    double length() {
        return length;
    }

    /** Keeps a legal layout if it is shorter than what is kept and nobody refuses it. */
    synchronized boolean offer(double newLength, Crowd crowd) {
        if (newLength >= length) {
            return false;
        }
        crowd.keep(trial);
        if (!offer.accepts(newLength, trial)) {
            return false;
        }
        places.take(trial);
        length = newLength;
        return true;
    }

    /** Hands over the layout that is kept, and its length. */
    synchronized double take(Places into) {
        into.take(places);
        return length;
    }
}
