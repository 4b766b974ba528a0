package org.plumbrow.calc.duration;

import java.util.List;
import java.util.Map;

/** One row of the branch's tables inside an activity. */
public sealed interface WorkPart {

    String words();

    /** Days with the row's own crew, or of waiting. */
    Spread days();

    /** Days with a crew of that many people. */
    Spread daysFor(int people);

    /** People the row is meant for; 0 for a wait. */
    int crew();

    List<Explanation.Input> inputs();

    /** The computation for the row's own crew. */
    String formula();

    String source();

    Map<EquipmentKind, Integer> equipment();

    /** So much of something at a rate a day. */
    record Counted(WorkRate rate, Quantity quantity, boolean home) implements WorkPart {

        /** Of the whole activity, in the rate's units. */
        public double amount() {
            return quantity.amount();
        }

        @Override
        public String words() {
            return rate.words();
        }

        @Override
        public Spread days() {
            return rate.crewDays(quantity.amount());
        }

        @Override
        public Spread daysFor(int people) {
            return days().times(rate.factorFor(people, home));
        }

        @Override
        public int crew() {
            return rate.crew(home);
        }

        @Override
        public List<Explanation.Input> inputs() {
            return List.of(
                    new Explanation.Input(
                            quantity.kind().words(),
                            quantity.amount(),
                            quantity.kind().unit(),
                            quantity.estimated(),
                            quantity.origin()),
                    new Explanation.Input(
                            "rate of " + rate.words(),
                            rate.typical(),
                            rate.unit() + " a day",
                            false,
                            "%s, %s to %s, crew of %d"
                                    .formatted(
                                            rate.isLearned() ? "learned" : "this branch's table",
                                            Figures.of(rate.low()),
                                            Figures.of(rate.high()),
                                            crew())));
        }

        @Override
        public String formula() {
            String setUp = rate.firstUnitDays() == 0 ? "" : Figures.of(rate.firstUnitDays()) + " to set up + ";
            return "%s: %s%s %s ÷ %s a day = %s crew-days"
                    .formatted(
                            rate.words(),
                            setUp,
                            Figures.of(quantity.amount()),
                            rate.unit(),
                            Figures.of(rate.typical()),
                            Figures.of(days()));
        }

        @Override
        public String source() {
            return rate.words() + ": " + rate.sourceWords();
        }

        @Override
        public Map<EquipmentKind, Integer> equipment() {
            return rate.equipment();
        }
    }

    /** A time that does not depend on any quantity or on the size of the crew. */
    record Fixed(FixedTime time) implements WorkPart {

        @Override
        public String words() {
            return time.words();
        }

        @Override
        public Spread days() {
            return time.days();
        }

        @Override
        public Spread daysFor(int people) {
            return time.days();
        }

        @Override
        public int crew() {
            return time.people();
        }

        @Override
        public List<Explanation.Input> inputs() {
            return List.of(new Explanation.Input(
                    time.words(), time.days().typical(), "days", false, "this branch's table, whatever the size"));
        }

        @Override
        public String formula() {
            return "%s: %s days".formatted(time.words(), Figures.of(time.days()));
        }

        @Override
        public String source() {
            return time.words() + ": common practice, no source";
        }

        @Override
        public Map<EquipmentKind, Integer> equipment() {
            return Map.of();
        }
    }

    /** Somebody else's time. */
    record Awaited(WaitTime time) implements WorkPart {

        @Override
        public String words() {
            return time.words();
        }

        @Override
        public Spread days() {
            return time.days();
        }

        @Override
        public Spread daysFor(int people) {
            return time.days();
        }

        @Override
        public int crew() {
            return 0;
        }

        @Override
        public List<Explanation.Input> inputs() {
            return List.of(new Explanation.Input(
                    time.words(), time.days().typical(), time.dayKind().words(), false, "this branch's table"));
        }

        @Override
        public String formula() {
            return "%s: %s %s"
                    .formatted(
                            time.words(),
                            Figures.of(time.days()),
                            time.dayKind().words());
        }

        @Override
        public String source() {
            return time.words() + ": " + time.sourceWords();
        }

        @Override
        public Map<EquipmentKind, Integer> equipment() {
            return Map.of();
        }
    }
}
