package org.hidewright.command;

import java.util.function.ToIntFunction;
import org.osgi.service.component.annotations.Component;

/** Stands where the commands will: proves that the launcher finds its entry service. */
@Component(service = ToIntFunction.class, property = "hidewright.entry=main")
public final class Placeholder implements ToIntFunction<String[]> {

    @Override
    public int applyAsInt(String[] arguments) {
        System.out.println("No commands yet: " + String.join(" ", arguments));
        return 0;
    }
}
