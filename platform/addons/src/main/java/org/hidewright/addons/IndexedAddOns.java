package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.Offer.Standing;
import org.hidewright.core.store.FileTrouble;
import org.osgi.framework.Version;

/** Indexes that lie in folders, beside the bundles that are installed here. */
final class IndexedAddOns implements AddOnIndexes {
    private final Shop shop;
    private final Needs needs;

    IndexedAddOns(Shop shop, Needs needs) {
        this.shop = shop;
        this.needs = needs;
    }

    @Override
    public Index write(Path folder) throws FileTrouble {
        if (!Files.isDirectory(folder)) {
            throw Trouble.of(AddOnNotices.ADD_ON_NO_FOLDER.with(folder.toString()));
        }
        List<Listed> listed = new ArrayList<>();
        Map<String, Candidate> known = new HashMap<>();
        for (Candidate candidate : Candidate.ofJarsIn(folder, shop.sound())) {
            Listed bundle = Listed.of(candidate, url(candidate.from()));
            Candidate same = known.putIfAbsent(bundle.id() + " " + bundle.version(), candidate);
            if (same != null) {
                throw Trouble.of(AddOnNotices.ADD_ON_INDEX_TWICE.with(
                        same.from().toString(),
                        candidate.from().toString(),
                        bundle.id(),
                        bundle.version().toString()));
            }
            listed.add(bundle);
        }
        listed.sort(Comparator.comparing(Listed::id).thenComparing(Listed::version));
        IndexFile file = IndexFile.in(folder);
        file.write(listed);
        return new Index(file.file(), index(file, listed).offers(), foldersIn(folder));
    }

    private static List<Path> foldersIn(Path folder) throws FileTrouble {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> Files.isDirectory(path)
                            && !path.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw Trouble.notRead(folder, e);
        }
    }

    /** From where the index lies, with what a URI takes for something else written as it is to be. */
    private static String url(Path jar) {
        String uri = jar.toUri().toASCIIString();
        return uri.substring(uri.lastIndexOf('/') + 1);
    }

    @Override
    public Index read(Path from) throws FileTrouble {
        IndexFile file = IndexFile.in(from);
        return index(file, file.read(shop.sound()));
    }

    private Index index(IndexFile file, List<Listed> listed) {
        Set<String> program = shop.program().keySet();
        Map<String, Shop.Installed> installed = shop.installed();
        return new Index(
                file.file(),
                listed.stream()
                        .sorted(Comparator.comparing(Listed::id)
                                .thenComparing(Listed::version, Comparator.reverseOrder()))
                        .map(bundle -> offer(bundle, program, installed.get(bundle.id())))
                        .toList());
    }

    private static Offer offer(Listed bundle, Set<String> program, Shop.Installed installed) {
        return new Offer(
                bundle.id(),
                bundle.name(),
                bundle.maker(),
                bundle.version().toString(),
                bundle.calculators(),
                bundle.tables(),
                program.contains(bundle.id()) ? Standing.OF_PROGRAM : standing(bundle.version(), installed),
                installed == null ? "" : installed.listed().version().toString());
    }

    private static Standing standing(Version offered, Shop.Installed installed) {
        if (installed == null) {
            return Standing.NEW;
        }
        int compared = offered.compareTo(installed.listed().version());
        return compared == 0 ? Standing.HERE : compared > 0 ? Standing.NEWER : Standing.OLDER;
    }

    @Override
    public AddOnChange install(Path from, List<String> names, boolean older) throws FileTrouble {
        Supply supply = Supply.of(List.of(from), shop, needs);
        for (String name : names) {
            String[] parts = name.split("@", 2);
            supply.want(supply.whole(parts[0]), parts.length == 2 ? parts[1] : "", older);
        }
        return supply.make();
    }

    @Override
    public AddOnChange update(Path from, List<String> names) throws FileTrouble {
        Supply supply = Supply.of(List.of(from), shop, needs);
        if (names.isEmpty()) {
            supply.renewAll();
        }
        for (String name : names) {
            supply.renew(supply.whole(name));
        }
        return supply.make();
    }

    @Override
    public AddOnChange back() throws FileTrouble {
        return shop.back().orElseThrow(() -> Trouble.of(AddOnNotices.ADD_ON_BACK_NOTHING.with()));
    }
}
