package org.hidewright.addons;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.apache.felix.utils.resource.RequirementImpl;
import org.apache.felix.utils.resource.ResourceImpl;
import org.osgi.framework.Constants;
import org.osgi.framework.namespace.IdentityNamespace;
import org.osgi.resource.Capability;
import org.osgi.resource.Namespace;
import org.osgi.resource.Requirement;
import org.osgi.resource.Resource;
import org.osgi.resource.Wiring;
import org.osgi.service.resolver.HostedCapability;
import org.osgi.service.resolver.ResolutionException;
import org.osgi.service.resolver.ResolveContext;
import org.osgi.service.resolver.Resolver;

/**
 * Which bundles it takes to have others, found by the resolver that the framework itself uses (OSGi Core, Resolver Service), so that
 * what is installed also starts. What the program offers is taken from the program, as at a start; of each name one version.
 */
final class Needs {
    /** Each time that two versions of a name would be needed, one of them is left out; more than that is no shop. */
    private static final int MOST_TRIES = 200;

    private static final String EFFECTIVE_ACTIVE = "active";

    private final Supplier<Resolver> resolver;
    private final Supplier<Map<Resource, Wiring>> program;

    /**
     * Needs within a program.
     *
     * @param program the bundles of the program, as they are wired
     */
    Needs(Supplier<Resolver> resolver, Supplier<Map<Resource, Wiring>> program) {
        this.resolver = resolver;
        this.program = program;
    }

    /** What keeps bundles from being had: what {@code resource} needs is nowhere, or null where they do not go together. */
    static final class Unmet extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Resource resource;
        private final transient Requirement need;

        Unmet(Resource resource, Requirement need) {
            this.resource = resource;
            this.need = need;
        }

        Optional<Requirement> need() {
            return Optional.ofNullable(need);
        }

        Resource resource() {
            return resource;
        }
    }

    /**
     * The bundles it takes.
     *
     * @param wanted ids that are to be among them
     * @param pool what there is of each id, what is taken first before what is taken rather not
     * @param calculators ids of those that the program has
     * @return of each id one at most, by id
     */
    Map<String, Listed> of(Collection<String> wanted, Map<String, List<Listed>> pool, Set<String> calculators)
            throws Unmet {
        if (wanted.isEmpty()) {
            return Map.of();
        }
        return new Search(wanted, program.get(), calculators).of(pool);
    }

    /** One search, which tries one version after another where two would be needed. */
    private final class Search {
        private final Resource shop;
        private final Map<Resource, Wiring> wirings;
        private final Map<String, List<Capability>> offered = new HashMap<>();
        private final Set<String> calculators;
        private int tries;

        Search(Collection<String> wanted, Map<Resource, Wiring> wirings, Set<String> calculators) {
            this.wirings = wirings;
            this.calculators = calculators;
            ResourceImpl all = new ResourceImpl();
            for (String id : wanted) {
                all.addRequirement(new RequirementImpl(
                        all,
                        IdentityNamespace.IDENTITY_NAMESPACE,
                        "(" + IdentityNamespace.IDENTITY_NAMESPACE + "=" + id + ")"));
            }
            shop = all;
            for (Wiring wiring : wirings.values()) {
                for (Capability capability : wiring.getResourceCapabilities(null)) {
                    offered.computeIfAbsent(capability.getNamespace(), namespace -> new ArrayList<>())
                            .add(capability);
                }
            }
        }

        Map<String, Listed> of(Map<String, List<Listed>> pool) throws Unmet {
            Map<Resource, Listed> listed = new LinkedHashMap<>();
            pool.values().forEach(versions -> versions.forEach(one -> listed.put(one.resource(), one)));
            Choice choice = new Choice(shop, wirings, offered, calculators, listed.keySet());
            Map<String, List<Listed>> found = new TreeMap<>();
            try {
                for (Resource resource : resolver.get().resolve(choice).keySet()) {
                    Listed one = listed.get(resource);
                    if (one != null) {
                        found.computeIfAbsent(one.id(), id -> new ArrayList<>()).add(one);
                    }
                }
            } catch (ResolutionException e) {
                throw choice.unmet();
            }
            Optional<String> twice = found.keySet().stream()
                    .filter(id -> found.get(id).size() > 1)
                    .findFirst();
            if (twice.isPresent()) {
                return withOneOf(twice.get(), pool);
            }
            Map<String, Listed> one = new TreeMap<>();
            found.forEach((id, versions) -> one.put(id, versions.get(0)));
            return one;
        }

        private Map<String, Listed> withOneOf(String id, Map<String, List<Listed>> pool) throws Unmet {
            for (Listed version : pool.get(id)) {
                if (++tries > MOST_TRIES) {
                    break;
                }
                Map<String, List<Listed>> less = new LinkedHashMap<>(pool);
                less.put(id, List.of(version));
                try {
                    return of(less);
                } catch (Unmet other) {
                    // the next may do
                }
            }
            throw new Unmet(pool.get(id).get(0).resource(), null);
        }
    }

    /** What the resolver asks of us. */
    private static final class Choice extends ResolveContext {
        private final Resource shop;
        private final Map<Resource, Wiring> wirings;
        private final Map<String, List<Capability>> program;
        private final Set<String> calculators;
        private final Collection<Resource> pool;

        Choice(
                Resource shop,
                Map<Resource, Wiring> wirings,
                Map<String, List<Capability>> program,
                Set<String> calculators,
                Collection<Resource> pool) {
            this.shop = shop;
            this.wirings = wirings;
            this.program = program;
            this.calculators = calculators;
            this.pool = pool;
        }

        @Override
        public Collection<Resource> getMandatoryResources() {
            return List.of(shop);
        }

        /** The program first, as at a start. */
        @Override
        public List<Capability> findProviders(Requirement need) {
            RequirementImpl asked =
                    need instanceof RequirementImpl ours ? ours : new RequirementImpl(need.getResource(), need);
            List<Capability> found = new ArrayList<>();
            for (Capability capability : program.getOrDefault(need.getNamespace(), List.of())) {
                if (asked.matches(capability)) {
                    found.add(capability);
                }
            }
            if (found.isEmpty()) {
                for (Resource resource : pool) {
                    resource.getCapabilities(need.getNamespace()).stream()
                            .filter(asked::matches)
                            .forEach(found::add);
                }
            }
            return found;
        }

        @Override
        public int insertHostedCapability(List<Capability> capabilities, HostedCapability hosted) {
            capabilities.add(hosted);
            return capabilities.size() - 1;
        }

        /** Services that a bundle asks for come along where an index has them; the framework starts it without as well. */
        @Override
        public boolean isEffective(Requirement need) {
            if (Listed.calculator(need).filter(calculators::contains).isPresent()) {
                return false; // the program has it, and comes first
            }
            String effective = need.getDirectives()
                    .getOrDefault(Namespace.REQUIREMENT_EFFECTIVE_DIRECTIVE, Namespace.EFFECTIVE_RESOLVE);
            return effective.equals(Namespace.EFFECTIVE_RESOLVE)
                    || effective.equals(EFFECTIVE_ACTIVE)
                            && !findProviders(need).isEmpty();
        }

        @Override
        public Map<Resource, Wiring> getWirings() {
            return wirings;
        }

        Unmet unmet() {
            return unmet(shop, new HashSet<>()).orElseGet(() -> new Unmet(shop, null));
        }

        /** What is at the bottom of it: the first that needs what is nowhere. */
        private Optional<Unmet> unmet(Resource resource, Set<Resource> seen) {
            if (!seen.add(resource)) {
                return Optional.empty();
            }
            for (Requirement need : resource.getRequirements(null)) {
                if (isEffective(need) && isMandatory(need)) {
                    List<Capability> providers = findProviders(need);
                    if (providers.isEmpty()) {
                        return Optional.of(new Unmet(resource, need));
                    }
                    List<Optional<Unmet>> below = providers.stream()
                            .map(provider -> pool.contains(provider.getResource())
                                    ? unmet(provider.getResource(), seen)
                                    : Optional.<Unmet>empty())
                            .toList();
                    if (below.stream().allMatch(Optional::isPresent)) {
                        return below.get(0);
                    }
                }
            }
            return Optional.empty();
        }

        private static boolean isMandatory(Requirement need) {
            String resolution = need.getDirectives()
                    .getOrDefault(Namespace.REQUIREMENT_RESOLUTION_DIRECTIVE, Namespace.RESOLUTION_MANDATORY);
            return resolution.equals(Constants.RESOLUTION_MANDATORY);
        }
    }
}
