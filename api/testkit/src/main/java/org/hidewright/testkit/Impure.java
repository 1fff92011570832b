package org.hidewright.testkit;

import java.util.Optional;
import java.util.Set;

/** What in the library of Java a calculator has no business with. */
enum Impure {
    CLOCK("which reads the clock", "Ask for the day, a LocalDate, and for times as a Duration"),
    CHANCE("which is chance", "Work it out; where a sample is wanted, start a Random with a fixed number"),
    LANGUAGE("which takes the language of the computer", "Name the language, Locale.ROOT for keys and numbers"),
    ZONE("which takes the time zone of the computer", "Ask for the day, a LocalDate"),
    THREADS("which is work on threads", "Work it out where you are called; the host has the threads"),
    OUTSIDE(
            "which reaches outside",
            "Ask for what is needed; a table that comes with the bundle is read as a resource of its" + " class");

    private static final Set<String> SYSTEM_CLOCK = Set.of("currentTimeMillis", "nanoTime");
    private static final Set<String> SYSTEM_OUTSIDE = Set.of(
            "getProperty", "getProperties", "setProperty", "getenv", "exit", "console", "load", "loadLibrary", "in");
    private static final Set<String> PROPERTIES =
            Set.of("java/lang/Integer.getInteger", "java/lang/Long.getLong", "java/lang/Boolean.getBoolean");
    private static final Set<String> RANDOM =
            Set.of("java/util/concurrent/ThreadLocalRandom", "java/security/SecureRandom");
    private static final Set<String> OLD_DATES =
            Set.of("java/util/Date", "java/util/Calendar", "java/util/GregorianCalendar", "java/text/SimpleDateFormat");
    private static final Set<String> NUMBER_FORMATS =
            Set.of("java/text/NumberFormat", "java/text/DateFormat", "java/text/Collator", "java/text/BreakIterator");
    private static final Set<String> WITH_A_LANGUAGE = Set.of(
            "java/text/DecimalFormat",
            "java/text/MessageFormat",
            "java/util/Formatter",
            "java/text/DecimalFormatSymbols");
    private static final Set<String> OUTER_CLASSES = Set.of(
            "java/lang/Process",
            "java/lang/ProcessBuilder",
            "java/lang/Runtime",
            "java/nio/file/Files",
            "java/io/RandomAccessFile",
            "java/nio/channels/FileChannel",
            "java/util/prefs/Preferences");

    private final String what;
    private final String mend;

    Impure(String what, String mend) {
        this.what = what;
        this.mend = mend;
    }

    String what() {
        return what;
    }

    String mend() {
        return mend;
    }

    /** What a call of a method or constructor is, by the names in a class file; empty where a pure function may do it. */
    static Optional<Impure> of(String owner, String name, String descriptor) {
        if (isClock(owner, name)) {
            return Optional.of(CLOCK);
        } else if (isChance(owner, name, descriptor)) {
            return Optional.of(CHANCE);
        } else if (isLanguage(owner, name, descriptor)) {
            return Optional.of(LANGUAGE);
        } else if (owner.equals("java/util/TimeZone") && name.equals("getDefault")
                || owner.equals("java/time/ZoneId") && name.equals("systemDefault")) {
            return Optional.of(ZONE);
        } else if (isThreads(owner, name)) {
            return Optional.of(THREADS);
        }
        return isOutside(owner, name) ? Optional.of(OUTSIDE) : Optional.empty();
    }

    private static boolean isClock(String owner, String name) {
        return owner.equals("java/lang/System") && SYSTEM_CLOCK.contains(name)
                || owner.startsWith("java/time/") && name.equals("now")
                || owner.equals("java/time/Clock") && name.startsWith("system")
                || OLD_DATES.contains(owner);
    }

    private static boolean isChance(String owner, String name, String descriptor) {
        boolean unseeded = name.equals("<init>") && descriptor.equals("()V");
        return RANDOM.contains(owner)
                || owner.equals("java/lang/Math") && name.equals("random")
                || (owner.equals("java/util/Random") || owner.equals("java/util/SplittableRandom")) && unseeded
                || owner.equals("java/util/UUID") && name.equals("randomUUID")
                || owner.equals("java/util/Collections") && name.equals("shuffle") && !descriptor.contains("Random")
                || owner.equals("java/lang/System") && name.equals("identityHashCode");
    }

    private static boolean isLanguage(String owner, String name, String descriptor) {
        boolean unnamed =
                !descriptor.contains("Ljava/util/Locale;") && !descriptor.contains("Ljava/text/DecimalFormatSymbols;");
        boolean made = name.equals("<init>");
        return owner.equals("java/util/Locale") && name.equals("getDefault")
                || unnamed
                        && (owner.equals("java/lang/String")
                                        && (Set.of("toLowerCase", "toUpperCase", "format", "formatted")
                                                .contains(name))
                                || NUMBER_FORMATS.contains(owner) && name.startsWith("get") && name.endsWith("Instance")
                                || WITH_A_LANGUAGE.contains(owner) && (made || name.equals("getInstance"))
                                || owner.equals("java/util/ResourceBundle") && name.equals("getBundle")
                                || owner.equals("java/util/Scanner") && made
                                || owner.equals("java/time/format/DateTimeFormatter") && name.equals("ofPattern"));
    }

    private static boolean isThreads(String owner, String name) {
        return owner.equals("java/lang/Thread")
                || owner.equals("java/lang/ThreadLocal")
                || owner.equals("java/util/Timer")
                || owner.equals("java/util/concurrent/Executors")
                || owner.equals("java/util/concurrent/ForkJoinPool")
                || owner.equals("java/util/concurrent/CompletableFuture")
                || owner.startsWith("java/util/") && (name.equals("parallelStream") || name.equals("parallel"));
    }

    private static boolean isOutside(String owner, String name) {
        return OUTER_CLASSES.contains(owner)
                || owner.startsWith("java/net/")
                || owner.startsWith("java/io/File")
                || owner.equals("java/lang/System") && SYSTEM_OUTSIDE.contains(name)
                || PROPERTIES.contains(owner + "." + name);
    }
}
