package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;

/** Installs the jars and folders that a maker names: every one is looked over before the first is written. */
final class JarInstall {
    private final Shop shop;

    JarInstall(Shop shop) {
        this.shop = shop;
    }

    List<AddOn> install(List<Path> given, boolean replace, boolean follow) throws FileTrouble {
        List<Candidate> candidates = Candidate.of(given, shop.sound(), follow);
        mustNotBeTwice(candidates);
        List<AddOn> all = shop.all();
        Set<String> program = shop.program().keySet();
        List<Shop.Coming> coming = new ArrayList<>();
        List<AddOn> installed = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (program.contains(candidate.id())) {
                throw Trouble.of(
                        AddOnNotices.ADD_ON_OF_PROGRAM.with(candidate.from().toString(), candidate.id()));
            }
            Soundness.mustBeNone(candidate.from(), shop.sound().host(candidate.described()));
            List<AddOn> there = Shop.givingWay(candidate.id(), all);
            if (isThere(candidate, there)) {
                installed.add(there.get(0));
            } else {
                mustMakeRoom(candidate, there, replace);
                coming.add(new Shop.Coming(candidate, false));
                installed.add(candidate
                        .described()
                        .addOn(Origin.MAKER, became(candidate, all), "", shop.place(candidate.id(), all)));
            }
        }
        shop.make(coming, Map.of(), Set.of(), false);
        return installed;
    }

    private static void mustNotBeTwice(List<Candidate> candidates) throws FileTrouble {
        Map<String, Candidate> byId = new TreeMap<>();
        for (Candidate candidate : candidates) {
            Candidate same = byId.putIfAbsent(candidate.id(), candidate);
            if (same != null) {
                throw Trouble.of(AddOnNotices.ADD_ON_TWICE.with(
                        same.from().toString(), candidate.from().toString(), candidate.id()));
            }
        }
    }

    /** A choice outlives the bundle it was made for. */
    private static State became(Candidate candidate, List<AddOn> all) {
        return all.stream().anyMatch(there -> there.id().equals(candidate.id()) && there.state() == State.OFF)
                ? State.OFF
                : State.NEXT_START;
    }

    private static boolean isThere(Candidate candidate, List<AddOn> there) throws FileTrouble {
        if (there.size() != 1) {
            return false;
        }
        Path jar = there.get(0).file();
        try {
            return Arrays.equals(candidate.jar(), Files.readAllBytes(jar));
        } catch (IOException e) {
            throw Trouble.notRead(jar, e);
        }
    }

    private static void mustMakeRoom(Candidate candidate, List<AddOn> there, boolean replace) throws FileTrouble {
        Optional<AddOn> whole =
                there.stream().filter(addOn -> !addOn.id().isEmpty()).findFirst();
        if (whole.isPresent() && !replace) {
            throw Trouble.of(AddOnNotices.ADD_ON_INSTALLED.with(
                    whole.get().id(),
                    whole.get().version(),
                    candidate.from().toString(),
                    candidate.described().version()));
        }
    }
}
