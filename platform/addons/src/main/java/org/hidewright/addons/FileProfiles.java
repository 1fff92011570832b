package org.hidewright.addons;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.addons.ProfileReader.Profile;
import org.hidewright.addons.ProfileReader.Wanted;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.Nearest;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.wording.Remark;
import org.osgi.framework.Version;

/** Shops as files: read and made so as one change, or written from what is turned on. */
final class FileProfiles implements ShopProfiles {
    private final Shop shop;
    private final Needs needs;

    FileProfiles(Shop shop, Needs needs) {
        this.shop = shop;
        this.needs = needs;
    }

    @Override
    public AddOnChange apply(Path file, boolean only) throws FileTrouble {
        Profile profile = ProfileReader.read(file);
        Map<String, String> program = shop.program();
        Supply supply = Supply.of(profile.from(), shop, needs);
        List<Remark> remarks = new ArrayList<>();
        Set<String> on = new TreeSet<>();
        Set<String> addOns = new TreeSet<>();
        for (Wanted wanted : profile.bundles()) {
            String version = program.get(wanted.id());
            if (version == null) {
                if (supply.want(wanted.id(), listed -> wanted.versions().includes(listed.version()))) {
                    addOns.add(wanted.id());
                } else {
                    remarks.add(at(notHere(wanted, supply, program.keySet()), wanted));
                }
            } else if (version.isEmpty() || wanted.versions().includes(Version.parseVersion(version))) {
                on.add(wanted.id());
            } else {
                remarks.add(at(AddOnNotices.ADD_ON_PROFILE_VERSION.with(wanted.id(), version, wanted.as()), wanted));
            }
        }
        if (!remarks.isEmpty()) {
            throw new FileTrouble(remarks, null);
        }
        Map<String, Listed> chosen = supply.chosen(addOns);
        on.addAll(shop.programNeeded(chosen.values(), on));
        on.addAll(chosen.keySet());
        return shop.make(supply.coming(chosen), turned(on, chosen.keySet()), on, only);
    }

    /** With the versions that there are, or the nearest name. */
    private static Notice notHere(Wanted wanted, Supply supply, Set<String> program) {
        String versions = supply.versions(wanted.id());
        if (!versions.isEmpty()) {
            return AddOnNotices.ADD_ON_PROFILE_NO_VERSION.with(wanted.id(), wanted.as(), versions);
        }
        Set<String> names = new TreeSet<>(program);
        names.addAll(supply.names());
        return Nearest.to(wanted.id(), names)
                .map(near -> AddOnNotices.ADD_ON_PROFILE_UNKNOWN_NEAREST.with(wanted.id(), near))
                .orElseGet(() -> AddOnNotices.ADD_ON_PROFILE_UNKNOWN.with(wanted.id()));
    }

    private static Remark at(Notice notice, Wanted wanted) {
        return Remark.of(notice, CoreTexts.TEXTS).atPlace(wanted.place());
    }

    /** What is another than it is to be; a choice about what is not here any more stays as it is. */
    private Map<String, Boolean> turned(Set<String> on, Set<String> addOns) {
        Set<String> off = shop.off();
        Map<String, Boolean> turned = new TreeMap<>();
        Stream.concat(shop.all().stream().map(AddOn::id).filter(id -> !id.isEmpty()), addOns.stream())
                .filter(id -> on.contains(id) == off.contains(id))
                .forEach(id -> turned.put(id, on.contains(id)));
        return turned;
    }

    @Override
    public List<String> write(Path file, List<Path> from) throws FileTrouble {
        if (Files.exists(file)) {
            throw Trouble.of(AddOnNotices.ADD_ON_PROFILE_THERE.with(file.toString()));
        }
        List<Listed> offered = new ArrayList<>();
        for (Path place : from) {
            offered.addAll(IndexFile.in(place).read(shop.sound()));
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put(ProfileReader.MARK, ProfileReader.FORMAT);
        if (!from.isEmpty()) {
            tree.put(
                    ProfileReader.FROM,
                    from.stream().map(place -> reached(place, file)).toList());
        }
        tree.put(
                ProfileReader.BUNDLES,
                on().sorted(Comparator.comparing(AddOn::id))
                        .map(FileProfiles::bundle)
                        .distinct()
                        .toList());
        try {
            WholeFile.write(file, JsonOut.write(tree).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Trouble.notChanged(file, e);
        }
        return on().filter(addOn -> addOn.origin() != Origin.PROGRAM && !isOffered(addOn, offered))
                .map(addOn -> addOn.id() + " " + addOn.version())
                .distinct()
                .sorted()
                .toList();
    }

    private Stream<AddOn> on() {
        return shop.all().stream().filter(addOn -> !addOn.id().isEmpty() && addOn.state() != State.OFF);
    }

    /** In the version that is written, or a newer one. */
    private static boolean isOffered(AddOn addOn, List<Listed> offered) {
        Version least = Version.parseVersion(addOn.version());
        return offered.stream()
                .anyMatch(listed ->
                        listed.id().equals(addOn.id()) && listed.version().compareTo(least) >= 0);
    }

    /** What came with the program needs no version; of an add-on this one and newer ones. */
    private static Object bundle(AddOn addOn) {
        if (addOn.origin() == Origin.PROGRAM) {
            return addOn.id();
        }
        Map<String, Object> bundle = new LinkedHashMap<>();
        bundle.put(ProfileReader.BUNDLE, addOn.id());
        bundle.put(ProfileReader.VERSIONS, addOn.version());
        return bundle;
    }

    /** From where the file lies, so that both can be taken elsewhere together. */
    private static String reached(Path place, Path file) {
        Path whole = place.toAbsolutePath().normalize();
        Path beside = file.toAbsolutePath().normalize().getParent();
        try {
            String way = beside.relativize(whole).toString();
            return way.isEmpty() ? "." : way.replace('\\', '/');
        } catch (IllegalArgumentException onAnotherDrive) {
            return whole.toString();
        }
    }
}
