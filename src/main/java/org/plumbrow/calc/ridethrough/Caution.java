package org.plumbrow.calc.ridethrough;

/** What a reader must be told beside a figure. A page shows the sentence where the figure is read. */
public enum Caution {
    PLANNING_AID("Planning aid: an estimate from the inputs shown, not a promise."),
    ANIMALS("Estimate; you and your veterinarian or field person decide. Watch the animals, not the screen, and have"
            + " ventilation that opens without power."),
    AIR_MASS("How much of the house warms with its air is the weak point of this figure: look at both ends, plan with"
            + " half."),
    GUESSED("Uncertain: some inputs are guessed. Ask for them before you rely on the figure."),
    CURTAINS("Holds only while the curtains or vents really open without power: try them before."),
    MILK("Follow your inspector's and buyer's temperature rules; record the tank's temperature before and after."),
    DOORS("Holds only while the doors stay shut."),
    MEDICAL(
            "Somebody may depend on electrical equipment here: no time is given. Agree on a battery or another place with"
                    + " the customer before the date."),
    GENERATOR("A generator feeds only through a transfer switch: otherwise line workers can be killed by back-feed."
            + " Exhaust outdoors, away from intakes."),
    GENERATOR_MAY_FAIL("A generator may stop: know what happens then, minute by minute."),
    RESTART("Warn everybody before the power returns; large motors may start by themselves.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
