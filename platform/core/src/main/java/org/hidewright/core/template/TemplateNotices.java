package org.hidewright.core.template;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** What can be wrong with a template that is written as a text. */
public final class TemplateNotices {
    public static final NoticeKind NOT_A_TEMPLATE = NoticeKind.stop("not-a-template");
    public static final NoticeKind TEMPLATE_NEWER = NoticeKind.stop("template-newer");
    public static final NoticeKind TEMPLATE_MISSING = NoticeKind.stop("template-missing");
    public static final NoticeKind TEMPLATE_DECLARATION = NoticeKind.stop("template-declaration");
    public static final NoticeKind TEMPLATE_NAME_TWICE = NoticeKind.stop("template-name-twice");
    public static final NoticeKind TEMPLATE_NAME_LATER = NoticeKind.stop("template-name-later");
    public static final NoticeKind TEMPLATE_NAMES_NOTHING = NoticeKind.stop("template-names-nothing");
    public static final NoticeKind TEMPLATE_NAMES_NOTHING_NEAREST = NoticeKind.stop("template-names-nothing-nearest");
    public static final NoticeKind TEMPLATE_OTHER_MEASURE = NoticeKind.stop("template-other-measure");
    public static final NoticeKind TEMPLATE_GIVES = NoticeKind.stop("template-gives");
    public static final NoticeKind TEMPLATE_NO_DRAWER = NoticeKind.stop("template-no-drawer");
    public static final NoticeKind TEMPLATE_NOBODY_TO_ASK = NoticeKind.stop("template-nobody-to-ask");
    public static final NoticeKind TEMPLATE_NO_SUCH_ANSWER = NoticeKind.stop("template-no-such-answer");
    public static final NoticeKind TEMPLATE_EACH_OUTSIDE = NoticeKind.stop("template-each-outside");
    public static final NoticeKind TEMPLATE_ASKS_BADLY = NoticeKind.stop("template-asks-badly");
    public static final NoticeKind TEMPLATE_TOO_MANY = NoticeKind.stop("template-too-many");

    private TemplateNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                NOT_A_TEMPLATE,
                TEMPLATE_NEWER,
                TEMPLATE_MISSING,
                TEMPLATE_DECLARATION,
                TEMPLATE_NAME_TWICE,
                TEMPLATE_NAME_LATER,
                TEMPLATE_NAMES_NOTHING,
                TEMPLATE_NAMES_NOTHING_NEAREST,
                TEMPLATE_OTHER_MEASURE,
                TEMPLATE_GIVES,
                TEMPLATE_NO_DRAWER,
                TEMPLATE_NOBODY_TO_ASK,
                TEMPLATE_NO_SUCH_ANSWER,
                TEMPLATE_EACH_OUTSIDE,
                TEMPLATE_ASKS_BADLY,
                TEMPLATE_TOO_MANY);
    }
}
