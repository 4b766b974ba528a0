package org.plumbrow.calc.duration;

/**
 * Which of the possible waits a project has.
 *
 * @param structuralLetter a stamped letter is needed before the permit
 * @param groundTest a pull or geotechnical test is needed before the permit
 * @param largeGear a switchboard above 800 A or a transformer has to be ordered
 */
public record WaitChoices(
        Permit permit,
        boolean zoning,
        Interconnection interconnection,
        boolean structuralLetter,
        boolean groundTest,
        boolean largeGear) {

    /** How the permit office answers. */
    public enum Permit {
        OVER_THE_COUNTER("permit-counter"),
        PLAN_REVIEW("permit-review");

        private final String row;

        Permit(String row) {
            this.row = row;
        }

        String row() {
            return row;
        }
    }

    /** How the utility answers. */
    public enum Interconnection {
        SMALL_INVERTER,
        FAST_TRACK,
        STUDY
    }

    /** A home up to 10 kW takes the small inverter process, up to 2 MW the fast track, above that a study. */
    private static final double SMALL_KW = 10;

    private static final double FAST_KW = 2_000;

    /** The usual waits where nothing better is known (common practice, no source; the kW limits are states' rules). */
    public static WaitChoices usual(boolean home, double kwAc, boolean onGround) {
        Interconnection level = kwAc <= SMALL_KW
                ? Interconnection.SMALL_INVERTER
                : kwAc <= FAST_KW ? Interconnection.FAST_TRACK : Interconnection.STUDY;
        return new WaitChoices(
                home ? Permit.OVER_THE_COUNTER : Permit.PLAN_REVIEW, false, level, !home, !home && onGround, false);
    }
}
