package org.hidewright.core.jobcard;

import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.wording.Remark;

/**
 * What must be known of a part of a range beside what is told of its middle: that there is no answer, or that something is to
 * be looked at.
 *
 * @param severity how much it matters
 * @param about what the calculator told there
 * @param what where in the range, and what
 * @param why the reason
 * @param next what to do
 */
public record RangeCheck(Severity severity, Remark about, String what, String why, String next) {}
