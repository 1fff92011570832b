package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KindsOfLineTest {
    /** Unbroken lines are told by their weight, three times apart within one view, or by what is beside them. */
    private static final Set<Role> UNBROKEN =
            EnumSet.of(Role.CUT, Role.STITCH_HOLE, Role.DIRECTION, Role.NOTE, Role.SECTION, Role.GRAIN, Role.HARDWARE);

    @ParameterizedTest
    @EnumSource
    void everyRoleHasALineOfItsOwnWithoutColour(Role role) {
        assertTrue(RoleLine.of(role).line().tone().isGrey());
        for (Role other : Role.values()) {
            if (other != role) {
                assertNotEquals(pattern(role), pattern(other), role + " looks like " + other);
            }
        }
    }

    /** All but the weight: dashes, ends, fill, arrows; unbroken plain lines by weight as well. */
    private static List<Object> pattern(Role role) {
        RoleLine look = RoleLine.of(role);
        String fill = String.valueOf(look.fill());
        boolean plain = look.line().dashes().isEmpty() && look.fill() == null && !look.arrows();
        double weight = plain ? look.line().widthMm() : 0;
        return List.of(look.line().dashes(), look.line().round(), fill, look.arrows(), weight);
    }

    @Test
    void brokenLinesAreBrokenAndUnbrokenOnesAreNot() {
        for (Role role : Role.values()) {
            assertTrue(
                    UNBROKEN.contains(role) == RoleLine.of(role).line().dashes().isEmpty(), role.name());
        }
    }

    @Test
    void anExplainingLineIsAtMostAThirdAsHeavyAsACut() {
        assertTrue(3 * RoleLine.of(Role.NOTE).line().widthMm()
                <= RoleLine.of(Role.CUT).line().widthMm());
        assertFalse(RoleLine.of(Role.GRAIN).line().widthMm()
                <= RoleLine.of(Role.CUT).line().widthMm());
    }

    /** WCAG 2.1, success criterion 1.4.3: relative luminance and contrast ratio, at least 4.5 to 1 for text. */
    @ParameterizedTest
    @EnumSource(names = {"INK", "QUIET", "ACCENT"})
    void textStandsOutFromThePaper(Tone tone) {
        assertTrue(1.05 / (luminance(tone) + 0.05) >= 4.5, tone.name());
    }

    /** What is coloured is no paler than quiet text when a printer turns it grey. */
    @Test
    void theAccentIsDarkInBlackAndWhite() {
        assertTrue(luminance(Tone.ACCENT) <= luminance(Tone.QUIET));
    }

    private static double luminance(Tone tone) {
        return 0.2126 * linear(tone.red()) + 0.7152 * linear(tone.green()) + 0.0722 * linear(tone.blue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
