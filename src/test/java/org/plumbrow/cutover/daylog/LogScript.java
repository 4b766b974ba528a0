package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.outage.LatestReversal;
import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.calc.outage.OutageWork;
import org.plumbrow.database.Ids;

/** Writes a log in memory, an entry a minute, so that a test states only what it is about. */
final class LogScript {

    static final Instant EIGHT = Instant.parse("2027-03-26T12:00:00Z");

    private final List<LogStep> steps;
    private final List<LogEntry> entries = new ArrayList<>();
    private final Readings readings;
    private Instant now = EIGHT;

    LogScript(Service service, boolean generator) {
        this.steps = Procedure.of(generator, OutageMinutes.of(OutageWork.tapOnly()));
        this.readings = new Readings(service, generator, false);
    }

    static LogScript home() {
        return new LogScript(Service.SINGLE_PHASE_120_240, false);
    }

    static LogScript farm() {
        return new LogScript(Service.WYE_208_120, true);
    }

    /** A day on which everything goes well, up to and with this step. */
    LogScript goesWellUpTo(String last) {
        for (LogStep step : steps) {
            if (step.applies()) {
                pass(step);
            }
            if (step.code().equals(last)) {
                return this;
            }
        }
        throw new IllegalArgumentException("no step " + last);
    }

    private void pass(LogStep step) {
        if (step.code().equals("1")) {
            reversal("2027-03-26T12:30");
        }
        if (step.hold()) {
            Hold hold = Hold.valueOf(step.code());
            hold.parts().forEach(part -> sign(hold, part, nameOf(part)));
            return;
        }
        for (Asked asked : readings.of(step.code())) {
            if (asked.required()) {
                read(step.code(), asked.quantity(), usual(readings, asked));
            }
        }
        done(step.code());
    }

    private static String nameOf(Hold.Part part) {
        return switch (part) {
            case PERSON_IN_CHARGE -> "Tamsin";
            case CUSTOMER -> "Farm manager";
            case ELECTRICIAN -> "Sil";
            case SECOND_PERSON -> "Jory";
            case INSPECTOR -> "Inspector";
        };
    }

    /** What a step asks for, read as usual. */
    static Map<String, String> usual(Readings readings, String step) {
        return readings.of(step).stream()
                .filter(Asked::required)
                .collect(Collectors.toMap(Asked::quantity, asked -> usual(readings, asked)));
    }

    private static String usual(Readings readings, Asked asked) {
        if (asked.isChoice()) {
            return asked.choices().get(0).value();
        }
        return switch (asked.quantity()) {
            case "locks" -> "4";
            case "generator-min" -> "6";
            case "insulation" -> "550";
            case "lugs" -> "8";
            case "torque" -> "275 in·lb, tool 14";
            case "live-before", "live-after" -> "121";
            default ->
                asked.quantity().startsWith("dead-")
                        ? "0"
                        : readings.service()
                                .pair(asked.quantity())
                                .map(pair -> Double.toString(
                                        (pair.limits().aLeastV() + pair.limits().aMostV()) / 2))
                                .orElseThrow();
        };
    }

    LogEntry done(String step) {
        return add(step, EntryKind.DONE, null, null, null, null, null);
    }

    LogEntry read(String step, String quantity, String value) {
        return add(step, EntryKind.READING, quantity, value, null, null, null);
    }

    LogEntry sign(Hold hold, Hold.Part part, String name) {
        return add(hold.name(), EntryKind.SIGNED, null, null, null, null, new LogEntry.Signature(part, name, "trade"));
    }

    LogEntry reversal(String neededBy) {
        return add(
                "1",
                EntryKind.REVERSAL_TIME,
                null,
                ReversalTime.written(new LatestReversal(LocalDateTime.parse(neededBy), 20, 15, 10)),
                "milking",
                null,
                null);
    }

    LogEntry reverse(String step) {
        return add(step, EntryKind.REVERSE, null, null, null, null, null);
    }

    LogEntry powerOn(String step) {
        return add(step, EntryKind.POWER_ON, null, null, null, null, null);
    }

    LogEntry takeBack(LogEntry entry) {
        return add(entry.step(), EntryKind.TAKEN_BACK, null, null, "tapped too early", entry.id(), null);
    }

    LogEntry correct(LogEntry entry, Instant at, @Nullable String value) {
        now = now.plusSeconds(60);
        LogEntry correction = new LogEntry(
                Ids.next(),
                entry.step(),
                EntryKind.CORRECTED,
                null,
                value,
                "by the photo",
                entry.id(),
                null,
                at,
                "page",
                entries.size() + 1,
                now,
                "Tamsin",
                null,
                null);
        entries.add(correction);
        return correction;
    }

    private LogEntry add(
            String step,
            EntryKind kind,
            @Nullable String quantity,
            @Nullable String value,
            @Nullable String reason,
            @Nullable UUID corrects,
            LogEntry.@Nullable Signature signature) {
        now = now.plusSeconds(60);
        LogEntry entry = new LogEntry(
                Ids.next(),
                step,
                kind,
                quantity,
                value,
                reason,
                corrects,
                null,
                now,
                "page",
                entries.size() + 1,
                now,
                "Tamsin",
                signature,
                null);
        entries.add(entry);
        return entry;
    }

    LogState state() {
        return new LogState(steps, entries);
    }

    Readings readings() {
        return readings;
    }

    List<String> against(Hold hold) {
        return new HoldRules(state(), readings).against(hold);
    }
}
