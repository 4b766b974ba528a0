package org.plumbrow.cutover;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts.RainDate;
import org.plumbrow.cutover.OutageFacts.Told;

/**
 * One window in which the power is to be off. Each change is a verb that checks, changes and says what happened; what
 * was announced is never overwritten: a move ends this window and begins another.
 */
@Entity
class OutageWindow {

    @Id
    private UUID id;

    @Version
    private long version;

    private UUID branchId;
    private UUID projectId;
    private LocalDate day;
    private LocalTime startTime;
    private int outageMinutes;
    private @Nullable UUID crewId;

    @Enumerated(EnumType.STRING)
    private OutageState state;

    private @Nullable String stateReason;
    private @Nullable LocalDate rainDay;
    private @Nullable LocalTime rainStart;
    private @Nullable Instant utilityToldAt;
    private @Nullable String utilityToldHow;
    private @Nullable String utilityConfirmation;
    private @Nullable Instant utilityConfirmedAt;
    private @Nullable Instant customerToldAt;
    private @Nullable String customerToldHow;
    private @Nullable String customerAnswer;
    private @Nullable String customerAnswerNote;
    private @Nullable Instant customerAnsweredAt;
    private @Nullable String customerAnsweredBy;
    private @Nullable UUID movedTo;
    private @Nullable Instant powerOffAt;
    private @Nullable Instant powerOnAt;
    private Instant madeAt;
    private String madeBy;

    @SuppressWarnings("NullAway")
    protected OutageWindow() {} // for JPA

    private OutageWindow(UUID id, UUID branchId, UUID projectId, Plan plan, String by, Instant at) {
        this.id = id;
        this.branchId = branchId;
        this.projectId = projectId;
        this.day = plan.day();
        this.startTime = plan.start();
        this.outageMinutes = plan.outageMinutes();
        this.crewId = plan.crewId();
        this.rainDay = plan.rainDate() == null ? null : plan.rainDate().day();
        this.rainStart = plan.rainDate() == null ? null : plan.rainDate().start();
        this.state = OutageState.PROPOSED;
        this.madeAt = at;
        this.madeBy = by;
    }

    /** Which hours, with whom, and where they go in bad weather. */
    record Plan(
            LocalDate day,
            LocalTime start,
            int outageMinutes,
            @Nullable UUID crewId,
            @Nullable RainDate rainDate) {}

    static OutageWindow hold(UUID id, UUID branchId, UUID projectId, Plan plan, String by, Instant at) {
        return new OutageWindow(id, branchId, projectId, plan, by, at);
    }

    /** The day is ours: utility and customer are being told. */
    void book() {
        mustBe(state == OutageState.PROPOSED, "book");
        state = OutageState.BOOKED;
    }

    void tellUtility(Told told) {
        mustBe(state.isAnnounced(), "tell the utility of");
        utilityToldAt = told.at();
        utilityToldHow = told.how();
        noticeIsGivenWhenBothAreTold();
    }

    void tellCustomer(Told told) {
        mustBe(state.isAnnounced(), "tell the customer of");
        customerToldAt = told.at();
        customerToldHow = told.how();
        noticeIsGivenWhenBothAreTold();
    }

    private void noticeIsGivenWhenBothAreTold() {
        if (utilityToldAt != null && customerToldAt != null) {
            state = OutageState.NOTICE_GIVEN;
        }
    }

    void utilityConfirms(String number, Instant at) {
        mustBe(state.isAnnounced(), "confirm");
        utilityConfirmation = number;
        utilityConfirmedAt = at;
    }

    /** A later answer takes the place of an earlier one; the journal keeps both. */
    void customerAnswers(boolean agrees, String note, String by, Instant at) {
        mustBe(state.isLive(), "answer");
        customerAnswer = agrees ? "AGREED" : "DOES_NOT_WORK";
        customerAnswerNote = note;
        customerAnsweredBy = by;
        customerAnsweredAt = at;
    }

    void cancel(String reason) {
        mustBe(state.isLive(), "cancel");
        state = OutageState.CANCELLED;
        stateReason = reason;
    }

    /** @return the window that takes its place, in the same state of knowledge as a new one */
    OutageWindow move(UUID newId, Plan to, String reason, String by, Instant at) {
        mustBe(state.isLive(), "move");
        state = OutageState.MOVED;
        stateReason = reason;
        movedTo = newId;
        return new OutageWindow(newId, branchId, projectId, to, by, at);
    }

    private void mustBe(boolean allowed, String verb) {
        if (!allowed) {
            throw new IllegalStateException("cannot " + verb + " a window that is " + state);
        }
    }

    UUID id() {
        return id;
    }

    OutageState state() {
        return state;
    }

    long version() {
        return version;
    }

    OutageFacts facts() {
        return new OutageFacts(
                id,
                branchId,
                projectId,
                day,
                startTime,
                outageMinutes,
                crewId,
                state,
                stateReason,
                rainDay == null || rainStart == null ? null : new RainDate(rainDay, rainStart),
                utilityToldAt == null || utilityToldHow == null ? null : new Told(utilityToldAt, utilityToldHow),
                utilityConfirmation,
                utilityConfirmedAt,
                customerToldAt == null || customerToldHow == null ? null : new Told(customerToldAt, customerToldHow),
                answer(),
                powerOffAt,
                powerOnAt,
                version);
    }

    private OutageFacts.@Nullable Answer answer() {
        if (customerAnswer == null || customerAnsweredAt == null || customerAnsweredBy == null) {
            return null;
        }
        return new OutageFacts.Answer(
                customerAnswer.equals("AGREED"),
                customerAnswerNote == null ? "" : customerAnswerNote,
                customerAnsweredAt,
                customerAnsweredBy);
    }
}
