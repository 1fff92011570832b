package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.between;
import static org.hidewright.fasteners.Fitted.lengths;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.stack;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/** The post that works over a whole stack, held against trying every post at every thickness. */
class PostLengthTest {
    private static PostLength fit(Stack stack, double least, double most) {
        return PostLength.of(stack, least, most, Origins.POST_HABIT);
    }

    /** A post works over a stack if it works at each of many thicknesses from its thin end to its thick one. */
    @Test
    void aPostWorksFromEndToEndExactlyIfItWorksEverywhereBetween() {
        Random random = new Random(4711);
        int met = 0;
        for (int round = 0; round < 20_000; round++) {
            double thin = 1 + 5 * random.nextDouble();
            double thick = thin + 1.5 * random.nextDouble();
            double least = -0.5 + 2.5 * random.nextDouble();
            double most = least + 1.2 * random.nextDouble();
            PostLength whole = fit(between(thin, thick), least, most);
            List<Length> posts = new ArrayList<>();
            for (int i = random.nextInt(6); i >= 0; i--) {
                posts.add(mm(Math.rint(2 * (thin + 4 * random.nextDouble())) / 2));
            }
            List<Length> everywhere = posts.stream()
                    .filter(post -> DoubleStream.iterate(0, share -> share <= 1, share -> share + 0.0625)
                            .allMatch(share -> {
                                double at = thin + share * (thick - thin);
                                return post.mm() >= at + least - 1e-9 && post.mm() <= at + most + 1e-9;
                            }))
                    .toList();
            assertEquals(everywhere, posts.stream().filter(whole::suits).toList());
            Optional<Length> chosen = whole.choose(posts);
            assertEquals(!everywhere.isEmpty(), chosen.isPresent());
            if (chosen.isPresent()) {
                met++;
                double middle = (thick + least + thin + most) / 2;
                double off = Math.abs(chosen.get().mm() - middle);
                assertTrue(everywhere.stream().allMatch(post -> Math.abs(post.mm() - middle) >= off - 1e-6));
            }
        }
        assertTrue(met > 1000, "posts were found " + met + " times");
    }

    @Test
    void ofTwoAsNearTheShorterIsTaken() {
        assertEquals(Optional.of(mm(6)), fit(stack(4), 2, 3).choose(lengths(7, 6)));
        assertEquals(Optional.of(mm(6.5)), fit(stack(4), 2, 3).choose(lengths(7, 6.5, 6)));
        assertEquals(
                Optional.of(mm(6)),
                PostLength.clipped(stack(4), mm(2), Origins.POST_HABIT).choose(lengths(9, 6, 7)));
    }

    @Test
    void eachPostSaysForWhichStacksItIs() {
        assertEquals(
                List.of(
                        new PostRow("p1", mm(6), Optional.of(mm(3)), mm(4), true),
                        new PostRow("p2", mm(8), Optional.of(mm(5)), mm(6), false)),
                fit(stack(4), 2, 3).rows(lengths(8, 6, 6)));
        assertEquals(
                List.of(new PostRow("p1", mm(8), Optional.empty(), mm(6), true)),
                PostLength.clipped(stack(4), mm(2), Origins.POST_HABIT).rows(lengths(8)));
    }

    private static List<String> told(PostLength fit, double... posts) {
        return fit.check(lengths(posts), "post").stream()
                .map(notice -> notice.kind().key() + " " + notice.args())
                .toList();
    }

    @Test
    void whatIsWrongIsToldWithTheEndWhereItIs() {
        PostLength fit = fit(between(4, 4.5), 2, 3);
        assertEquals(List.of(), told(fit, 6.5));
        assertEquals(List.of(), told(fit, 7));
        assertEquals(List.of(), told(fit));
        assertEquals(List.of("post-too-short [6.4 mm, 4.5 mm, 6.5 mm]"), told(fit, 6.4));
        assertEquals(List.of("post-too-short [6.4 mm, 4.5 mm, 6.5 mm]"), told(fit, 5, 6.4));
        assertEquals(List.of("post-too-long [7.1 mm, 4.0 mm, 7.0 mm]"), told(fit, 9, 7.1));
        assertEquals(List.of("post-none-suits [6.5 mm, 7.0 mm]"), told(fit, 6, 8));
        assertEquals(List.of(), told(fit, 6, 8, 7));
        assertEquals(List.of("post-no-one-length [8.0 mm, 7.0 mm, 2.0 mm]"), told(fit(between(4, 6), 2, 3), 7));
        assertEquals(List.of(), told(fit(between(4, 5), 2, 3), 7));
    }
}
