package org.plumbrow.project.gate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Stage;
import org.springframework.stereotype.Component;

/** Puts a gate together: what the branch asks, what was answered, what the rules find. Asks nobody whether they may. */
@Component
class GateBook {

    private final GateDays days;
    private final GateTemplates templates;
    private final AnswerRows answers;
    private final GateRules rules;
    private final PassageRows passages;

    GateBook(GateTemplates templates, AnswerRows answers, GateRules rules, PassageRows passages, GateDays days) {
        this.days = days;
        this.templates = templates;
        this.answers = answers;
        this.rules = rules;
        this.passages = passages;
    }

    GateView open(ProjectFacts facts, Stage to) {
        return open(facts, to, templates.asked(facts.branchId()));
    }

    /** @param asked everything that the branch asks */
    GateView open(ProjectFacts facts, Stage to, List<AskedItem> asked) {
        Map<String, AnswerRow> answered = answers.of(facts.id(), List.of(to));
        Map<String, PassageRows.Found> found =
                to.isReachedAt(facts.stage()) ? passages.newest(facts.id(), to) : Map.of();
        GateLook look = new GateLook(facts);
        LocalDate due = to.isReachedAt(facts.stage())
                ? null
                : days.neededBy(facts.id(), to).orElse(null);
        List<ItemView> items = new ArrayList<>();
        for (AskedItem item : GateTemplates.of(to, asked)) {
            AnswerRow answer = answered.remove(item.code());
            view(look, item, answer, found.get(item.code()), due).ifPresent(items::add);
        }
        // What was answered before the branch switched the item off stays to be seen, and keeps nothing shut.
        for (AnswerRow gone : answered.values()) {
            AskedItem item = gone.asked();
            if (item != null && gone.isAnswered()) {
                view(look, notRequired(item), gone, found.get(item.code()), due).ifPresent(items::add);
            }
        }
        return new GateView(facts.id(), facts.branchId(), to, facts.stage(), facts.standing(), due, List.copyOf(items));
    }

    private Optional<ItemView> view(
            GateLook look,
            AskedItem now,
            @Nullable AnswerRow kept,
            PassageRows.@Nullable Found found,
            @Nullable LocalDate due) {
        ProjectFacts facts = look.project();
        AnswerRow answer = kept == null ? AnswerRow.none(Ids.next()) : kept;
        Condition.Applies applies = now.condition().to(facts);
        if (applies == Condition.Applies.NO && !answer.isAnswered()) {
            return Optional.empty();
        }
        AskedItem asked = asAsked(now, answer);
        Finding finding = found == null ? rules.check(asked, look) : null;
        boolean byHand = Judging.isByHand(asked, finding);
        Judging.Verdict verdict = found == null
                ? Judging.of(asked, finding, answer)
                : new Judging.Verdict(found.state(), found.sentence(), List.of());
        return Optional.of(new ItemView(
                asked,
                applies,
                asked.required() && applies != Condition.Applies.NO,
                verdict.state(),
                verdict.sentence(),
                verdict.lacking(),
                byHand,
                finding,
                kept == null ? null : answerView(answer),
                who(facts, now, answer),
                verdict.state().isSatisfied() ? null : by(answer, due)));
    }

    /** The day that somebody outside named, else the day on which the plan needs it. */
    private static @Nullable LocalDate by(AnswerRow answer, @Nullable LocalDate due) {
        return answer.promisedOn() == null ? due : answer.promisedOn();
    }

    /** The words, unit and limits that were asked when it was answered; hint, condition and duty as they are now. */
    private static AskedItem asAsked(AskedItem now, AnswerRow answer) {
        AskedItem then = answer.asked();
        if (then == null || !answer.isAnswered()) {
            return now;
        }
        return new AskedItem(
                now.code(),
                then.words(),
                now.hint(),
                then.kinds(),
                then.unit(),
                then.low(),
                then.high(),
                then.least(),
                now.condition(),
                then.required() && now.required(),
                then.safety(),
                now.duty());
    }

    private static AskedItem notRequired(AskedItem item) {
        return new AskedItem(
                item.code(),
                item.words(),
                item.hint(),
                item.kinds(),
                item.unit(),
                item.low(),
                item.high(),
                item.least(),
                item.condition(),
                false,
                item.safety(),
                item.duty());
    }

    private static ItemView.AnswerView answerView(AnswerRow answer) {
        return new ItemView.AnswerView(
                answer.version(),
                answer.reason(),
                answer.standBy(),
                answer.waitsOn(),
                answer.promisedOn(),
                answer.parts());
    }

    /** "Rosa, permits"; where nobody has the duty, the project manager for it. */
    private static String who(ProjectFacts facts, AskedItem item, AnswerRow answer) {
        if (answer.waitsOn() != null) {
            return answer.waitsOn();
        }
        Duty duty = item.duty();
        return facts.inCharge(duty)
                .map(person -> person.name() + ", " + duty.words())
                .or(() -> facts.inCharge(Duty.PROJECT_MANAGER).map(person -> person.name() + ", for " + duty.words()))
                .orElse("Nobody yet, " + duty.words());
    }

    static String label(Stage stage) {
        return lower(stage.words());
    }

    static String lower(String words) {
        return words.toLowerCase(Locale.ROOT);
    }

    static int bySoonest(ItemView one, ItemView other) {
        LocalDate never = LocalDate.MAX;
        int byDate = (one.by() == null ? never : one.by()).compareTo(other.by() == null ? never : other.by());
        int byTrouble = Boolean.compare(one.state() != ItemState.BROKEN, other.state() != ItemState.BROKEN);
        return byDate != 0 ? byDate : byTrouble;
    }
}
