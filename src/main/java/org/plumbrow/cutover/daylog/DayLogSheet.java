package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.project.ProjectFacts;

/**
 * Everything on the page of a day log.
 *
 * @param clock null before the power goes off or a reversal time is set
 * @param later what comes after now, so that a phone can go on without signal
 * @param reversedAt when the reversal that stands was begun
 * @param reversedBecause why the work was reversed; empty when it was not, or before somebody has said why
 * @param back what is read on the way back; null where nothing can be reversed
 * @param toOpen the steps of each kind of service, before the log is open
 * @param people who is on site and who signed: what a phone goes by without signal
 * @param now the step at which one stands; null when all is done or the work is being reversed
 */
record DayLogSheet(
        About about,
        Stand stand,
        @Nullable ClockView clock,
        @Nullable NowView now,
        @Nullable LogStep nextHold,
        List<StepView> steps,
        @Nullable ReversalView reversal,
        @Nullable Instant reversedAt,
        String reversedBecause,
        List<String> warnings,
        List<LaterView> later,
        @Nullable BackView back,
        List<ToOpenView> toOpen,
        PeopleOnSite people) {

    /**
     * Which day of which project.
     *
     * @param window of the log, or the one whose log is to be opened; null without any
     * @param log null before it is opened
     * @param later whether it is written up on a later day, so that every time has to be typed
     * @param leave address of the page that one came from
     * @param others the logs of other days here, newest first
     * @param way by the design revision in force; null while none is frozen
     */
    record About(
            ProjectFacts project,
            @Nullable OutageFacts window,
            @Nullable DayLog log,
            boolean later,
            String leave,
            List<PastLog> others,
            @Nullable CutoverWay way) {}

    /** How far the day is. */
    enum Stand {
        NO_WINDOW,
        NOT_YET,
        TO_OPEN,
        RUNNING,
        REVERSING,
        REVERSED,
        COMPLETE,
        CLOSED,
        /** Moved or cancelled before the power went off. */
        GIVEN_UP
    }

    /** Whether there is something to reverse right now. */
    public boolean mayReverse() {
        return stand == Stand.RUNNING && clock != null && clock.offAt() != null && clock.onAt() == null;
    }

    /** Whether a button waits under the thumb. */
    public boolean open() {
        return stand == Stand.RUNNING || stand == Stand.REVERSING || stand == Stand.REVERSED || stand == Stand.COMPLETE;
    }

    /** Whether a phone keeps what is tapped here: on the day itself. */
    public boolean keptOnPhone() {
        return (open() || stand == Stand.TO_OPEN) && !about.later();
    }

    /** The log of another day: reversed, or given up. */
    record PastLog(UUID windowId, LocalDate day, DayLog.@Nullable Outcome outcome) {}

    /**
     * The running outage.
     *
     * @param minutes so far, or in all when it is over
     * @param gone share of the way to the decision that has passed, percent
     * @param planned where the planned end lies on that way, percent
     */
    record ClockView(
            @Nullable Instant offAt,
            @Nullable Instant onAt,
            @Nullable Instant decideBy,
            Instant now,
            @Nullable Integer minutes,
            @Nullable Long minutesLeft,
            int gone,
            int planned) {}

    /**
     * The latest reversal, opened to its parts.
     *
     * @param times how often it was set
     */
    record ReversalView(ReversalTime time, Instant decideBy, Instant neededBy, long times) {}

    /** How often the latest reversal was set: what a page that sets it anew has seen. */
    public long reversalTimes() {
        return reversal == null ? 0 : reversal.times();
    }

    /**
     * The step or hold point at which one stands.
     *
     * @param plannedAt when it should be done by the window's own minutes
     * @param against what keeps a hold point shut
     * @param signs who signs next; null at a step and at a shut hold point
     * @param basis what whoever signs relies on, in words
     */
    record NowView(
            LogStep step,
            Instant plannedAt,
            List<FieldView> fields,
            List<String> against,
            Hold.@Nullable Part signs,
            List<String> basis,
            int photos) {}

    /**
     * A step or hold point that comes after now.
     *
     * @param asked what is read there
     * @param parts who signs; of the hold point at which one stands, whoever comes after the next
     */
    record LaterView(LogStep step, List<Asked> asked, List<Hold.Part> parts) {}

    /** What is to come if the service is of this kind. */
    record ToOpenView(String service, List<LaterView> later, BackView back) {}

    /**
     * What is read on the way back, before any load returns.
     *
     * @param against what keeps the loads off; empty before the reversal is begun, too
     * @param right whether all was read and is as it has to be
     * @param basis what the log says, once it is right
     */
    record BackView(List<BackField> fields, List<String> against, boolean right, List<String> basis) {
        /** Before anybody has reversed: for a phone that does so without signal. */
        static BackView blank(LogState state, Readings readings) {
            ReversalReadings way = new ReversalReadings(state, readings);
            return new BackView(
                    readings.of(Procedure.UTILITY_CLOSES).stream()
                            .map(asked ->
                                    new BackField(new FieldView(asked, "", "", "", "", false, ""), way.limits(asked)))
                            .toList(),
                    List.of(),
                    false,
                    List.of());
        }
    }

    /** @param limits what a phone without signal holds it against */
    record BackField(FieldView view, ReversalReadings.Limits limits) {}

    /**
     * A reading as the form shows it.
     *
     * @param value typed, or as it stands in the log; empty before it is read
     * @param seen as it stands in the log
     * @param wrong what is wrong with what was typed; empty when nothing is
     * @param ask what to do about a value outside its limits; empty inside
     * @param explain whether it may stay with a reason
     * @param why why it stays, as typed or as it stands in the log
     */
    record FieldView(Asked asked, String value, String seen, String wrong, String ask, boolean explain, String why) {
        /** For {@code id} and {@code for}. */
        public String id() {
            return "r-" + asked.quantity();
        }
    }

    /**
     * A line of the list of all steps.
     *
     * @param entries what was done, signed, seen
     * @param readings every reading of the step
     * @param read what counts of them, in a few words
     * @param twice whether two people wrote the same thing
     */
    record StepView(
            LogStep step,
            String shape,
            boolean here,
            Instant plannedAt,
            List<EntryView> entries,
            List<EntryView> readings,
            List<String> read,
            boolean twice) {

        public boolean untouched() {
            return entries.isEmpty() && readings.isEmpty();
        }
    }

    /**
     * An entry in the list.
     *
     * @param text what it says
     * @param who who did or signed it
     * @param by who wrote it down
     * @param value as it stands, for the form that corrects it
     * @param was what stood there before it was corrected; empty without a correction
     * @param reason of the correction, of taking back, of a reversal time; may be empty
     * @param stays why a value outside its limits stays; empty inside
     * @param changes how often it was changed: what a page that changes it has seen
     * @param phoneSaid the time by the phone's clock; null unless that clock was wrong by a minute or more
     * @param phoneWrong by how many minutes
     */
    record EntryView(
            UUID id,
            EntryKind kind,
            String text,
            Instant at,
            String who,
            String by,
            String value,
            String was,
            String reason,
            String stays,
            boolean takenBack,
            boolean changeable,
            long changes,
            @Nullable UUID evidenceId,
            @Nullable Instant phoneSaid,
            long phoneWrong) {

        public boolean byAnother() {
            return !who.equals(by) && !who.startsWith(by + ",");
        }
    }
}
