package org.plumbrow.project.gate.page;

import jakarta.validation.constraints.Digits;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.Duty;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Condition;
import org.plumbrow.project.gate.GateChecklists.Choice;
import org.plumbrow.project.gate.TemplateItem;

/**
 * An item of a checklist as typed; what kind it is, where it is asked and who acts is chosen once, when a branch adds one
 * of its own.
 */
record TemplateForm(
        @Nullable String words,
        @Nullable String hint,
        @Nullable String unit,

        @Digits(integer = 9, fraction = 4, message = LIMIT) @Nullable
        BigDecimal low,

        @Digits(integer = 9, fraction = 4, message = LIMIT) @Nullable
        BigDecimal high,

        @Nullable Boolean required,
        @Nullable Boolean asked,
        @Nullable List<String> kinds,
        @Nullable List<String> sites,
        @Nullable String duty,
        @Nullable Long version) {

    private static final String LIMIT = "Write the limit as a number below 1,000,000,000, or leave it empty.";

    static TemplateForm of(TemplateItem item) {
        Choice now = Choice.of(item);
        return new TemplateForm(
                now.words(),
                now.hint(),
                now.unit(),
                now.low(),
                now.high(),
                now.required(),
                now.asked(),
                List.of(),
                List.of(),
                null,
                item.version());
    }

    static TemplateForm empty() {
        return new TemplateForm(
                null, null, null, null, null, true, true, List.of(), List.of(), Duty.PROJECT_MANAGER.name(), 0L);
    }

    Choice choice() {
        return new Choice(
                ItemForm.text(words),
                ItemForm.text(hint),
                ItemForm.text(unit),
                low,
                high,
                Boolean.TRUE.equals(required),
                Boolean.TRUE.equals(asked));
    }

    List<Written> written() {
        return choice().written();
    }

    long seen() {
        return version == null ? 0 : version;
    }

    List<AnswerKind> chosenKinds() {
        return ItemForm.list(kinds).stream()
                .map(name -> named(AnswerKind.values(), name))
                .flatMap(Optional::stream)
                .toList();
    }

    List<Condition.Site> chosenSites() {
        return ItemForm.list(sites).stream()
                .map(name -> named(Condition.Site.values(), name))
                .flatMap(Optional::stream)
                .toList();
    }

    Optional<Duty> chosenDuty() {
        return named(Duty.values(), ItemForm.text(duty));
    }

    private static <E extends Enum<E>> Optional<E> named(E[] all, String name) {
        return Arrays.stream(all).filter(one -> one.name().equals(name)).findFirst();
    }
}
