package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a calculator may call, and what not, by the names that stand in class files. */
class ImpureTest {
    @ParameterizedTest(name = "{0}.{1}{2} is {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "java/lang/System       | currentTimeMillis | ()J                                    | CLOCK",
                "java/time/LocalDate    | now               | ()Ljava/time/LocalDate;                | CLOCK",
                "java/time/Instant      | now               | ()Ljava/time/Instant;                  | CLOCK",
                "java/util/Date         | <init>            | ()V                                    | CLOCK",
                "java/time/LocalDate    | plusDays          | (J)Ljava/time/LocalDate;               |",
                "java/util/Random       | <init>            | ()V                                    | CHANCE",
                "java/util/Random       | <init>            | (J)V                                   |",
                "java/util/UUID         | randomUUID        | ()Ljava/util/UUID;                     | CHANCE",
                "java/util/Collections  | shuffle           | (Ljava/util/List;)V                    | CHANCE",
                "java/util/Collections  | shuffle           | (Ljava/util/List;Ljava/util/Random;)V  |",
                "java/util/Locale       | getDefault        | ()Ljava/util/Locale;                   | LANGUAGE",
                "java/lang/String       | toLowerCase       | ()Ljava/lang/String;                   | LANGUAGE",
                "java/lang/String       | toLowerCase       | (Ljava/util/Locale;)Ljava/lang/String; |",
                "java/text/DecimalFormat | <init>           | (Ljava/lang/String;)V                  | LANGUAGE",
                "java/text/NumberFormat | getInstance       | (Ljava/util/Locale;)Ljava/text/NumberFormat; |",
                "java/util/TimeZone     | getDefault        | ()Ljava/util/TimeZone;                 | ZONE",
                "java/lang/Thread       | sleep             | (J)V                                   | THREADS",
                "java/util/List         | parallelStream    | ()Ljava/util/stream/Stream;            | THREADS",
                "java/util/List         | stream            | ()Ljava/util/stream/Stream;            |",
                "java/nio/file/Files    | readString        | (Ljava/nio/file/Path;)Ljava/lang/String; | OUTSIDE",
                "java/io/FileReader     | <init>            | (Ljava/lang/String;)V                  | OUTSIDE",
                "java/net/URL           | openStream        | ()Ljava/io/InputStream;                | OUTSIDE",
                "java/lang/System       | getProperty       | (Ljava/lang/String;)Ljava/lang/String; | OUTSIDE",
                "java/lang/Class        | getResourceAsStream | (Ljava/lang/String;)Ljava/io/InputStream; |",
                "java/lang/System       | arraycopy         | (Ljava/lang/Object;ILjava/lang/Object;II)V |",
                "java/lang/Math         | sin               | (D)D                                   |",
            })
    void isWhatItIs(String owner, String name, String descriptor, Impure expected) {
        assertEquals(Optional.ofNullable(expected), Impure.of(owner, name, descriptor));
    }
}
