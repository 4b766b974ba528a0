package org.plumbrow.estimate.place;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectFacts;

/**
 * Where an array is to stand, as it was decided with the customer.
 *
 * @param version -1 while nothing was ever written
 * @param decidedBy of the firm @param decidedWith at the customer's side; both empty while nothing is decided
 * @param reason why; while nothing is decided, what is still open
 */
public record Placement(
        long version,
        Choice choice,
        String decidedBy,
        String decidedWith,
        @Nullable LocalDate decidedOn,
        String reason) {

    static final Placement NOTHING = new Placement(-1, Choice.NOT_YET, "", "", null, "");

    /** The names are stored. */
    public enum Choice {
        ROOF("the roof"),
        GROUND("the ground"),
        BOTH("roof and ground"),
        NOT_YET("not yet");

        private final String words;

        Choice(String words) {
            this.words = words;
        }

        /** As the sentence's object. */
        public String words() {
            return words;
        }

        boolean takesRoof() {
            return this == ROOF || this == BOTH;
        }

        boolean takesGround() {
            return this == GROUND || this == BOTH;
        }
    }

    public boolean isWritten() {
        return version >= 0;
    }

    public boolean isDecided() {
        return choice != Choice.NOT_YET;
    }

    /** Whether the contract mounts its arrays elsewhere; never while nothing is decided, or without an array. */
    boolean isAgainst(ProjectFacts.Contract contract) {
        boolean ground = contract.has(Mounting.GROUND);
        boolean roof = contract.has(Mounting.FLAT_ROOF) || contract.has(Mounting.PITCHED_ROOF);
        return isDecided() && (ground || roof) && (choice.takesGround() != ground || choice.takesRoof() != roof);
    }
}
