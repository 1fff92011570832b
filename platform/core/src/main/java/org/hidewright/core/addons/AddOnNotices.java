package org.hidewright.core.addons;

import java.util.List;
import org.hidewright.api.calculator.NoticeKind;

/** Why bundles cannot be installed, removed, or turned on and off. */
public final class AddOnNotices {
    public static final NoticeKind ADD_ON_NOT_THERE = NoticeKind.stop("add-on-not-there");
    public static final NoticeKind ADD_ON_NOT_READ = NoticeKind.stop("add-on-not-read");
    public static final NoticeKind ADD_ON_NO_JAR = NoticeKind.stop("add-on-no-jar");
    public static final NoticeKind ADD_ON_NO_BUNDLE = NoticeKind.stop("add-on-no-bundle");
    public static final NoticeKind ADD_ON_BAD_NAME = NoticeKind.stop("add-on-bad-name");
    public static final NoticeKind ADD_ON_BAD_VERSION = NoticeKind.stop("add-on-bad-version");
    public static final NoticeKind ADD_ON_UNSOUND = NoticeKind.stop("add-on-unsound");
    public static final NoticeKind ADD_ON_FOLLOWS = NoticeKind.stop("add-on-follows");
    public static final NoticeKind ADD_ON_EMPTY_FOLDER = NoticeKind.stop("add-on-empty-folder");
    public static final NoticeKind ADD_ON_TWICE = NoticeKind.stop("add-on-twice");
    public static final NoticeKind ADD_ON_OF_PROGRAM = NoticeKind.stop("add-on-of-program");
    public static final NoticeKind ADD_ON_INSTALLED = NoticeKind.stop("add-on-installed");
    public static final NoticeKind ADD_ON_UNKNOWN = NoticeKind.stop("add-on-unknown");
    public static final NoticeKind ADD_ON_UNKNOWN_NEAREST = NoticeKind.stop("add-on-unknown-nearest");
    public static final NoticeKind ADD_ON_NONE = NoticeKind.stop("add-on-none");
    public static final NoticeKind ADD_ON_CAME_WITH = NoticeKind.stop("add-on-came-with");
    public static final NoticeKind ADD_ON_OF_PLATFORM = NoticeKind.stop("add-on-of-platform");
    public static final NoticeKind ADD_ON_NAMELESS = NoticeKind.stop("add-on-nameless");
    public static final NoticeKind ADD_ON_NOT_CHANGED = NoticeKind.stop("add-on-not-changed");

    public static final NoticeKind ADD_ON_NOT_STARTED = NoticeKind.check("add-on-not-started");

    private AddOnNotices() {}

    /** Every kind, so that texts can be checked and listed. */
    public static List<NoticeKind> all() {
        return List.of(
                ADD_ON_NOT_THERE,
                ADD_ON_NOT_READ,
                ADD_ON_NO_JAR,
                ADD_ON_NO_BUNDLE,
                ADD_ON_BAD_NAME,
                ADD_ON_BAD_VERSION,
                ADD_ON_UNSOUND,
                ADD_ON_FOLLOWS,
                ADD_ON_EMPTY_FOLDER,
                ADD_ON_TWICE,
                ADD_ON_OF_PROGRAM,
                ADD_ON_INSTALLED,
                ADD_ON_UNKNOWN,
                ADD_ON_UNKNOWN_NEAREST,
                ADD_ON_NONE,
                ADD_ON_CAME_WITH,
                ADD_ON_OF_PLATFORM,
                ADD_ON_NAMELESS,
                ADD_ON_NOT_CHANGED,
                ADD_ON_NOT_STARTED);
    }
}
