package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.trials.PartFault;
import org.hidewright.api.trials.Samples;
import org.hidewright.api.trials.Typical;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.expression.ExpressionNotices;
import org.hidewright.core.item.ItemCheck;
import org.hidewright.core.item.ItemChecks;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.json.Place;
import org.hidewright.core.template.TemplateNotices;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.template.TextTemplate;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.TypedValues;

/**
 * Tries a template out that is written as a text: at its example, with one answer at a time changed, and in drawn sets inside usual
 * limits and anywhere inside the hard ones; the same every time. Each thing that is wrong is told once, where it stands in the text,
 * with what to type to see it.
 */
public final class TemplateProof {
    /** Asked a second time, to see whether the answer is the same. */
    private static final int AGAIN = 25;
    /** Of what differs from the example in one answer at least this share is answered, or the limits are not the usual ones. */
    private static final double LEAST_ANSWERED = 0.5;

    private final TextTemplate template;
    private final TemplatePlaces places;
    private final Wording wording;
    private final Surroundings beside;
    private final AskedAgain asked;
    private final List<Remark> remarks = new ArrayList<>();
    private final Set<String> said = new HashSet<>();
    private final Map<String, String> says = new HashMap<>();
    private int tried;

    private TemplateProof(
            TextTemplate template, TemplatePlaces places, Wording wording, Values example, Surroundings beside) {
        this.beside = beside;
        this.template = template;
        this.places = places;
        this.wording = wording;
        this.asked = new AskedAgain(template.declaration().questions(), example);
    }

    /**
     * Looks a text over.
     *
     * @param id what its file is called, and it is to be
     */
    public static Proof of(String text, String id, Surroundings beside, Wording wording) {
        TemplateReader.Result read = TemplateReader.read(text, beside.others());
        if (read.template().isEmpty()) {
            return new Proof(read.remarks(), 0);
        }
        TextTemplate template = read.template().get();
        TemplatePlaces places = new TemplatePlaces(text);
        List<Remark> remarks = new ArrayList<>(read.remarks());
        String own = template.declaration().id();
        if (!own.equals(id)) {
            remarks.add(Remark.of(ProofNotices.PROOF_OTHER_ID.with(own, id), CoreTexts.TEXTS)
                    .atPlace(places.of("id")));
        }
        TypedValues example = example(template);
        Typical typical = question ->
                example.values().flatMap(all -> all.get(question.key())).orElse("");
        remarks.addAll(DeclaredProof.of(template.declaration(), typical, places, beside));
        remarks.addAll(AskedProof.of(places, beside.others()));
        read.unused()
                .forEach(question -> remarks.add(Remark.of(ProofNotices.PROOF_UNUSED.with(question), CoreTexts.TEXTS)
                        .atPlace(places.of("questions", question))));
        if (example.values().isEmpty()) {
            example.said().stream()
                    .filter(said -> hasExample(template, said.at()))
                    .forEach(said -> remarks.add(
                            Remark.of(ProofNotices.PROOF_EXAMPLE_UNREAD.with(said.at(), said.words()), CoreTexts.TEXTS)
                                    .atPlace(places.of("questions", said.at()))));
            return new Proof(remarks, 0, template.written());
        }
        TemplateProof proof =
                new TemplateProof(template, places, wording, example.values().get(), beside);
        proof.tryAll(typical);
        remarks.addAll(proof.remarks);
        proof.says.putAll(template.written());
        return new Proof(remarks, proof.tried, proof.says);
    }

    /** Without values where a question has neither preset nor example, or one that cannot be taken as it stands. */
    private static TypedValues example(TextTemplate template) {
        Map<String, Object> typed = new HashMap<>();
        for (Question question : template.declaration().questions()) {
            question.example().ifPresent(text -> typed.put(question.key(), text));
        }
        return TypedValues.read(template.declaration(), JsonOut.line(typed));
    }

    private static boolean hasExample(TextTemplate template, String key) {
        return template.declaration().question(key).flatMap(Question::example).isPresent();
    }

    private record Told(Values asked, Optional<Outcome<Values>> outcome) {
        boolean answered() {
            return outcome.filter(came -> !came.refused()).isPresent();
        }
    }

    private void tryAll(Typical typical) {
        List<Question> questions = template.declaration().questions();
        List<Values> usual = Samples.usual(questions, typical).stream()
                .map(values -> Typable.of(questions, values))
                .toList();
        List<Told> told = usual.stream().map(this::ask).toList();
        List<Told> all = new ArrayList<>(told);
        Samples.anywhere(questions, typical).forEach(values -> all.add(ask(Typable.of(questions, values))));
        ConditionsProof.of(template, all.stream().map(Told::asked).toList(), this::cannotTurn);
        atExample(told.get(0));
        told.forEach(this::inUsualLimits);
        if (told.get(0).answered()) {
            few(told.subList(0, usual.size() - Samples.SETS));
        }
        all.forEach(this::anywhere);
        again(Samples.some(told, AGAIN));
        tried = all.size();
    }

    /** What stops everything is not told again as what stops the example. */
    private void cannotTurn(NoticeKind kind, Notice notice) {
        said.add("example " + kind.key());
        said.add("refused " + kind.key());
        say("cannot turn " + kind.key(), notice, places.of("tells", kind.key()));
    }

    private Told ask(Values values) {
        try {
            return new Told(values, Optional.of(template.work(values, Working.NONE)));
        } catch (BundleFault fault) {
            say("broke", ProofNotices.PROOF_BROKE.with(String.valueOf(fault.words()), line(values)), places.head());
            return new Told(values, Optional.empty());
        }
    }

    private void atExample(Told told) {
        for (Notice notice : stops(told)) {
            if (isItsOwn(notice)) {
                say(
                        "example " + notice.kind().key(),
                        ProofNotices.PROOF_EXAMPLE_REFUSED.with(what(notice)),
                        place(notice));
            } else {
                notDrawn(notice, told);
            }
        }
        items(told)
                .flatMap(item -> ItemChecks.of(item).stream())
                .forEach(check -> say(
                        "example " + check.kind().key() + check.part().id(),
                        ProofNotices.PROOF_EXAMPLE_PART.with(what(check)),
                        places.ofPart(check.part().id())));
    }

    private void inUsualLimits(Told told) {
        for (Notice notice : stops(told)) {
            if (!isItsOwn(notice)) {
                notDrawn(notice, told);
            } else if (!template.together().contains(notice.kind())) {
                say(
                        "refused " + notice.kind().key(),
                        ProofNotices.PROOF_REFUSED.with(what(notice), line(told.asked())),
                        place(notice));
            }
        }
    }

    /** What another calculator, or an expression, says of what the template makes of answers: the author mends that, not the answers. */
    private void notDrawn(Notice notice, Told told) {
        Place place = place(notice);
        say(
                "not drawn " + notice.kind().key() + place,
                ProofNotices.PROOF_NOT_DRAWN.with(what(notice), line(told.asked())),
                place);
    }

    private void few(List<Told> oneChanged) {
        long answered = oneChanged.stream().filter(Told::answered).count();
        if (answered < LEAST_ANSWERED * oneChanged.size()) {
            say("few", ProofNotices.PROOF_FEW.with(answered, oneChanged.size()), places.head());
        }
    }

    private void anywhere(Told told) {
        items(told)
                .flatMap(item -> new ItemWords(template.texts()).of(item).stream())
                .forEach(word -> says.putIfAbsent(word.numberless(), word.otherwise()));
        for (Notice notice : stops(told)) {
            if (isOfTheHost(notice)) {
                Place place = place(notice);
                say(
                        "not drawn " + notice.kind().key() + place,
                        ProofNotices.PROOF_NOT_ITS_WORDS.with(what(notice), line(told.asked())),
                        place);
            }
        }
        items(told)
                .flatMap(item -> PartFault.of(item).stream())
                .forEach(fault -> say(
                        "part " + fault.what() + numberless(fault.part().id() + fault.id()),
                        ProofNotices.PROOF_PART.with(words(fault), line(told.asked())),
                        places.ofPart(fault.part().id())));
        told.outcome()
                .flatMap(Outcome::answers)
                .ifPresent(answers -> answers.entries().forEach((key, value) -> {
                    if (value instanceof Quantity<?> measure && !Double.isFinite(measure.base())) {
                        say(
                                "number " + key,
                                ProofNotices.PROOF_NO_NUMBER.with(key, line(told.asked())),
                                places.of("answers", key));
                    }
                }));
    }

    /** What the program says when an expression or a question that is asked came to nothing. */
    private static boolean isOfTheHost(Notice notice) {
        return ExpressionNotices.all().contains(notice.kind())
                || TemplateNotices.all().contains(notice.kind());
    }

    /** Backwards, so that nothing that is kept from one answer to the next is kept alike. */
    private void again(List<Told> first) {
        for (int i = first.size() - 1; i >= 0; i--) {
            Told told = first.get(i);
            if (!ask(told.asked())
                    .outcome()
                    .map(TemplateProof::plain)
                    .equals(told.outcome().map(TemplateProof::plain))) {
                say("other", ProofNotices.PROOF_OTHER_ANSWER.with(line(told.asked())), places.head());
            }
        }
    }

    private static List<Object> plain(Outcome<Values> outcome) {
        return List.of(outcome.answers().map(Values::entries), outcome.notices().toString());
    }

    private static List<Notice> stops(Told told) {
        return told.outcome().map(Outcome::notices).orElse(List.of()).stream()
                .filter(notice -> notice.kind().severity() == Severity.STOP)
                .toList();
    }

    private static Stream<Item> items(Told told) {
        return told.outcome().flatMap(Outcome::answers).stream()
                .flatMap(answers -> answers.entries().values().stream())
                .filter(Item.class::isInstance)
                .map(Item.class::cast);
    }

    private String line(Values values) {
        String line = asked.of(values);
        return "hidewright work " + template.declaration().id() + (line.isEmpty() ? "" : " " + line);
    }

    /** Of rows that are drawn several times one is told for all. */
    private static String numberless(String ids) {
        return ids.replaceAll("\\d+", "#");
    }

    private boolean isItsOwn(Notice notice) {
        return !places.of("tells", notice.kind().key()).equals(places.head());
    }

    private Place place(Notice notice) {
        if (isItsOwn(notice)) {
            return places.of("tells", notice.kind().key());
        } else if (!notice.place().isEmpty()) {
            return places.ofDrawn(notice.place());
        } else if (isOfTheHost(notice)) {
            // an expression is told last, a calculator first
            int told = ExpressionNotices.all().contains(notice.kind())
                    ? notice.args().size() - 1
                    : 0;
            return places.ofText(String.valueOf(notice.args().get(told))).orElse(places.ofDrawn(""));
        }
        return places.asks().stream()
                .filter(asks -> beside.others().apply(asks.calculator().text()).stream()
                        .anyMatch(whom -> whom.declaration().notices().contains(notice.kind())))
                .findFirst()
                .map(asks -> asks.questions().place())
                .orElse(places.ofDrawn(""));
    }

    private String what(Notice notice) {
        return wording.what(Remark.of(notice, template.texts()));
    }

    /** A number of stitches is a count, a place has the unit of the maker. */
    private static Phrase words(PartFault fault) {
        List<Object> args = new ArrayList<>(List.of(
                fault.part().name(),
                Length.ofMm(fault.place().x() - fault.part().outline().bounds().minX()),
                Length.ofMm(fault.place().y() - fault.part().outline().bounds().minY()),
                fault.id()));
        args.addAll(fault.lines());
        String key = fault.what().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Phrase.of("part-" + key, args.toArray());
    }

    private String what(ItemCheck check) {
        return wording.what(Remark.of(check.notice(1, new ItemWords(template.texts())), CoreTexts.TEXTS));
    }

    /** @param once what is told already is not told again for other answers */
    private void say(String once, Notice notice, Place place) {
        if (said.add(once)) {
            remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
        }
    }
}
