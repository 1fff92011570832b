package org.hidewright.distribution;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.Version;

/** Classes that break the rule on purpose, each in another place, and two that keep it. */
public final class Planted {

    private Planted() {}

    public record InAComponent(Version version) {}

    public interface InAReturnedListsArgument {
        List<? extends Map<String, Version[]>> versions();
    }

    public interface InAThrowsClause {
        void open() throws BundleException;
    }

    public static class InAProtectedField {
        protected Version version;
    }

    public abstract static class InABound<T extends Supplier<Version>> {}

    public abstract static class InAParent implements Bundle {}

    public static class OnlyInside {
        private Version version;

        Version hidden() {
            return version;
        }
    }

    record NotShownAtAll(Version version) {}
}
