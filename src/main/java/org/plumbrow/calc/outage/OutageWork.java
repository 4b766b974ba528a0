package org.plumbrow.calc.outage;

/**
 * What will be done while the power is off, as far as it decides the minutes.
 *
 * @param supplySideTap the new conductors join the service ahead of the main; else they land on a breaker or on lugs
 * @param newTransformer the utility hangs or sets another transformer in the same outage
 * @param currentTransformers the service is metered through current transformers in a cabinet
 * @param meters how many meters are opened, 1 to 12
 * @param oldGear corroded, cramped or no longer made
 */
public record OutageWork(
        boolean supplySideTap,
        boolean mainPanel,
        boolean meterBase,
        boolean newTransformer,
        boolean currentTransformers,
        int meters,
        boolean generator,
        boolean threePhase,
        boolean oldGear) {

    public static final int MOST_METERS = 12;

    public OutageWork {
        if (meters < 1 || meters > MOST_METERS) {
            throw new IllegalArgumentException("meters: " + meters + " is outside 1 to " + MOST_METERS);
        }
    }

    /** A plain tap ahead of the main: the frequent case. */
    public static OutageWork tapOnly() {
        return new OutageWork(true, false, false, false, false, 1, false, false, false);
    }
}
