package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.outage.LatestReversal;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;

/** The way back: the latest time to decide, the decision, its reason, and the power back on. */
@Service
public class LogReversal {

    /** What was set before does not matter. */
    static final long ANY = -1;

    private static final String NOTHING_TO_REVERSE =
            "The power is not off: there is nothing to reverse. Move or cancel the window instead.";

    static final String POWER_IS_BACK = "The power is back on after this reversal; it cannot be taken back any more.";

    private final LogPen pen;
    private final Outages outages;

    LogReversal(LogPen pen, Outages outages) {
        this.pen = pen;
        this.outages = outages;
    }

    /**
     * @param neededBy when the loads must run again; the three minutes lead back from there
     * @param seen how often the time had been set when the page was opened
     */
    public record Setting(
            UUID entryId,
            @Nullable LocalTime neededBy,
            @Nullable Integer undoMinutes,
            @Nullable Integer bringBackMinutes,
            @Nullable Integer reserveMinutes,
            String reason,
            long seen) {

        /** By whoever has not looked at an earlier one. */
        public Setting(
                UUID entryId,
                @Nullable LocalTime neededBy,
                @Nullable Integer undoMinutes,
                @Nullable Integer bringBackMinutes,
                @Nullable Integer reserveMinutes,
                String reason) {
            this(entryId, neededBy, undoMinutes, bringBackMinutes, reserveMinutes, reason, ANY);
        }
    }

    public Said latest(UUID projectId, Setting setting) {
        return pen.write(projectId, setting.entryId(), writing -> latest(writing, setting));
    }

    private Said latest(Writing writing, Setting setting) {
        if (writing.log().isClosed() || writing.state().powerOnAt().isPresent()) {
            return Said.refused("", "The outage is over; there is nothing to reverse.");
        }
        if (setting.seen() != ANY
                && setting.seen() != writing.state().of(EntryKind.REVERSAL_TIME).size()) {
            return Said.meanwhile("", "Somebody else set the latest reversal time meanwhile.");
        }
        List<Refusal> refusals = against(setting);
        return refusals.isEmpty()
                ? latest(
                        writing,
                        setting,
                        new LatestReversal(
                                writing.moment().local(Objects.requireNonNull(setting.neededBy())),
                                or(setting.undoMinutes(), LatestReversal.USUAL_UNDO),
                                or(setting.bringBackMinutes(), LatestReversal.USUAL_BRING_BACK),
                                or(setting.reserveMinutes(), LatestReversal.USUAL_RESERVE)))
                : Said.refused(refusals);
    }

    private static List<Refusal> against(Setting setting) {
        List<Refusal> refusals = new ArrayList<>();
        if (setting.neededBy() == null) {
            refusals.add(new Refusal("neededBy", "Write the time by which the loads must run again."));
        }
        if (LogChanges.isNoReason(setting.reason())) {
            refusals.add(new Refusal("reason", "Write what needs the power by then, for example milking."));
        }
        against("undoMinutes", setting.undoMinutes()).ifPresent(refusals::add);
        against("bringBackMinutes", setting.bringBackMinutes()).ifPresent(refusals::add);
        against("reserveMinutes", setting.reserveMinutes()).ifPresent(refusals::add);
        return refusals;
    }

    private static Optional<Refusal> against(String field, @Nullable Integer minutes) {
        return minutes == null || LatestReversal.MINUTES.holds(minutes)
                ? Optional.empty()
                : Optional.of(new Refusal(field, "Minutes are whole numbers from 0 to 240."));
    }

    private Said latest(Writing writing, Setting setting, LatestReversal latest) {
        OutageFacts window = outages.find(writing.log().windowId()).orElseThrow(NotFound::new);
        String decideBy = ClockWords.of(latest.decideBy().toLocalTime());
        boolean beforeTheStart = writing.state().powerOffAt().isEmpty()
                && !latest.isPossibleFrom(window.day().atTime(window.start()));
        if (beforeTheStart || latest.decideBy().toLocalDate().isBefore(window.day())) {
            return Said.refused(
                    "neededBy",
                    "The latest reversal (" + decideBy + ") lies before the start (" + ClockWords.of(window.start())
                            + "). Not possible without a generator.");
        }
        String reason = setting.reason().strip();
        writing.about(
                setting.entryId(), "1", EntryKind.REVERSAL_TIME, ReversalTime.written(latest), reason, writing.now());
        return Said.stored("the latest reversal is " + decideBy + ". " + reason);
    }

    private static int or(@Nullable Integer minutes, int usual) {
        return minutes == null ? usual : minutes;
    }

    /** At one tap. Whoever hit it by mistake takes it back; both stay in the log. */
    Said reverse(UUID projectId, UUID entryId) {
        return pen.write(projectId, entryId, writing -> {
            LogState state = writing.state();
            if (writing.log().isClosed()
                    || state.powerOffAt().isEmpty()
                    || state.powerOnAt().isPresent()) {
                return Said.refused("", NOTHING_TO_REVERSE);
            }
            if (state.reversedAt().isPresent()) {
                return Said.stored("");
            }
            String step = state.current().map(LogStep::code).orElse(Procedure.LAST);
            writing.about(entryId, step, EntryKind.REVERSE, null, null, writing.now());
            return Said.stored("reversed, " + writing.clock(writing.now()) + ".");
        });
    }

    Said begunByMistake(UUID projectId, UUID entryId, String reason) {
        return pen.write(projectId, entryId, writing -> {
            LogState state = writing.state();
            List<LogState.Effective> standing = state.of(EntryKind.REVERSE);
            if (standing.isEmpty() || writing.log().isClosed()) {
                return Said.refused("", "Nothing is being reversed now.");
            }
            if (state.powerOnAt().isPresent()) {
                return Said.refused("", POWER_IS_BACK);
            }
            if (LogChanges.isNoReason(reason)) {
                return Said.refused("mistake", "Write why it was begun, 1 to 300 characters. Both stay in the log.");
            }
            writing.change(entryId, standing.get(0).entry(), EntryKind.TAKEN_BACK, null, reason.strip(), writing.now());
            return Said.stored("the reversal was begun by mistake and is taken back, " + writing.clock(writing.now())
                    + ". " + reason.strip());
        });
    }

    Said reason(UUID projectId, UUID entryId, String reason) {
        return pen.write(projectId, entryId, writing -> {
            if (writing.state().reversedAt().isEmpty()) {
                return Said.refused("", "Nothing was reversed.");
            }
            if (LogChanges.isNoReason(reason)) {
                return Said.refused("reason", "Write why it was reversed, 1 to 300 characters.");
            }
            writing.about(
                    entryId, stepOfReversal(writing), EntryKind.REVERSE_REASON, reason.strip(), null, writing.now());
            return Said.stored("reversed because: " + reason.strip());
        });
    }

    Said powerOn(UUID projectId, UUID entryId, @Nullable LocalTime typed) {
        return pen.write(projectId, entryId, writing -> {
            if (writing.state().reversedAt().isEmpty()) {
                return Said.refused("", "The outage ends with the customer's signature at H5.");
            }
            if (writing.state().powerOnAt().isPresent()) {
                return Said.refused("", "The power is back on already. Correct the time if it is wrong.");
            }
            List<Refusal> against =
                    new ArrayList<>(writing.against(typed).stream().toList());
            new ReversalReadings(writing.state(), writing.readings())
                    .against().stream().map(Refusal::ofForm).forEach(against::add);
            if (!against.isEmpty()) {
                return Said.refused(against);
            }
            Instant at = writing.at(typed);
            writing.about(entryId, stepOfReversal(writing), EntryKind.POWER_ON, null, null, at);
            return Said.stored("the power is back on, " + writing.clock(at) + ".");
        });
    }

    private static String stepOfReversal(Writing writing) {
        return Optional.of(writing.state().of(EntryKind.REVERSE))
                .filter(all -> !all.isEmpty())
                .map(all -> all.get(0).entry().step())
                .orElse(Procedure.LAST);
    }
}
