package org.hidewright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.core.find.Findable;
import org.hidewright.core.find.Goal;
import org.hidewright.core.find.Group;

/** What is on the bench, as it can be found: slips, what they ask, what is told of them. */
public final class ProjectThings {
    private ProjectThings() {}

    public static List<Findable> of(ProjectFace face) {
        return face.slips().stream().flatMap(ProjectThings::slip).toList();
    }

    private static Stream<Findable> slip(SlipFace slip) {
        List<Findable> things = new ArrayList<>();
        things.add(new Findable(Group.SLIP, slip.title(), "", slip.purpose(), goal(slip, "")));
        slip.questions()
                .forEach(question -> things.add(new Findable(
                        Group.SLIP_QUESTION,
                        question.label(),
                        slip.title(),
                        question.help() + " " + question.read(),
                        goal(slip, question.path().toString()))));
        slip.questions()
                .forEach(question -> Stream.concat(question.wrong().stream(), question.notes().stream())
                        .forEach(told -> things.add(new Findable(
                                Group.NOTICE,
                                told,
                                slip.title(),
                                question.label(),
                                goal(slip, question.path().toString())))));
        slip.told()
                .forEach(told -> things.add(new Findable(
                        Group.NOTICE, told.what(), slip.title(), told.why() + " " + told.next(), goal(slip, ""))));
        return things.stream();
    }

    private static Goal goal(SlipFace slip, String question) {
        return new Goal(slip.calculator(), slip.id(), question);
    }
}
