package org.hidewright.testkit;

import org.hidewright.testkit.faults.Changing;
import org.junit.jupiter.api.Test;

/** Answers that hang on something that was not asked: calls before, the clock, chance, the computer, the thread. */
class ChangingFaultsTest {
    private static final String KEEP_NOTHING = "Keep nothing from one calculation to the next";

    @Test
    void aCountOfCalls() {
        Faulty.of(new Changing.Counting())
                .fails(
                        BundleContract::theSameQuestionsHaveTheSameAnswers,
                        "counting: the answer is another one when it is asked again a moment later: area is 1.0 mm², then",
                        KEEP_NOTHING);
    }

    @Test
    void aListThatIsKeptAndAddedTo() {
        Faulty.of(new Changing.Growing())
                .fails(
                        BundleContract::theSameQuestionsHaveTheSameAnswers,
                        "growing: the answer is another one when it is asked again a moment later: told rows is 1, then",
                        KEEP_NOTHING);
    }

    @Test
    void whatIsRememberedFromTheFirstCall() {
        Faulty.of(new Changing.First())
                .fails(
                        BundleContract::theSameQuestionsHaveTheSameAnswers,
                        "first: the answer is another one when it is asked first of all after a start: area is 25.0 mm², then",
                        "Keep nothing in static fields but constants");
    }

    @Test
    void dice() {
        Faulty.of(new Changing.Chancy())
                .fails(
                        BundleContract::theSameQuestionsHaveTheSameAnswers,
                        "chancy: the answer is another one when it is asked again a moment later",
                        "take nothing from chance or the clock");
        Faulty.of(new Changing.Chancy())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "chancy: org.hidewright.testkit.faults.Changing$Chancy calls Math.random, which is chance. Work it out");
    }

    @Test
    void theClock() {
        Faulty.of(new Changing.Clocked())
                .fails(
                        BundleContract::theSameQuestionsHaveTheSameAnswers,
                        "clocked: the answer is another one when it is asked again a moment later");
        Faulty.of(new Changing.Clocked())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "clocked: org.hidewright.testkit.faults.Changing$Clocked calls System.nanoTime, which reads the clock."
                                + " Ask for the day");
    }

    /** Its answers are always the same, so that only its code tells. */
    @Test
    void aClockThatAHelperReads() {
        Faulty.of(new Changing.Helped()).theSameQuestionsHaveTheSameAnswers();
        Faulty.of(new Changing.Helped())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "helped: org.hidewright.testkit.faults.Changing$Helped$Helper calls LocalDate.now, which reads the clock");
    }

    @Test
    void chanceThatStartsAnew() {
        Faulty.of(new Changing.Dicing())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "dicing: org.hidewright.testkit.faults.Changing$Dicing calls Random, which is chance",
                        "start a Random with a fixed number");
    }

    @Test
    void aFile() {
        Faulty.of(new Changing.Reading())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "reading: org.hidewright.testkit.faults.Changing$Reading calls Files.exists, which reaches outside",
                        "read as a resource of its class");
    }

    @Test
    void threadsOfItsOwn() {
        Faulty.of(new Changing.Crowded())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "crowded: org.hidewright.testkit.faults.Changing$Crowded calls IntStream.parallel, which is work on threads");
    }

    @Test
    void theLanguageOfTheComputer() {
        Faulty.of(new Changing.Local())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "local: the answer is another one when the language of the computer is de-DE: told[1] is 25.0, then 25,0",
                        "Name the language, Locale.ROOT for keys and numbers");
        Faulty.of(new Changing.Local())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "Changing$Local calls String.format, which takes the language of the computer");
    }

    @Test
    void theLanguageOfTheComputerOnceForAll() {
        Faulty.of(new Changing.LocalAtStart())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "local-at-start: the answer is another one when the language of the computer is tr-TR: told[1] is");
    }

    @Test
    void theTimeZoneOfTheComputer() {
        Faulty.of(new Changing.Zoned())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "zoned: the answer is another one when the computer is in the time zone Pacific/Kiritimati: told[1] is",
                        "Ask for the day, a LocalDate");
        Faulty.of(new Changing.Zoned())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "Changing$Zoned calls ZoneId.systemDefault, which takes the time zone of the computer");
    }

    @Test
    void theNameOfTheThread() {
        Faulty.of(new Changing.Threaded())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "threaded: the answer is another one when it is asked on another thread: told[1] is bench, then another",
                        "Keep nothing on a thread");
    }

    @Test
    void whatIsKeptOnAThread() {
        Faulty.of(new Changing.OnThread())
                .fails(
                        BundleContract::noCodeReadsTheClockTakesChancesOrReachesOutside,
                        "Changing$OnThread calls ThreadLocal.get, which is work on threads");
        Faulty.of(new Changing.OnThread())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "on-thread: the answer is another one when it is asked on another thread: area is");
    }

    @Test
    void aFieldThatTwoSlipsShare() {
        Faulty.of(new Changing.Shared())
                .fails(
                        BundleContract::noAnswerHangsOnLanguageTimeZoneOrThread,
                        "shared: the answer is another one when it is asked on two threads at once",
                        "keep nothing in its fields");
    }
}
