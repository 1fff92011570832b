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
}
