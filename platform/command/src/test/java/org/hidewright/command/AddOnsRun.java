package org.hidewright.command;

import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.command.kit.Strap;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnIndexes;
import org.mockito.Mockito;

/** Add-ons on the command line, with what is told of them made up; what is done with files is tested where it is done. */
abstract class AddOnsRun {
    final Terminal terminal = new Terminal(new Strap());

    static AddOn addOn(String id, Origin origin, State state, String... calculators) {
        return new AddOn(
                id,
                id.equals("belts") ? "Belt Pack" : id,
                "",
                "1.2.3",
                origin,
                state,
                state == State.FAILED ? "Nets broke." : "",
                List.of(calculators),
                List.of(),
                Path.of("addons", id + ".jar"));
    }

    int run(String... arguments) {
        List<String> all = new ArrayList<>(List.of("addons", "--language=en"));
        all.addAll(List.of(arguments));
        return terminal.run(all.toArray(String[]::new));
    }

    AddOnIndexes indexes() {
        AddOnIndexes indexes = Mockito.mock(AddOnIndexes.class);
        when(terminal.addOns.indexes()).thenReturn(indexes);
        return indexes;
    }
}
