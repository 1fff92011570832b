package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
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
    /** Beyond this share of its area a sheet is not even tried. */
    private static final double FULLEST = 0.98;

    /** What leaves in exchange for a part has at most this share of its area. */
    private static final double MORE = 1.2;

    /** How much may be left over while less is sought, as a share of the least that was left over so far. */
    private static final double WORSE = 1.3;

    private static final int STRIKES = 1;
    private static final int STALL = 60;
    private static final int DRAWS = 300;

    /** So many exchanges without gain before all sheets are worked at once. */
    private static final int EXCHANGES = 20;

    private final Form[] forms;
    private final List<Ground> grounds;
    private final double[] areas;
    private final double[] costs;
    private final SplittableRandom random;
    private final Halt halt;
    private final Offer offer;
    /** The sheets, the cheapest for its area first. */
    private final int[] byPrice;

    private final Stack[] stacks;
    private final boolean[] closed;
    private final List<Integer> left = new ArrayList<>();
    private double leastLeft = Double.POSITIVE_INFINITY;
    private long tries;

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
            Form[] forms,
            List<Ground> grounds,
            double[] areas,
            double[] costs,
            SplittableRandom random,
            Halt halt,
            Offer offer) {
        this.forms = forms;
        this.grounds = grounds;
        this.areas = areas;
        this.costs = costs;
        this.random = random;
        this.halt = halt;
        this.offer = offer;
        this.stacks = new Stack[grounds.size()];
        this.closed = new boolean[grounds.size()];
        Arrays.setAll(stacks, sheet -> Stack.EMPTY);
        this.byPrice = IntStream.range(0, grounds.size())
                .boxed()
                .sorted(Comparator.comparingDouble(sheet -> costs[sheet] / areas[sheet]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    long tries() {
        return tries;
    }

    private boolean over() {
        return halt.spent(tries) >= 1;
    }

    @Override
    public void run() {
        List<Integer> all = new ArrayList<>();
        for (int part = 0; part < forms.length; part++) {
            all.add(part);
        }
        layFreely(all);
        FitsNowhere alone = new FitsNowhere(forms, grounds, random);
        left.removeAll(alone.of(left));
        tries += alone.tries();
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            closed[sheet] = left.isEmpty() && stacks[sheet].parts().isEmpty();
        }
        leastLeft = area(left);
        tell();
        while (!over()) {
            if (left.isEmpty() && !giveUpASheet()) {
                gather();
                return;
            }
            for (int without = 0; without < EXCHANGES && !left.isEmpty() && !over(); without++) {
                if (exchange()) {
                    without = 0;
                    tell();
                }
            }
            if (!left.isEmpty() && !over() && separateAll()) {
                tell();
            }
        }
    }

    /** Draws the parts of the sheet that carries least together, so that most is left of it. */
    private void gather() {
        int last = IntStream.range(0, stacks.length)
                .filter(sheet -> stacks[sheet].area() > 0)
                .boxed()
                .min(Comparator.comparingDouble(sheet -> stacks[sheet].area()))
                .orElse(-1);
        if (last < 0) {
            return;
        }
        long before = tries;
        Gathering gathering = new Gathering(forms, grounds.get(last), random, tried -> halt.spent(before + tried));
        while (gathering.mayGoOn()) {
            Stack narrower = gathering.narrower(stacks[last]);
            tries = before + gathering.tries();
            if (narrower != stacks[last]) {
                stacks[last] = narrower;
                tell();
            }
        }
    }

    /** Lays parts where there is room, the largest first; the others are left over. */
    private void layFreely(List<Integer> parts) {
        parts.sort(Comparator.comparingDouble((Integer part) -> -forms[part].hullArea * forms[part].diameter));
        for (Integer part : parts) {
            boolean laid = false;
            for (int index = 0; index < stacks.length && !laid; index++) {
                int sheet = byPrice[index];
                laid = !closed[sheet] && layFreely(part, sheet, stacks);
            }
            if (!laid) {
                left.add(part);
            }
        }
    }

    private boolean layFreely(int part, int sheet, Stack[] onto) {
        if (onto[sheet].area() + forms[part].area > areas[sheet]) {
            return false;
        }
        List<Integer> parts = new ArrayList<>(onto[sheet].parts());
        parts.add(part);
        Crowd crowd = crowd(sheet, parts, onto[sheet]);
        LeftmostPlace leftmost = new LeftmostPlace(crowd, random);
        boolean found = leftmost.settle(parts.size() - 1, Double.MAX_VALUE, DRAWS);
        tries += leftmost.tries();
        if (found) {
            onto[sheet] = Stack.of(parts, crowd);
        }
        return found;
    }

    /** The parts of a stack where they lie, and further ones out of the way. */
    private Crowd crowd(int sheet, List<Integer> parts, Stack from) {
        Ground ground = grounds.get(sheet);
        Crowd crowd = new Crowd(ground, parts.stream().map(part -> forms[part]).toArray(Form[]::new));
        for (int index = 0; index < parts.size(); index++) {
            int at = from.parts().indexOf(parts.get(index));
            if (at >= 0) {
                crowd.lay(index, from.places().angle[at], from.places().x[at], from.places().y[at]);
            } else {
                double off = crowd.form[index].diameter;
                crowd.lay(index, crowd.form[index].turning.from(0), ground.minX() - 2 * off, ground.minY() - 2 * off);
            }
        }
        return crowd;
    }

    private double area(List<Integer> parts) {
        return parts.stream().mapToDouble(part -> forms[part].area).sum();
    }

    /**
     * Closes the sheet that saves most for the area of parts it carries, as far as the others may hold all parts.
     *
     * @return whether there is one
     */
    private boolean giveUpASheet() {
        double open = 0;
        double laid = 0;
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            open += closed[sheet] ? 0 : areas[sheet];
            laid += stacks[sheet].area();
        }
        int least = -1;
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            boolean may = !closed[sheet] && laid <= FULLEST * (open - areas[sheet] + cheaper(sheet));
            if (may && (least < 0 || costs[sheet] * stacks[least].area() > costs[least] * stacks[sheet].area())) {
                least = sheet;
            }
        }
        if (least < 0) {
            return false;
        }
        closed[least] = true;
        double cost = 0;
        for (int sheet : byPrice) {
            if (closed[sheet] && cost + costs[sheet] < costs[least]) {
                cost += costs[sheet];
                closed[sheet] = false;
            }
        }
        List<Integer> parts = new ArrayList<>(stacks[least].parts());
        stacks[least] = Stack.EMPTY;
        layFreely(parts);
        leastLeft = area(left);
        return true;
    }

    /** The area of sheets not used that together cost less than this one. */
    private double cheaper(int than) {
        double cost = 0;
        double area = 0;
        for (int sheet : byPrice) {
            if (closed[sheet] && cost + costs[sheet] < costs[than]) {
                cost += costs[sheet];
                area += areas[sheet];
            }
        }
        return area;
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
        int sheet = openSheet();
        Stack stack = stacks[sheet];
        List<Integer> parts = new ArrayList<>(stack.parts());
        List<Integer> leaving = new ArrayList<>();
        double room = areas[sheet] * FULLEST - stack.area() - forms[part].area;
        boolean crowded = room < 0 || random.nextInt(3) == 0;
        if (crowded) {
            Collections.shuffle(parts, new Random(random.nextLong()));
            // the area left over may grow a little above the least there was, so that a search does not end in a corner
            double most = Math.min(forms[part].area * MORE, leastLeft * WORSE - area(left) + forms[part].area);
            for (Integer may : List.copyOf(parts)) {
                if (forms[may].area <= most && (room < 0 || leaving.isEmpty())) {
                    leaving.add(may);
                    parts.remove(may);
                    most -= forms[may].area;
                    room += forms[may].area;
                }
            }
        }
        if (room < 0) {
            // counts as a try, so that a search without any prospect comes to its end
            tries++;
            return false;
        }
        parts.add(part);
        Crowd crowd = crowd(sheet, parts, stack);
        crowd.measureAll();
        Seeker seeker = new Seeker(crowd, random);
        seeker.improve(parts.size() - 1);
        long before = tries;
        Separation separation = new Separation(crowd, seeker, random, () -> halt.spent(before + seeker.tries()) >= 1);
        boolean separated = separation.run(STRIKES, STALL) == 0;
        tries += seeker.tries();
        if (!separated) {
            return false;
        }
        stacks[sheet] = Stack.of(parts, crowd);
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
        int[] open = IntStream.range(0, stacks.length)
                .filter(sheet -> !closed[sheet])
                .toArray();
        double room = Arrays.stream(open)
                .mapToDouble(sheet -> areas[sheet] * FULLEST - stacks[sheet].area())
                .sum();
        List<Integer> joining = new ArrayList<>();
        for (Integer part : left) {
            if (forms[part].area <= room) {
                joining.add(part);
                room -= forms[part].area;
            }
        }
        if (joining.isEmpty()) {
            tries++;
            return false;
        }
        Together together = new Together(forms, random);
        for (int sheet : open) {
            together.add(grounds.get(sheet), areas[sheet], stacks[sheet]);
        }
        long before = tries;
        boolean separated = together.separate(joining, tried -> halt.spent(before + tried));
        tries += together.tries();
        if (!separated) {
            return false;
        }
        for (int place = 0; place < open.length; place++) {
            stacks[open[place]] = together.stack(place);
        }
        left.removeAll(joining);
        leastLeft = area(left);
        return true;
    }

    /** An open sheet; of two drawn the one with more room. */
    private int openSheet() {
        int[] open = IntStream.range(0, stacks.length)
                .filter(sheet -> !closed[sheet])
                .toArray();
        int one = open[random.nextInt(open.length)];
        int other = open[random.nextInt(open.length)];
        return areas[one] - stacks[one].area() >= areas[other] - stacks[other].area() ? one : other;
    }

    /** Hands over the layout, with what is left over on closed sheets where it has room there. */
    private void tell() {
        Stack[] whole = stacks.clone();
        List<Integer> rest = new ArrayList<>(left);
        rest.sort(Comparator.comparingDouble((Integer part) -> -forms[part].area));
        int[] sheetOf = new int[forms.length];
        Arrays.fill(sheetOf, -1);
        for (Integer part : rest) {
            boolean laid = false;
            for (int sheet = 0; sheet < whole.length && !laid; sheet++) {
                laid = closed[sheet] && layFreely(part, sheet, whole);
            }
        }
        Places places = new Places(forms.length);
        for (int sheet = 0; sheet < whole.length; sheet++) {
            List<Integer> parts = whole[sheet].parts();
            for (int index = 0; index < parts.size(); index++) {
                int part = parts.get(index);
                sheetOf[part] = sheet;
                places.angle[part] = whole[sheet].places().angle[index];
                places.x[part] = whole[sheet].places().x[index];
                places.y[part] = whole[sheet].places().y[index];
            }
        }
        offer.told(sheetOf, places);
    }
}
