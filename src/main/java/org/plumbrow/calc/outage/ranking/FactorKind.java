package org.plumbrow.calc.outage.ranking;

/**
 * Everything about an hour that can be known ahead. In sentences {v} is the value, {l} the limit, {by} what is lacking,
 * each with its unit, {d} the detail; where there is no end of the value, {@code endless} is said.
 * <p>The order is that of reading. {@code step} is what counts as one step of relaxing, so that a working day of notice and
 * half an hour of a slot can be compared: a house rule. Where the limit protects people or animals, or the law of milk, it
 * is no limit that anybody may relax: the cure then changes the circumstance.
 */
public enum FactorKind {
    NOTICE(
            "notice to the utility",
            "working days",
            1,
            "{v} full working days of notice if it leaves today, {l} needed.",
            "{v} full working days of notice if it leaves today, {l} needed.",
            "Ask the utility to do with {by} working days less of notice."),
    UTILITY_DAY(
            "utility works",
            "min",
            1440,
            "The utility works that day.",
            "The utility does not work: {d}.",
            "Ask the utility for an appointment in spite of {d}."),
    SLOT(
            "utility's slot",
            "min",
            30,
            "{v} are left in the utility's slot after the planned end.",
            "It does not fit the utility's slot by {by}.",
            "Ask the utility for {by} more than its slot."),
    BRANCH_DAY(
            "branch works",
            "min",
            1440,
            "The branch works that day.",
            "The branch does not work: {d}.",
            "Let the crew work in spite of {d}."),
    WORK_DONE(
            "work before the outage",
            "days",
            1,
            "The work before the outage is done by then.",
            "Not done by then: {d}.",
            "Have done {by} days earlier: {d}."),
    PERMIT(
            "permit and inspection",
            "days",
            1,
            "No permit that is written down ends before that day, and no inspection of the service side asks for a correction.",
            "{d}.",
            "Put it right before that day: {d}."),
    CREW(
            "crew",
            "crews",
            1,
            "{d} is free.",
            "No crew with an electrician is free: {d}.",
            "Free a crew with an electrician: {d}."),
    PEOPLE(
            true,
            "qualified people",
            "people",
            1,
            "{v} qualified people, {l} needed: nobody works alone.",
            "{v} qualified people, {l} needed: nobody works alone.",
            "The limit stays: add {by} qualified people to the crew."),
    MACHINE("equipment", "units", 1, "Free: {d}.", "Not free: {d}.", "Free or rent: {d}."),
    DAYLIGHT(
            true,
            "daylight",
            "min",
            30,
            "{v} of daylight are left.",
            "{by} of it lie in the dark.",
            "The limit stays: plan {by} less, or a day with more light."),
    BLACKOUT(
            "customer's blackout times",
            "min",
            30,
            "The customer does not need the power then.",
            "The customer needs the power: {d}.",
            "Ask the customer to do without power for {by}: {d}."),
    BUSINESS_HOURS(
            "school or business hours",
            "min",
            30,
            "Outside school or business hours.",
            "{v} lie in {d}.",
            "Ask the customer to do without power for {by} of {d}."),
    CUSTOMER_THERE(
            "customer present",
            "min",
            30,
            "The customer or farm manager is there.",
            "The customer is not there for {by} of it.",
            "Ask the customer to be there {by} longer."),
    FLOCK(
            true,
            "catch or placement",
            "min",
            60,
            "No catch or placement is within a day after it.",
            "Within 24 h before {d}: {v} between the planned end and it.",
            "The limit stays: move {d} by {by}."),
    FEEDING(
            "feeding",
            "min",
            15,
            "No feeding in the window.",
            "{v} of it fall into {d}.",
            "Ask the customer to move {d} by {by}."),
    HEAT_STRESS(
            true,
            "heat stress",
            "THI",
            1,
            "Temperature-humidity index {v} outdoors, below {l}.",
            "Temperature-humidity index {v} outdoors, {l} and above is stress.",
            "The limit stays: wait for an hour that is {by} lower."),
    AFTER_MILKING(
            true,
            "after milking",
            "min",
            15,
            "{v} after milking, {l} needed.",
            "{v} after milking, {l} needed.",
            "The limit stays: ask the customer to milk {by} earlier."),
    BEFORE_MILKING(
            true,
            "before milking",
            "min",
            15,
            "{v} before milking, {l} needed.",
            "{v} before milking, {l} needed.",
            "The limit stays: ask the customer to milk {by} later."),
    TANK(
            true,
            "milk in the tank",
            "degC",
            0.5,
            "The tank is at {v} by then, {l} at most.",
            "The tank is still at {v}, {l} at most.",
            "The limit stays: let the tank cool {by} more before."),
    RIDE_THROUGH(
            true,
            "ride-through",
            "min",
            30,
            "{d}: {v} at the short end, {l} needed: twice the outage.",
            "{d}: only {v} at the short end, {l} needed: twice the outage.",
            "The limit stays: {d} lacks {by}; plan fewer minutes or bring a generator that is proven."),
    GENERATOR_FIT(
            true,
            "generator carries the load",
            "points",
            1,
            "The generator meets what is asked of it.",
            "The generator does not meet: {d}.",
            "The limit stays: bring a generator that meets {d}."),
    GENERATOR_FUEL(
            true,
            "generator's fuel",
            "min",
            60,
            "Fuel for {v}, {l} needed: three times the outage.",
            "Fuel for {v}, {l} needed: three times the outage.",
            "The limit stays: fill up for {by} more."),
    GENERATOR_RUN(
            true,
            "generator's last run",
            "days",
            1,
            "Days since its last run under the farm's load: {v}, {l} at most.",
            "Days since its last run under the farm's load: {v}, {l} at most.",
            "The limit stays: run it under the farm's load in the last {l} days."),
    REVERSAL(
            true,
            "latest reversal",
            "min",
            15,
            "{v} from the start to the latest minute to reverse.",
            "The latest minute to reverse lies {by} before the start ({d}).",
            "The limit stays: {by} more are needed until {d}."),
    WIND(
            "wind",
            "m/s",
            1,
            "Wind is within its limit: {v}, {l} at most.",
            "Wind: {v}, {l} at most.",
            "Wait for {by} less wind."),
    RAIN(
            "rain or snow",
            "% chance",
            10,
            "Rain or snow: {v}, {l} at most.",
            "Rain or snow: {v}, {l} at most at open gear.",
            "Wait for {by} less."),
    LIGHTNING(
            true,
            "lightning",
            "% chance",
            5,
            "Lightning: {v}, {l} at most.",
            "Lightning: {v}, {l} at most.",
            "The limit stays: wait for {by} less."),
    COLD("cold", "degC", 2, "Cold: {v}, limit {l}.", "Cold: {v}, limit {l}.", "Wait for {by} less cold."),
    MEDICAL(
            true,
            "medical equipment",
            "",
            1,
            "What happens with the medical equipment is agreed with the customer.",
            "Somebody may depend on electrical equipment: talk to the customer before anything is booked.",
            "Agree with the customer."),
    PROMISE(
            "promise",
            "days",
            1,
            "It keeps the promise.",
            "{d} slips; working days late: {v}.",
            "Move the promise; working days: {by}.");

    private final boolean protects;
    private final String words;
    private final String unit;
    private final double step;
    private final String met;
    private final String broken;
    private final String cure;

    FactorKind(String words, String unit, double step, String met, String broken, String cure) {
        this(false, words, unit, step, met, broken, cure);
    }

    FactorKind(boolean protects, String words, String unit, double step, String met, String broken, String cure) {
        this.protects = protects;
        this.words = words;
        this.unit = unit;
        this.step = step;
        this.met = met;
        this.broken = broken;
        this.cure = cure;
    }

    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }

    /** Does the limit protect people, animals or milk? Then nobody relaxes it; the circumstance has to change. */
    public boolean protectsLife() {
        return protects;
    }

    double step() {
        return step;
    }

    String sentence(Factor factor) {
        boolean within = factor.verdict() == Verdict.MET || factor.isWithin();
        return filled(Double.isInfinite(factor.value()) ? endless() : within ? met : broken, factor);
    }

    /** What is said instead where there is no end of the value. */
    private String endless() {
        return switch (this) {
            case RIDE_THROUGH -> "Nothing that is written down for the site reaches a limit in such an hour.";
            case MACHINE -> "The work needs no shared equipment.";
            case GENERATOR_RUN -> "No run under the farm's load is written down; {l} days before the outage at most.";
            default -> met;
        };
    }

    String cure(Factor factor) {
        return filled(cure, factor);
    }

    private static String filled(String template, Factor factor) {
        return template.replace("{v}", FactorWords.level(factor.value(), factor.unit()))
                .replace("{l}", FactorWords.limit(factor.limit(), factor.unit()))
                .replace("{by}", FactorWords.difference(factor.lacks(), factor.unit()))
                .replace("{d}", factor.detail());
    }
}
