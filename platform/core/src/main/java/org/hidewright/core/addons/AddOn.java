package org.hidewright.core.addons;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A bundle that can be turned on and off, as this start of the program found it.
 *
 * @param id its symbolic name, by which commands know it; empty where its file has none
 * @param name what its author calls it; the name of its file where that says nothing
 * @param maker who made it, as its author says; empty where that says nothing
 * @param version its version, without the qualifier of a build; empty where its file has none
 * @param origin who put it here
 * @param state what became of it
 * @param why the sentence that says why it did not start; empty unless it failed
 * @param calculators ids of the calculators it declares, in alphabetical order
 * @param tables ids of the tables of the workshop it declares, in alphabetical order
 * @param asks ids of calculators of others that its texts draw with or ask
 * @param code whether it has code, and not texts alone
 * @param follows the folder its texts are read from each time; empty where they are those of its jar
 * @param file its jar
 * @param names its name in other languages, by their codes
 */
public record AddOn(
        String id,
        String name,
        String maker,
        String version,
        Origin origin,
        State state,
        String why,
        List<String> calculators,
        List<String> tables,
        List<String> asks,
        boolean code,
        String follows,
        Path file,
        Map<String, String> names) {
    public AddOn {
        names = Map.copyOf(names);
    }

    /** One that may have code, carries no texts that ask somebody, and follows no folder. */
    public AddOn(
            String id,
            String name,
            String maker,
            String version,
            Origin origin,
            State state,
            String why,
            List<String> calculators,
            List<String> tables,
            Path file) {
        this(id, name, maker, version, origin, state, why, calculators, tables, List.of(), true, "", file, Map.of());
    }

    /** What it is called in a language; as its author calls it where that is not said. */
    public String name(Locale language) {
        return Stream.of(language.toString(), language.getLanguage())
                .flatMap(code -> Optional.ofNullable(names.get(code)).stream())
                .findFirst()
                .orElse(name);
    }

    /** Who put it here. */
    public enum Origin {
        /** It came with the program. */
        PROGRAM,
        /** The maker installed it. */
        MAKER
    }

    /** What became of it. */
    public enum State {
        /** It was started. */
        ON,
        /** The maker has turned it off. */
        OFF,
        /** The maker had this one start leave out all that was installed. */
        LEFT_OUT,
        /** It did not start. */
        FAILED,
        /** It was put here by hand and starts once the maker, told what a bundle may do, turns it on. */
        WAITING,
        /** It is new, and the next start will show. */
        NEXT_START
    }
}
