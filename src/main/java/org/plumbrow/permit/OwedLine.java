package org.plumbrow.permit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.leadtime.LeadTimeLearning;
import org.plumbrow.calc.leadtime.LearnedLeadTime;

/**
 * A wait as pages show it.
 *
 * @param number of its project @param project its name
 * @param askedAgain whether the same question was asked later
 * @param even day of an even chance @param eighty day by which four of five come; null while not asked for
 */
record OwedLine(
        Awaited awaited,
        String number,
        String project,
        boolean askedAgain,
        LearnedLeadTime time,
        @Nullable LocalDate even,
        @Nullable LocalDate eighty,
        LocalDate today) {

    UUID projectId() {
        return awaited.projectId();
    }

    public boolean overdue() {
        return awaited.isOverdue(today);
    }

    /** Longer than four of five take, and nobody promised a day. */
    public boolean longer() {
        return awaited.isOpen()
                && !overdue()
                && awaited.promisedOn() == null
                && eighty != null
                && today.isAfter(eighty);
    }

    public boolean expired() {
        return !awaited.isOpen() && awaited.hasExpired(today);
    }

    /**
     * Whether it is asked for once more with one tap: it came and is no good, or is a ticket that ends, and nobody has asked
     * since.
     */
    public boolean mayBeAskedAgain() {
        return !awaited.isOpen() && !askedAgain && (!awaited.isGood() || awaited.kind() == AwaitedKind.LOCATE);
    }

    /** The key of the sentence that is the answer: what is owed, by whom, how many days over. */
    public String answer() {
        if (overdue()) {
            return "permit.one.overdue";
        }
        if (awaited.isOpen()) {
            return awaited.sentOn() == null ? "permit.one.unsent" : "permit.one.waits";
        }
        if (expired()) {
            return "permit.one.expired";
        }
        return awaited.isGood() ? "permit.one.came" : "permit.one.again";
    }

    /** The key of the sentence that says what the plan goes by. */
    public String goesBy() {
        if (awaited.kind().activity().isEmpty()) {
            return "permit.used.none";
        }
        if (!awaited.isOpen()) {
            return awaited.isGood() ? "permit.used.came" : "permit.used.again";
        }
        if (awaited.promisedOn() != null) {
            return today.isAfter(awaited.promisedOn()) ? "permit.used.passed" : "permit.used.promised";
        }
        if (awaited.sentOn() == null) {
            return "permit.used.unsent";
        }
        return time.isLearned() ? "permit.used.learned" : "permit.used.table";
    }

    /** What is believed before any answer, as the learning takes it. */
    public LearnedLeadTime prior() {
        return LeadTimeLearning.of(time.table(), List.of());
    }

    public boolean measured() {
        return time.table().shape() == WaitTime.Shape.LOG_NORMAL;
    }

    public long percentOfTable() {
        return Math.round(100 * time.shareOfTable());
    }

    public long daysLate() {
        return awaited.shouldComeOn()
                .map(day -> ChronoUnit.DAYS.between(day, today))
                .orElse(0L);
    }

    /** Of the state marks of pages. */
    public String shape() {
        if (overdue()
                || expired()
                || (awaited.result() != null && !awaited.result().isGood())) {
            return "trouble";
        }
        if (longer()) {
            return "risk";
        }
        return awaited.isOpen() ? "wait" : "done";
    }
}
