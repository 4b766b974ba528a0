package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.DayLogSheet.BackField;
import org.plumbrow.cutover.daylog.DayLogSheet.BackView;
import org.plumbrow.cutover.daylog.DayLogSheet.ClockView;
import org.plumbrow.cutover.daylog.DayLogSheet.FieldView;
import org.plumbrow.cutover.daylog.DayLogSheet.NowView;
import org.plumbrow.cutover.daylog.DayLogSheet.ReversalView;
import org.plumbrow.cutover.daylog.DayLogSheet.Stand;
import org.plumbrow.cutover.daylog.LogState.Effective;

/** Puts the page of one log together: where one stands, what is to be read or signed, the clock, everything so far. */
final class SheetAssembly {

    private static final int HUNDRED = 100;

    private final DayLogSheet.About about;
    private final OutageFacts window;
    private final DayLog log;
    private final LogState state;
    private final LogMoment moment;
    private final Typed typed;
    private final Readings readings;
    private final PlannedTimes planned;
    private final boolean changeable;

    SheetAssembly(DayLogSheet.About about, LogState state, LogMoment moment, Typed typed, boolean changeable) {
        this.about = about;
        this.window = Objects.requireNonNull(about.window());
        this.log = Objects.requireNonNull(about.log());
        this.state = state;
        this.moment = moment;
        this.typed = typed;
        this.changeable = changeable;
        this.readings = LogPen.readings(log, about.project());
        this.planned = new PlannedTimes(state.steps(), window, moment.zone());
    }

    DayLogSheet sheet() {
        Stand stand = stand();
        Optional<LogStep> current = stand == Stand.RUNNING ? state.current() : Optional.empty();
        return new DayLogSheet(
                about,
                stand,
                clockView(),
                current.map(this::nowView).orElse(null),
                current.isEmpty() ? null : state.nextHold().orElse(null),
                new StepList(state, readings, planned, changeable, log.isClosed()).lines(current),
                reversalView(),
                state.reversedAt().orElse(null),
                state.reverseReason().orElse(""),
                log.isClosed() ? List.of() : warnings(),
                stand == Stand.RUNNING || stand == Stand.REVERSING
                        ? new StepsToCome(state, readings).after(current)
                        : List.of(),
                back(stand),
                List.of(),
                PeopleOnSite.of(log, state));
    }

    private @Nullable BackView back(Stand stand) {
        if (stand == Stand.RUNNING) {
            return BackView.blank(state, readings);
        }
        if (stand != Stand.REVERSING) {
            return null;
        }
        ReversalReadings way = new ReversalReadings(state, readings);
        LogStep closes = state.step(Procedure.UTILITY_CLOSES);
        List<String> against = way.against();
        return new BackView(
                readings.of(closes.code()).stream()
                        .map(asked -> new BackField(field(closes, asked), way.limits(asked)))
                        .toList(),
                against,
                against.isEmpty(),
                against.isEmpty() ? read(Procedure.UTILITY_CLOSES, Procedure.READ_BEFORE) : List.of());
    }

    private Stand stand() {
        if (log.isClosed()) {
            return Stand.CLOSED;
        }
        if (!changeable || LogPen.isGivenUp(log, state, window)) {
            return Stand.GIVEN_UP;
        }
        if (state.reversedAt().isPresent()) {
            return state.powerOnAt().isPresent() ? Stand.REVERSED : Stand.REVERSING;
        }
        return state.current().isPresent() ? Stand.RUNNING : Stand.COMPLETE;
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (String step : List.of("2", Procedure.UTILITY_CLOSES)) {
            readings.judged(state, step).warning().ifPresent(warnings::add);
        }
        return warnings;
    }

    private @Nullable ReversalView reversalView() {
        return state.reversal()
                .map(time -> new ReversalView(
                        time,
                        time.latest().decideBy().atZone(moment.zone()).toInstant(),
                        time.latest().neededBy().atZone(moment.zone()).toInstant(),
                        state.of(EntryKind.REVERSAL_TIME).size()))
                .orElse(null);
    }

    private @Nullable ClockView clockView() {
        Instant off = state.powerOffAt().orElse(null);
        Instant on = state.powerOnAt().orElse(null);
        ReversalView reversal = reversalView();
        if (off == null && reversal == null) {
            return null;
        }
        Instant now = moment.now();
        Instant decide = reversal == null ? null : reversal.decideBy();
        Instant until = on == null ? now : on;
        Integer minutes = off == null ? null : (int) minutesBetween(off, until);
        Long left = decide == null || on != null ? null : minutesBetween(now, decide);
        Instant end = (off == null ? now : off).plus(window.outageMinutes(), ChronoUnit.MINUTES);
        return new ClockView(off, on, decide, now, minutes, left, share(off, until, decide), share(off, end, decide));
    }

    private static int share(@Nullable Instant off, Instant at, @Nullable Instant decide) {
        if (off == null || decide == null || !decide.isAfter(off)) {
            return 0;
        }
        long whole = Duration.between(off, decide).toMillis();
        long part = Math.max(0, Duration.between(off, at).toMillis());
        return (int) Math.min(HUNDRED, HUNDRED * part / whole);
    }

    private static long minutesBetween(Instant from, Instant to) {
        return Duration.between(from.truncatedTo(ChronoUnit.MINUTES), to.truncatedTo(ChronoUnit.MINUTES))
                .toMinutes();
    }

    private NowView nowView(LogStep step) {
        List<FieldView> fields = readings.of(step.code()).stream()
                .map(asked -> field(step, asked))
                .toList();
        int photos = state.of(step.code(), EntryKind.PHOTO).size();
        if (!step.hold()) {
            return new NowView(step, planned.of(step), fields, List.of(), null, List.of(), photos);
        }
        Hold hold = Hold.valueOf(step.code());
        List<String> against = new HoldRules(state, readings).against(hold);
        Hold.Part signs = against.isEmpty() ? state.unsigned(hold).get(0) : null;
        return new NowView(step, planned.of(step), fields, against, signs, basis(hold), photos);
    }

    /** What whoever signs relies on: the readings behind the hold point. */
    private List<String> basis(Hold hold) {
        return switch (hold) {
            case H1 -> read("2", "");
            case H2 -> read("6", "");
            case H3 -> {
                List<String> both = new ArrayList<>(read(Procedure.CONNECT, ""));
                both.addAll(read("8", ""));
                yield both;
            }
            case H4 -> read(Procedure.UTILITY_CLOSES, "2");
            case H5 -> read(Procedure.LOADS_BACK, "2");
        };
    }

    /** @param before the step with which it is compared; empty for none */
    private List<String> read(String step, String before) {
        return readings.of(step).stream()
                .flatMap(asked -> state
                        .reading(step, asked.quantity())
                        .map(one -> asked.words() + ": " + asked.shown(String.valueOf(one.value()))
                                + before(before, asked) + remarks(one))
                        .stream())
                .toList();
    }

    private String before(String step, Asked asked) {
        return state.value(step, asked.quantity())
                .map(value -> ", before " + asked.shown(value))
                .orElse("");
    }

    private String remarks(Effective reading) {
        String why = state.whyItStays(reading.entry().id())
                .map(reason -> " (outside its limits; stays: " + reason + ")")
                .orElse("");
        return why
                + (isCorrected(reading) ? " (corrected, was " + reading.entry().value() + ")" : "");
    }

    private static boolean isCorrected(Effective reading) {
        return !Objects.equals(reading.value(), reading.entry().value());
    }

    private FieldView field(LogStep step, Asked asked) {
        Optional<Effective> stands = state.reading(step.code(), asked.quantity());
        String kept = stands.map(Effective::value).orElse("");
        String value = typed.values().getOrDefault(asked.quantity(), kept);
        boolean isValue = !value.isBlank() && asked.refuse(value).isEmpty();
        String ask = isValue ? asked.ask(asked.kept(value)).orElse("") : "";
        boolean shut = isValue && asked.isShutAt(asked.kept(value));
        String wrong = typed.wrong(asked.quantity());
        return new FieldView(
                asked,
                value,
                kept,
                wrong.equals(ask) ? "" : wrong,
                ask,
                !ask.isEmpty() && !shut,
                why(asked, stands, !kept.equals(value)));
    }

    /** Why it stays: as typed just now, else as it stands with this very reading. */
    private String why(Asked asked, Optional<Effective> stands, boolean another) {
        String now = typed.stays().get(asked.quantity());
        if (now != null || another) {
            return now == null ? "" : now;
        }
        return stands.flatMap(one -> state.whyItStays(one.entry().id())).orElse("");
    }
}
