package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * The search for few sheets. All parts are laid one after another; then the sheet that is given up most easily is emptied,
 * and its parts are laid on the others: each is put among the parts of another sheet, overlapping as it may, and all of them
 * are separated, be it that smaller parts have to leave in exchange. When nothing is left over, the next sheet is given up.
 * Where not all parts can be laid, what is left over grows less in the same way.
 */
final class SheetSearch implements Runnable {
    /** What leaves in exchange for a part has at most this share of its area. */
    private static final double MORE = 1.2;

    /** How much may be left over while less is sought, as a share of the least that was left over so far. */
    private static final double WORSE = 1.3;

    private static final int STRIKES = 1;

    /** An exchange is given up after so many rounds without gain, and so many more for each part: there are many to be tried. */
    private static final int STALL = 10;

    private static final int STALL_FOR_EACH_PART = 2;
    private static final int LONGEST_STALL = 60;

    /** The share of the budget for fewer sheets; what is left of it finishes the layout. */
    private static final double EXPLORING = 0.85;

    private final FullSize full;
    private final Form[] forms;
    private final ClosePairs pairs;
    private final List<Ground> grounds;
    private final double[] areas;
    private final double[] costs;
    private final SplittableRandom random;
    private final Halt halt;
    private final Offer offer;
    private final Effort effort;
    private final OpenSheets sheets;
    private final FreeRoom room;
    private final BestWhole whole;
    private final Fullness fullness = new Fullness();
    private Stack[] stacks;
    private final List<Integer> left = new ArrayList<>();
    private double leastLeft = Double.POSITIVE_INFINITY;
    private long tries;

    /** How many were tried since the last one that was of use. */
    private int exchanges;

    /** Told each layout of this search that can be cut. */
    interface Offer {
        /**
         * @param sheet the sheet of each part, -1 where it is left over
         */
        void told(int[] sheet, Places places);
    }

    /**
     * @param areas of the sheets, what can be cut from
     * @param costs of the sheets
     */
    SheetSearch(
            FullSize full,
            ClosePairs pairs,
            List<Ground> grounds,
            double[] areas,
            double[] costs,
            SplittableRandom random,
            Halt halt,
            BestWhole whole,
            Offer offer) {
        this.full = full;
        this.forms = full.forms();
        this.pairs = pairs;
        this.grounds = grounds;
        this.areas = areas;
        this.costs = costs;
        this.random = random;
        this.halt = halt;
        this.whole = whole;
        this.offer = offer;
        this.effort = full.touching() ? Effort.EDGE_TO_EDGE : Effort.APART;
        this.sheets = new OpenSheets(areas, costs, full.touching(), random);
        this.room = new FreeRoom(full, pairs, areas, random);
        this.stacks = new Stack[grounds.size()];
        Arrays.setAll(stacks, sheet -> Stack.EMPTY);
    }

    long tries() {
        return tries + room.tries();
    }

    /** Whether the time for fewer sheets is over; as long as parts are left over, that is all of it. */
    private boolean over() {
        return overAt(tries());
    }

    private boolean overAt(long tried) {
        return halt.spent(tried) >= (whole.cost() < Double.POSITIVE_INFINITY ? EXPLORING : 1);
    }

    @Override
    public void run() {
        layAll();
        tell();
        int rounds = 0;
        boolean mayGoOn = true;
        while (mayGoOn && !over()) {
            if (left.isEmpty()) {
                rounds = 0;
                mayGoOn = whole.cost() < cost(stacks) ? giveUpAnother() : giveUpTheDearest();
            } else if (rounds >= effort.rounds() && whole.cost() < Double.POSITIVE_INFINITY) {
                rounds = 0;
                mayGoOn = giveUpAnother();
            }
            rounds++;
            exchangeAll();
            if (!left.isEmpty() && !over() && separateAll()) {
                tell();
            }
        }
        finish();
    }

    private void finish() {
        boolean all = whole.cost() < Double.POSITIVE_INFINITY;
        if (all) {
            takeUpTheWhole();
        }
        long before = tries();
        Finishing finishing = new Finishing(full, pairs, random, tried -> halt.spent(before + tried), this::tell);
        if (all) {
            finishing.gather(stacks);
        }
        finishing.straighten(stacks);
        tries += finishing.tries();
    }

    /** Exchanges as long as something comes of it. */
    private void exchangeAll() {
        exchanges = 0;
        for (int drawn = 0;
                drawn < effort.drawn() && exchanges < effort.exchanges() && !left.isEmpty() && !over();
                drawn++) {
            if (exchange()) {
                exchanges = 0;
                drawn = 0;
                tell();
            }
        }
    }

    private void layAll() {
        List<Integer> all = new ArrayList<>();
        for (int part = 0; part < forms.length; part++) {
            all.add(part);
        }
        layFreely(all);
        FitsNowhere alone = new FitsNowhere(forms, grounds, random);
        left.removeAll(alone.of(left));
        tries += alone.tries();
        if (left.isEmpty()) {
            sheets.onlyThoseInUse(stacks);
        }
        leastLeft = area(left);
    }

    /** Of the sheets on which something lies. */
    private double cost(Stack[] onSheets) {
        return IntStream.range(0, onSheets.length)
                .filter(sheet -> !onSheets[sheet].parts().isEmpty())
                .mapToDouble(sheet -> costs[sheet])
                .sum();
    }

    /** Lays parts where there is room, the largest first; the others are left over. */
    private void layFreely(List<Integer> parts) {
        parts.sort(Comparator.comparingDouble((Integer part) -> -forms[part].hullArea * forms[part].diameter));
        for (Integer part : parts) {
            if (Arrays.stream(sheets.open()).noneMatch(sheet -> room.lay(part, sheet, stacks))) {
                left.add(part);
            }
        }
    }

    private double area(List<Integer> parts) {
        return parts.stream().mapToDouble(part -> forms[part].area).sum();
    }

    private boolean giveUpTheDearest() {
        boolean closed = sheets.closeTheDearest(stacks);
        if (closed) {
            layAgain();
        }
        return closed;
    }

    /** Goes back to the best layout of all parts and gives up another of its sheets than the time before. */
    private boolean giveUpAnother() {
        takeUpTheWhole();
        boolean closed = sheets.closeAnother(stacks) || sheets.closeTheDearest(stacks);
        if (closed) {
            layAgain();
        }
        return closed;
    }

    private void takeUpTheWhole() {
        stacks = whole.take();
        left.clear();
        sheets.onlyThoseInUse(stacks);
    }

    /** Lays the parts of sheets that were closed on those that are open. */
    private void layAgain() {
        List<Integer> parts = new ArrayList<>();
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            if (sheets.isClosed(sheet)) {
                parts.addAll(stacks[sheet].parts());
                stacks[sheet] = Stack.EMPTY;
            }
        }
        layFreely(parts);
        leastLeft = area(left);
        if (left.isEmpty()) {
            tell();
        }
    }

    /**
     * Puts one of the parts left over on a sheet, in exchange for smaller ones where there is no room.
     *
     * @return whether less is left over than before
     */
    private boolean exchange() {
        int one = left.get(random.nextInt(left.size()));
        int other = left.get(random.nextInt(left.size()));
        Integer part = forms[one].area >= forms[other].area ? one : other;
        int sheet = sheets.roomier(stacks);
        Stack stack = stacks[sheet];
        List<Integer> parts = new ArrayList<>(stack.parts());
        List<Integer> leaving = new ArrayList<>();
        double space = sheets.most(sheet) - stack.area() - forms[part].area;
        boolean crowded = space < 0 || random.nextInt(3) == 0;
        if (crowded) {
            Collections.shuffle(parts, new Random(random.nextLong()));
            // the area left over may grow a little above the least there was, so that a search does not end in a corner
            double most = Math.min(forms[part].area * MORE, leastLeft * WORSE - area(left) + forms[part].area);
            for (Integer may : List.copyOf(parts)) {
                if (forms[may].area <= most && (space < 0 || leaving.isEmpty())) {
                    leaving.add(may);
                    parts.remove(may);
                    most -= forms[may].area;
                    space += forms[may].area;
                }
            }
        }
        double filled = (sheets.most(sheet) - space) / areas[sheet];
        if (space < 0 || !fullness.isWorthATry(filled, random)) {
            // counts as a try, so that a search without any prospect comes to its end
            tries++;
            return false;
        }
        exchanges++;
        parts.add(part);
        Crowd crowd = room.crowd(sheet, parts, stack);
        crowd.measureAll();
        Seeker seeker = new Seeker(crowd, random);
        seeker.improve(parts.size() - 1);
        long before = tries();
        Separation separation = new Separation(crowd, seeker, random, () -> overAt(before + seeker.tries()));
        int stall = Math.min(LONGEST_STALL, STALL + STALL_FOR_EACH_PART * parts.size());
        boolean separated = separation.run(STRIKES, stall) == 0;
        tries += seeker.tries();
        Optional<Stack> gained = separated ? full.stack(sheet, parts, crowd.places(), random) : Optional.empty();
        fullness.remember(filled, gained.isPresent());
        if (gained.isEmpty()) {
            return false;
        }
        stacks[sheet] = gained.get();
        left.remove(part);
        layFreely(leaving);
        double now = area(left);
        if (now >= leastLeft) {
            return false;
        }
        leastLeft = now;
        return true;
    }

    /**
     * Puts parts left over among all others on all open sheets, and separates them so that each may move to any sheet.
     *
     * @return whether less is left over than before
     */
    private boolean separateAll() {
        int[] open = sheets.open();
        double space = Arrays.stream(open)
                .mapToDouble(sheet -> sheets.most(sheet) - stacks[sheet].area())
                .sum();
        List<Integer> joining = new ArrayList<>();
        for (Integer part : left) {
            if (forms[part].area <= space) {
                joining.add(part);
                space -= forms[part].area;
            }
        }
        if (joining.isEmpty()) {
            tries++;
            return false;
        }
        Together together = new Together(forms, pairs, effort, random);
        for (int sheet : open) {
            together.add(grounds.get(sheet), areas[sheet], stacks[sheet]);
        }
        long before = tries();
        boolean separated = together.separate(joining, tried -> overAt(before + tried) ? 1 : 0);
        tries += together.tries();
        if (!separated) {
            return false;
        }
        Stack[] worked = stacks.clone();
        for (int place = 0; place < open.length; place++) {
            Optional<Stack> stack = together.stack(place, open[place], full);
            if (stack.isEmpty()) {
                return false;
            }
            worked[open[place]] = stack.get();
        }
        stacks = worked;
        left.removeAll(joining);
        leastLeft = area(left);
        return true;
    }

    /** Hands over the layout, with what is left over on closed sheets where it has room there. */
    private void tell() {
        Stack[] all = stacks.clone();
        List<Integer> rest = new ArrayList<>(left);
        rest.sort(Comparator.comparingDouble((Integer part) -> -forms[part].area));
        int[] sheetOf = new int[forms.length];
        Arrays.fill(sheetOf, -1);
        rest.removeIf(part ->
                IntStream.range(0, all.length).anyMatch(sheet -> sheets.isClosed(sheet) && room.lay(part, sheet, all)));
        if (rest.isEmpty()) {
            whole.offer(all, cost(all));
        }
        Places places = new Places(forms.length);
        for (int sheet = 0; sheet < all.length; sheet++) {
            List<Integer> parts = all[sheet].parts();
            for (int index = 0; index < parts.size(); index++) {
                int part = parts.get(index);
                sheetOf[part] = sheet;
                places.angle[part] = all[sheet].places().angle[index];
                places.x[part] = all[sheet].places().x[index];
                places.y[part] = all[sheet].places().y[index];
            }
        }
        offer.told(sheetOf, places);
    }
}
