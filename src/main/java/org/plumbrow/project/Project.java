package org.plumbrow.project;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The project itself: what it is called, what it has reached, whether it is worked on, how much its lateness counts. */
@Entity
class Project {

    @Id
    private UUID id;

    @Version
    private long version;

    private UUID branchId;
    private String number;
    private int numberYear;
    private int runningNumber;
    private String name;

    @Enumerated(EnumType.STRING)
    private @Nullable Stage stage;

    @Enumerated(EnumType.STRING)
    private Standing standing;

    private @Nullable String standingReason;
    private @Nullable String standingBy;
    private Instant standingSince;
    private @Nullable LocalDate standingUntil;
    private int weight;
    private @Nullable String weightReason;
    private @Nullable String reference;
    private Instant createdAt;
    private String createdBy;

    @SuppressWarnings("NullAway")
    protected Project() {} // for JPA

    Project(
            UUID id,
            UUID branchId,
            ProjectNumber number,
            String name,
            @Nullable String reference,
            String by,
            Instant at) {
        this.id = id;
        this.branchId = branchId;
        this.number = number.written();
        this.numberYear = number.year();
        this.runningNumber = number.running();
        this.name = name;
        this.reference = reference;
        this.standing = Standing.OPEN;
        this.standingSince = at;
        this.weight = 1;
        this.createdAt = at;
        this.createdBy = by;
    }

    /** @return the name before */
    String rename(String to) {
        String from = name;
        name = to;
        return from;
    }

    /** The gate to the next stage has been passed. @throws IllegalArgumentException for another stage than the next: a caller's bug */
    void reach(Stage next) {
        if (!next.isNextAfter(stage)) {
            throw new IllegalArgumentException("gate to " + next + " does not follow " + stage);
        }
        stage = next;
    }

    /** Brought in from before Plumbrow with what it had reached. @throws IllegalStateException if it has a stage already */
    void arriveAt(Stage reached) {
        if (stage != null) {
            throw new IllegalStateException("project " + id + " has reached " + stage + " here already");
        }
        stage = reached;
    }

    /** @param to an earlier stage; null for new. @throws IllegalArgumentException if it is not earlier: a caller's bug */
    void goBackTo(@Nullable Stage to) {
        if (Stage.orderOf(to) >= Stage.orderOf(stage)) {
            throw new IllegalArgumentException(to + " is not before " + stage);
        }
        stage = to;
    }

    void hold(String reason, @Nullable LocalDate until, String by, Instant at) {
        stand(Standing.ON_HOLD, reason, until, by, at);
    }

    void callOff(String reason, String by, Instant at) {
        stand(Standing.CALLED_OFF, reason, null, by, at);
    }

    void resume(String reason, String by, Instant at) {
        stand(Standing.OPEN, reason, null, by, at);
    }

    private void stand(Standing to, String reason, @Nullable LocalDate until, String by, Instant at) {
        standing = to;
        standingReason = reason;
        standingUntil = until;
        standingBy = by;
        standingSince = at;
    }

    /** @param reason why a late day counts more here; null for weight 1 */
    void weigh(int to, @Nullable String reason) {
        weight = to;
        weightReason = to == 1 ? null : reason;
    }

    UUID id() {
        return id;
    }

    long version() {
        return version;
    }

    UUID branchId() {
        return branchId;
    }

    String number() {
        return number;
    }

    int numberYear() {
        return numberYear;
    }

    int runningNumber() {
        return runningNumber;
    }

    String name() {
        return name;
    }

    @Nullable
    Stage stage() {
        return stage;
    }

    Standing standing() {
        return standing;
    }

    @Nullable
    String standingReason() {
        return standingReason;
    }

    @Nullable
    String standingBy() {
        return standingBy;
    }

    Instant standingSince() {
        return standingSince;
    }

    @Nullable
    LocalDate standingUntil() {
        return standingUntil;
    }

    int weight() {
        return weight;
    }

    @Nullable
    String weightReason() {
        return weightReason;
    }

    Instant createdAt() {
        return createdAt;
    }
}
