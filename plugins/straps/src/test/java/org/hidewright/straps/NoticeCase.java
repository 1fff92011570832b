package org.hidewright.straps;

import org.hidewright.api.calculator.Outcome;

/**
 * One thing that is caught.
 *
 * @param place where it is told; null where that is not looked at
 * @param raised what is worked with the fault
 * @param mended the same just mended; null where it is told always
 */
record NoticeCase(String key, String place, Outcome<?> raised, Outcome<?> mended) {}
