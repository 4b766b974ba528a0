package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Written;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The checklists of the branch being looked at: words, limits, what is required, what is asked at all, and items of its
 * own. What was answered keeps what was asked then; a shipped safety item is never asked more gently.
 */
@Service
@Transactional
public class GateChecklists {

    private final GateTemplates templates;
    private final ChangeLog log;
    private final Gates gates;
    private final Access access;

    GateChecklists(GateTemplates templates, ChangeLog log, Gates gates, Access access) {
        this.templates = templates;
        this.log = log;
        this.gates = gates;
        this.access = access;
    }

    /**
     * What a branch decides of an item.
     *
     * @param unit of a reading; of a shipped item it stays as it is
     * @param asked whether the branch asks for it at all
     */
    public record Choice(
            String words,
            String hint,
            String unit,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            boolean required,
            boolean asked) {

        public static Choice of(TemplateItem item) {
            AskedItem asked = item.asked();
            return new Choice(
                    asked.words(),
                    asked.hint(),
                    asked.unit(),
                    plain(asked.low()),
                    plain(asked.high()),
                    asked.required(),
                    !item.switchedOff());
        }

        private static @Nullable BigDecimal plain(@Nullable BigDecimal figure) {
            return figure == null
                    ? null
                    : new BigDecimal(figure.stripTrailingZeros().toPlainString());
        }

        private AskedItem item(String code, List<AnswerKind> kinds, Condition condition, Duty duty) {
            return new AskedItem(
                    code,
                    words.strip(),
                    hint.strip(),
                    kinds,
                    unit.strip(),
                    low,
                    high,
                    1,
                    condition,
                    required,
                    false,
                    duty);
        }

        /** Every field of the form, for the change log and for theirs beside yours. */
        public List<Written> written() {
            return List.of(
                    Written.of("Words", "words", words),
                    Written.of("Hint", "hint", hint),
                    Written.of("Unit", "unit", unit),
                    Written.of("At least", "low", low == null ? null : low.toPlainString()),
                    Written.of("At most", "high", high == null ? null : high.toPlainString()),
                    Written.of("Required", "required", required, required ? "yes" : "no"),
                    Written.of("Asked", "asked", asked, asked ? "yes" : "no"));
        }
    }

    @Transactional(readOnly = true)
    public List<TemplateItem> all() {
        return templates.all(branch());
    }

    /** @throws NotFound if the branch has no such item */
    @Transactional(readOnly = true)
    public TemplateItem one(String code) {
        return one(branch(), code);
    }

    private TemplateItem one(UUID branchId, String code) {
        return templates.all(branchId).stream()
                .filter(item -> item.asked().code().equals(code))
                .findFirst()
                .orElseThrow(() -> new NotFound("item " + code));
    }

    /** @throws org.plumbrow.web.EditedMeanwhile if somebody was faster */
    public Optional<Refusal> change(String code, Choice to, long version) {
        UUID branchId = branch();
        TemplateItem before = one(branchId, code);
        Choice kept = before.own() ? to : withUnit(to, before.asked().unit());
        Optional<Refusal> no = whyNot(before.asked().kinds(), kept).or(() -> weaker(code, kept));
        if (no.isEmpty()) {
            templates.change(branchId, before, kept, version);
            log.changed(
                    branchId,
                    access.actor(),
                    thing(before.asked()),
                    Choice.of(before).written(),
                    kept.written());
            gates.lookAgainAtBranch(branchId);
        }
        return no;
    }

    /** Adds an item of the branch's own at the end of a gate's list. */
    public Optional<Refusal> add(
            Stage stage, List<AnswerKind> kinds, List<Condition.Site> sites, Duty duty, Choice choice) {
        UUID branchId = branch();
        if (kinds.isEmpty() || kinds.contains(AnswerKind.COMPUTED)) {
            return no("kinds", "Choose what somebody gives here: at least one.");
        }
        Optional<Refusal> no = whyNot(kinds, choice);
        if (no.isEmpty()) {
            AskedItem item = choice.item(templates.nextOwn(branchId, stage), kinds, new Condition(sites, ""), duty);
            templates.add(branchId, item, !choice.asked);
            String where = item.condition().isEverywhere()
                    ? ""
                    : ", at: " + item.condition().words();
            String added = "Added to the gate to " + GateBook.label(stage);
            log.happened(branchId, access.actor(), thing(item), added, "", AnswerKind.write(kinds) + where);
            gates.lookAgainAtBranch(branchId);
        }
        return no;
    }

    private static Choice withUnit(Choice to, String unit) {
        return new Choice(to.words, to.hint, unit, to.low, to.high, to.required, to.asked);
    }

    private static Optional<Refusal> whyNot(List<AnswerKind> kinds, Choice to) {
        if (to.words.isBlank() || to.words.length() > 200) {
            return no("words", "Write what is asked, in 1 to 200 letters.");
        }
        if (to.hint.length() > 300) {
            return no("hint", "Write at most 300 letters.");
        }
        if (to.unit.length() > 12) {
            return no("unit", "Write the unit in at most 12 letters.");
        }
        boolean limited = to.low != null || to.high != null;
        if (limited && (to.unit.isBlank() || !kinds.contains(AnswerKind.READING))) {
            return no("low", "Limits belong to a reading with a unit. Leave both empty, or give the unit.");
        }
        return to.low != null && to.high != null && to.low.compareTo(to.high) > 0
                ? no("high", "The upper limit is below the lower one.")
                : Optional.empty();
    }

    /** Why the choice would ask a shipped safety item more gently. */
    private static Optional<Refusal> weaker(String code, Choice to) {
        return ShippedItems.all().stream()
                .filter(item -> item.code().equals(code) && item.safety())
                .findFirst()
                .flatMap(shipped -> weaker(shipped, to));
    }

    private static Optional<Refusal> weaker(AskedItem shipped, Choice to) {
        if (!to.asked) {
            return no("asked", "This item protects people, animals or equipment: every branch asks for it.");
        }
        if (!to.required) {
            return no("required", "This item protects people, animals or equipment: it stays required.");
        }
        boolean lower = shipped.low() != null && (to.low == null || to.low.compareTo(shipped.low()) < 0);
        boolean higher = shipped.high() != null && (to.high == null || to.high.compareTo(shipped.high()) > 0);
        return lower || higher
                ? no(
                        lower ? "low" : "high",
                        "The limits of this item may be narrower than " + shipped.limits() + ", not wider.")
                : Optional.empty();
    }

    private static Optional<Refusal> no(String field, String sentence) {
        return Optional.of(new Refusal(field, sentence));
    }

    private static String thing(AskedItem item) {
        return "gate item " + item.words();
    }

    private UUID branch() {
        return access.require(May.CHANGE_SETTINGS).id();
    }
}
