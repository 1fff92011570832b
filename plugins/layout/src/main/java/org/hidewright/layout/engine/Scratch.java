package org.hidewright.layout.engine;

import java.util.IdentityHashMap;
import java.util.Map;

/** Forms to be turned while places are tried; one for each form that turns freely, of one thread. */
final class Scratch {
    private Scratch() {}

    static Turned[] of(Form[] forms) {
        Map<Form, Turned> made = new IdentityHashMap<>();
        Turned[] scratch = new Turned[forms.length];
        for (int part = 0; part < forms.length; part++) {
            Form form = forms[part];
            scratch[part] = form.listed.length > 0 ? form.listed[0] : made.computeIfAbsent(form, Turned::new);
        }
        return scratch;
    }

    /** The form at an angle: one of its listed turns, or the scratch turned there. */
    static Turned at(Form form, Turned scratch, double angle) {
        if (form.listed.length == 0) {
            if (scratch.angle != angle || scratch.maxX <= scratch.minX) {
                scratch.turn(angle);
            }
            return scratch;
        }
        for (Turned step : form.listed) {
            if (step.angle == angle) {
                return step;
            }
        }
        throw new IllegalArgumentException("A part may not lie at " + Math.toDegrees(angle) + " degrees.");
    }

    /** The form at the angle nearest to this one at which it may lie. */
    static Turned nearest(Form form, Turned scratch, double angle) {
        if (form.listed.length == 0) {
            return at(form, scratch, form.turning.nearest(angle));
        }
        Turned nearest = form.listed[0];
        for (Turned step : form.listed) {
            if (apart(step.angle, angle) < apart(nearest.angle, angle)) {
                nearest = step;
            }
        }
        return nearest;
    }

    private static double apart(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 2 * Math.PI));
    }
}
