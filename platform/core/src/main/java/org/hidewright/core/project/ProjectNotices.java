package org.hidewright.core.project;

import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.core.catalogue.Installed;

/** What the host itself has to say about a project and what is typed in it. */
public final class ProjectNotices {
    public static final NoticeKind EMPTY_FILE = NoticeKind.stop("empty-file");
    public static final NoticeKind MORE_AFTER_END = NoticeKind.stop("more-after-end");
    public static final NoticeKind NOT_A_PROJECT = NoticeKind.stop("not-a-project");
    public static final NoticeKind NEWER_FORMAT = NoticeKind.check("newer-format");
    public static final NoticeKind MISSPELT_KEY = NoticeKind.stop("misspelt-key");
    public static final NoticeKind MISPLACED_KEY = NoticeKind.check("misplaced-key");
    public static final NoticeKind NO_SUCH_SETTING = NoticeKind.stop("no-such-setting");
    public static final NoticeKind NO_SUCH_SETTING_NEAREST = NoticeKind.stop("no-such-setting-nearest");
    public static final NoticeKind ROWS_EXPECTED = NoticeKind.stop("rows-expected");
    public static final NoticeKind SLIP_WITHOUT_ID = NoticeKind.stop("slip-without-id");
    public static final NoticeKind SLIP_ID_TWICE = NoticeKind.stop("slip-id-twice");
    public static final NoticeKind SLIP_WITHOUT_CALCULATOR = NoticeKind.stop("slip-without-calculator");
    public static final NoticeKind UNANSWERED = NoticeKind.stop("unanswered");
    public static final NoticeKind UNANSWERED_NO_EXAMPLE = NoticeKind.stop("unanswered-no-example");
    public static final NoticeKind NO_SUCH_OPTION = NoticeKind.stop("no-such-option");
    public static final NoticeKind NO_SUCH_OPTION_NEAREST = NoticeKind.stop("no-such-option-nearest");
    public static final NoticeKind LIST_WITH_COMMAS = NoticeKind.stop("list-with-commas");
    public static final NoticeKind NOT_YES_OR_NO = NoticeKind.stop("not-yes-or-no");
    public static final NoticeKind NOT_A_DATE = NoticeKind.stop("not-a-date");
    public static final NoticeKind NOT_WHOLE = NoticeKind.stop("not-whole");
    public static final NoticeKind WHICH_VARIANT = NoticeKind.stop("which-variant");
    public static final NoticeKind BELOW_LIMIT = NoticeKind.stop("below-limit");
    public static final NoticeKind ABOVE_LIMIT = NoticeKind.stop("above-limit");
    public static final NoticeKind RANGE_PAST_LIMIT = NoticeKind.check("range-past-limit");
    public static final NoticeKind UNUSUAL = NoticeKind.note("unusual");
    public static final NoticeKind BARE_FRACTION = NoticeKind.check("bare-fraction");
    public static final NoticeKind MIDPOINT = NoticeKind.note("midpoint");
    public static final NoticeKind LINK_NO_SLIP = NoticeKind.stop("link-no-slip");
    public static final NoticeKind LINK_NO_SLIP_NEAREST = NoticeKind.stop("link-no-slip-nearest");
    public static final NoticeKind LINK_NO_ANSWER = NoticeKind.stop("link-no-answer");
    public static final NoticeKind LINK_NO_ANSWER_NEAREST = NoticeKind.stop("link-no-answer-nearest");
    public static final NoticeKind LINK_NO_ROW = NoticeKind.stop("link-no-row");
    public static final NoticeKind LINK_NO_ROW_NEAREST = NoticeKind.stop("link-no-row-nearest");
    public static final NoticeKind LINK_NO_COLUMN = NoticeKind.stop("link-no-column");
    public static final NoticeKind LINK_NO_TABLE = NoticeKind.stop("link-no-table");
    public static final NoticeKind LINK_NO_VALUE = NoticeKind.stop("link-no-value");
    public static final NoticeKind LINK_WRONG_KIND = NoticeKind.stop("link-wrong-kind");
    public static final NoticeKind LINK_NOT_HERE = NoticeKind.stop("link-not-here");
    public static final NoticeKind ITEM_TYPED = NoticeKind.stop("item-typed");
    public static final NoticeKind CIRCLE = NoticeKind.stop("circle");
    public static final NoticeKind CIRCLE_OF_ONE = NoticeKind.stop("circle-of-one");
    /** No stop of its own: the first slip of the circle has it. */
    public static final NoticeKind IN_CIRCLE = NoticeKind.note("in-circle");

    public static final NoticeKind WAITS = NoticeKind.stop("waits");
    public static final NoticeKind DORMANT = NoticeKind.stop("dormant");
    public static final NoticeKind DORMANT_FROM = NoticeKind.stop("dormant-from");
    public static final NoticeKind DORMANT_OFF = NoticeKind.stop("dormant-off");
    public static final NoticeKind DORMANT_FAILED = NoticeKind.stop("dormant-failed");
    public static final NoticeKind DORMANT_WAITING = NoticeKind.stop("dormant-waiting");
    public static final NoticeKind DORMANT_NEAREST = NoticeKind.stop("dormant-nearest");
    public static final NoticeKind DORMANT_NEWER = NoticeKind.stop("dormant-newer");
    public static final NoticeKind DORMANT_UNUSABLE = NoticeKind.stop("dormant-unusable");
    public static final NoticeKind WORKED_BY_OTHER = NoticeKind.check("worked-by-other");
    public static final NoticeKind BROKEN = NoticeKind.stop("broken");
    public static final NoticeKind LEFT_ALONE = NoticeKind.stop("left-alone");
    public static final NoticeKind TOO_MUCH = NoticeKind.check("too-much");

    public static final NoticeKind NOT_SEARCHED = NoticeKind.check("not-searched");
    public static final NoticeKind SEARCHED_OTHERWISE = NoticeKind.check("searched-otherwise");
    public static final NoticeKind EXAMPLES_TAKEN = NoticeKind.check("examples-taken");

    private ProjectNotices() {}

    /**
     * A calculator has failed: a fault of its bundle, not of the numbers.
     *
     * @param leftAlone whether the bundle is not called again until the program is started anew
     * @param words what happened: a text, or a phrase of the host
     */
    public static Notice failed(Installed calculator, boolean leftAlone, Object words) {
        return leftAlone
                ? ProjectNotices.LEFT_ALONE.with(calculator.id(), calculator.bundle(), words)
                : ProjectNotices.BROKEN.with(calculator.id(), calculator.bundle(), words);
    }

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                EMPTY_FILE,
                MORE_AFTER_END,
                NOT_A_PROJECT,
                NEWER_FORMAT,
                MISSPELT_KEY,
                MISPLACED_KEY,
                NO_SUCH_SETTING,
                NO_SUCH_SETTING_NEAREST,
                ROWS_EXPECTED,
                SLIP_WITHOUT_ID,
                SLIP_ID_TWICE,
                SLIP_WITHOUT_CALCULATOR,
                UNANSWERED,
                UNANSWERED_NO_EXAMPLE,
                NO_SUCH_OPTION,
                NO_SUCH_OPTION_NEAREST,
                LIST_WITH_COMMAS,
                NOT_YES_OR_NO,
                NOT_A_DATE,
                NOT_WHOLE,
                WHICH_VARIANT,
                BELOW_LIMIT,
                ABOVE_LIMIT,
                RANGE_PAST_LIMIT,
                UNUSUAL,
                BARE_FRACTION,
                MIDPOINT,
                LINK_NO_SLIP,
                LINK_NO_SLIP_NEAREST,
                LINK_NO_ANSWER,
                LINK_NO_ANSWER_NEAREST,
                LINK_NO_ROW,
                LINK_NO_ROW_NEAREST,
                LINK_NO_COLUMN,
                LINK_NO_TABLE,
                LINK_NO_VALUE,
                LINK_WRONG_KIND,
                LINK_NOT_HERE,
                ITEM_TYPED,
                CIRCLE,
                CIRCLE_OF_ONE,
                IN_CIRCLE,
                WAITS,
                DORMANT,
                DORMANT_FROM,
                DORMANT_OFF,
                DORMANT_FAILED,
                DORMANT_WAITING,
                DORMANT_NEAREST,
                DORMANT_NEWER,
                DORMANT_UNUSABLE,
                WORKED_BY_OTHER,
                BROKEN,
                LEFT_ALONE,
                TOO_MUCH,
                NOT_SEARCHED,
                SEARCHED_OTHERWISE,
                EXAMPLES_TAKEN);
    }
}
