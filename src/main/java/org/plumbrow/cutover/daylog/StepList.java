package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.DayLogSheet.EntryView;
import org.plumbrow.cutover.daylog.DayLogSheet.StepView;

/** All steps with what was written at each: both of two entries, what was corrected beside what counts. */
final class StepList {

    private final LogState state;
    private final Readings readings;
    private final PlannedTimes planned;
    private final boolean changeable;
    private final boolean closed;

    /** @param changeable whether this log can still be corrected */
    StepList(LogState state, Readings readings, PlannedTimes planned, boolean changeable, boolean closed) {
        this.state = state;
        this.readings = readings;
        this.planned = planned;
        this.changeable = changeable;
        this.closed = closed;
    }

    List<StepView> lines(Optional<LogStep> current) {
        return state.steps().stream().map(step -> line(step, current)).toList();
    }

    private StepView line(LogStep step, Optional<LogStep> current) {
        boolean here = current.map(step::equals).orElse(false);
        List<EntryView> all = entries(step);
        return new StepView(
                step,
                shape(step, here),
                here,
                planned.of(step),
                all.stream().filter(one -> one.kind() != EntryKind.READING).toList(),
                all.stream().filter(one -> one.kind() == EntryKind.READING).toList(),
                read(step),
                isTwice(step));
    }

    private String shape(LogStep step, boolean here) {
        if (!step.applies()) {
            return "na";
        }
        boolean passed = state.isPassed(step);
        if (step.hold()) {
            return passed ? "signed" : "hold";
        }
        if (passed) {
            return "done";
        }
        return here ? "part" : "todo";
    }

    /** What counts of the readings. */
    private List<String> read(LogStep step) {
        return readings.of(step.code()).stream()
                .flatMap(asked -> state
                        .reading(step.code(), asked.quantity())
                        .map(one -> asked.shown(String.valueOf(one.value())) + remarks(asked, one))
                        .stream())
                .toList();
    }

    private static String remarks(Asked asked, LogState.Effective one) {
        boolean corrected = !Objects.equals(one.value(), one.entry().value());
        String outside = asked.ask(String.valueOf(one.value())).isPresent() ? " (outside)" : "";
        return corrected ? outside + " (corrected)" : outside;
    }

    private boolean isTwice(LogStep step) {
        return state.of(step.code(), EntryKind.DONE).size() > 1;
    }

    private List<EntryView> entries(LogStep step) {
        List<EntryView> views = new ArrayList<>();
        for (LogEntry entry : state.entriesOf(step.code())) {
            if (!isAboutAnother(entry.kind())) {
                views.add(view(entry));
            }
        }
        return views;
    }

    private static boolean isAboutAnother(EntryKind kind) {
        return switch (kind) {
            case CORRECTED, TAKEN_BACK, STAYS, COULD_HAVE, WAS_DONE -> true;
            default -> false;
        };
    }

    private EntryView view(LogEntry entry) {
        LogEntry last = last(entry, EntryKind.CORRECTED);
        boolean takenBack = state.isTakenBack(entry.id());
        String now = last == null || last.value() == null ? entry.value() : last.value();
        String value = now == null ? "" : now;
        LogEntry.PhoneTime phone = entry.phone();
        long wrong = phone == null ? 0 : phone.minutesWrong();
        return new EntryView(
                entry.id(),
                entry.kind(),
                text(entry, value),
                last == null ? entry.happenedAt() : last.happenedAt(),
                who(entry, value),
                entry.byName(),
                value,
                last == null || last.value() == null ? "" : before(entry),
                reason(entry, last),
                stays(entry),
                takenBack,
                changeable && !takenBack && isChangeable(entry.kind()),
                state.changesOf(entry.id()).size(),
                entry.evidenceId(),
                wrong == 0 || phone == null ? null : phone.time(),
                wrong);
    }

    private @Nullable LogEntry last(LogEntry of, EntryKind kind) {
        return state.changesOf(of.id()).stream()
                .filter(change -> change.kind() == kind)
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    private String before(LogEntry entry) {
        String value = entry.value() == null ? "" : entry.value();
        return entry.kind() == EntryKind.DONE ? who(entry, value) : text(entry, value);
    }

    private static String who(LogEntry entry, String value) {
        LogEntry.Signature signature = entry.signature();
        if (signature != null) {
            return signature.name() + ", " + signature.trade();
        }
        return entry.kind() == EntryKind.DONE && !value.isEmpty() ? value : entry.byName();
    }

    private String stays(LogEntry entry) {
        LogEntry stays = last(entry, EntryKind.STAYS);
        return stays == null || stays.reason() == null ? "" : stays.reason();
    }

    private String reason(LogEntry entry, @Nullable LogEntry last) {
        if (state.isTakenBack(entry.id())) {
            return state.changesOf(entry.id()).stream()
                    .filter(change -> change.kind() == EntryKind.TAKEN_BACK)
                    .map(change -> String.valueOf(change.reason()))
                    .collect(Collectors.joining(", "));
        }
        String reason = last == null ? entry.reason() : last.reason();
        return reason == null ? "" : reason;
    }

    private boolean isChangeable(EntryKind kind) {
        return switch (kind) {
            case DONE, READING, SIGNED, POWER_ON -> true;
            case REVERSE -> !closed;
            default -> false;
        };
    }

    private String text(LogEntry entry, String value) {
        return switch (entry.kind()) {
            case DONE, REVERSAL_TIME -> "";
            case READING ->
                readings.of(entry.step()).stream()
                        .filter(asked -> asked.quantity().equals(entry.quantity()))
                        .findFirst()
                        .map(asked -> asked.words() + ": " + asked.shown(value))
                        .orElse(entry.quantity() + ": " + value);
            default -> value;
        };
    }
}
