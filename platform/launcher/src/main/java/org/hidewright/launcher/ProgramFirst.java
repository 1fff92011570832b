package org.hidewright.launcher;

import java.util.Collection;
import java.util.Iterator;
import org.osgi.framework.Bundle;
import org.osgi.framework.hooks.resolver.ResolverHook;
import org.osgi.framework.hooks.resolver.ResolverHookFactory;
import org.osgi.framework.wiring.BundleCapability;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;

/**
 * Keeps add-ons from slipping in between the program and its parts. The framework prefers the highest version that fits, from
 * whomever it is: an add-on that offered a package of the contract, or of a library, would be given to the others
 * in its place. So nothing of the program is wired to an add-on, and an add-on not to another for what the program has.
 */
final class ProgramFirst implements ResolverHookFactory, ResolverHook {

    private final String addOns;

    /** @param settings where the folder of add-ons lies */
    ProgramFirst(SettingsFolder settings) {
        addOns = new BundleFile(0, settings.addOns()).location().replaceFirst("/?$", "/");
    }

    @Override
    public ResolverHook begin(Collection<BundleRevision> triggers) {
        return this;
    }

    private boolean isAddOn(Bundle bundle) {
        return bundle.getLocation().startsWith(addOns);
    }

    @Override
    public void filterMatches(BundleRequirement requirement, Collection<BundleCapability> candidates) {
        Bundle asks = requirement.getRevision().getBundle();
        boolean programOnly = !isAddOn(asks) || programHas(candidates);
        if (programOnly) {
            for (Iterator<BundleCapability> all = candidates.iterator(); all.hasNext(); ) {
                Bundle offers = all.next().getRevision().getBundle();
                if (offers != asks && isAddOn(offers)) {
                    all.remove();
                }
            }
        }
    }

    private boolean programHas(Collection<BundleCapability> candidates) {
        for (BundleCapability candidate : candidates) {
            if (!isAddOn(candidate.getRevision().getBundle())) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void filterResolvable(Collection<BundleRevision> candidates) {
        // all may be resolved
    }

    @Override
    public void filterSingletonCollisions(
            BundleCapability singleton, Collection<BundleCapability> collisionCandidates) {
        // the launcher has one of each name
    }

    @Override
    public void end() {
        // nothing is kept
    }
}
