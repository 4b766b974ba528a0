package org.plumbrow.calc.outage.ranking;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.WindowSearch;

/** One of several crews or machines is free for the whole visit: before the outage, during it and after it. */
record UnitsRule(FactorKind kind, List<Unit> units, int planned, String none) implements Rule {

    private static final int BEFORE = WindowSearch.VISIT_BEFORE_MINUTES;
    private static final int AFTER = WindowSearch.VISIT_AFTER_MINUTES;

    /** @param people how many of them are qualified; empty while nobody has said, and of machines */
    record Unit(CrewOffer offer, OptionalInt people, Spans busy) {}

    static UnitsRule crews(SiteSpans site, Hands hands, int planned) {
        return crews(FactorKind.CREW, site, hands.crews(), planned, "the branch has none");
    }

    /** Is one of them free that brings two qualified people? */
    static Rule people(SiteSpans site, Hands hands, int planned) {
        return new People(
                of(site, hands, planned, Hands.Crew::isEnough),
                of(site, hands, planned, crew -> crew.qualifiedPeople().isEmpty()),
                of(site, hands, planned, crew -> true));
    }

    private static UnitsRule of(SiteSpans site, Hands hands, int planned, Predicate<Hands.Crew> which) {
        return crews(
                FactorKind.PEOPLE, site, hands.crews().stream().filter(which).toList(), planned, "");
    }

    /** The kinds of equipment that the work needs, or that it needs none. */
    static List<Rule> machines(SiteSpans site, Hands hands, int planned) {
        return hands.machines().isEmpty()
                ? List.of(new NoMachine())
                : hands.machines().stream()
                        .<Rule>map(machine -> machine(site, machine, planned))
                        .toList();
    }

    private static UnitsRule machine(SiteSpans site, Hands.Machine machine, int planned) {
        List<Unit> units = machine.units().stream()
                .map(one -> new Unit(one, OptionalInt.empty(), site.busy(one)))
                .toList();
        return new UnitsRule(FactorKind.MACHINE, units, planned, machine.kind() + ": the branch has none");
    }

    private static UnitsRule crews(FactorKind kind, SiteSpans site, List<Hands.Crew> crews, int planned, String none) {
        return new UnitsRule(
                kind,
                crews.stream()
                        .map(crew -> new Unit(crew.offer(), crew.qualifiedPeople(), site.busy(crew.offer())))
                        .toList(),
                planned,
                none);
    }

    private boolean isFree(Unit unit, int start) {
        return unit.busy.overlap(start - BEFORE, start + planned + AFTER) == 0;
    }

    /** The preferred one among the free. */
    Optional<Unit> freeAt(int start) {
        for (Unit unit : units) {
            if (isFree(unit, start)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    @Override
    public Factor judge(int start) {
        Optional<Unit> free = freeAt(start);
        return free.isPresent()
                ? Factor.atLeast(kind, 1, 1, free.get().offer.name())
                : Factor.atLeast(kind, 0, 1, whyNone(start));
    }

    private String whyNone(int start) {
        if (units.isEmpty()) {
            return none;
        }
        Unit first = units.get(0);
        return first.offer.name() + " is elsewhere, " + first.busy.reason(start - BEFORE, start + planned + AFTER);
    }

    @Override
    public int keepsUntil(int start) {
        int end = SiteClock.endOfDay(start);
        int until = start - 1;
        boolean further = true;
        while (further) {
            int before = until;
            for (Unit unit : units) {
                if (isFree(unit, until + 1)) {
                    int next = unit.busy.nextFrom(until + 1 + planned + AFTER);
                    until = Math.max(until, next == SiteClock.NEVER ? end - 1 : next - planned - AFTER);
                }
            }
            further = until > before && until < end - 1;
        }
        return Math.min(until, end - 1);
    }

    /** What the work needs no shared equipment for, no hour lacks. */
    record NoMachine() implements Rule {
        @Override
        public Factor judge(int start) {
            return Factor.atLeast(FactorKind.MACHINE, Double.POSITIVE_INFINITY, 0, "");
        }

        @Override
        public int keepsUntil(int start) {
            return SiteClock.endOfDay(start) - 1;
        }
    }

    /**
     * @param enough the crews with two qualified people
     * @param unsaid those of whom nobody has said how many they have: their hour stays open
     * @param any the crews whatever their people: says what is lacking when a crew is free but too small
     */
    record People(UnitsRule enough, UnitsRule unsaid, UnitsRule any) implements Rule {
        @Override
        public Factor judge(int start) {
            Optional<Unit> two = enough.freeAt(start);
            Optional<Unit> unknown = two.isPresent() ? Optional.empty() : unsaid.freeAt(start);
            if (unknown.isPresent()) {
                return Factor.open(
                        FactorKind.PEOPLE,
                        Hands.LEAST_PEOPLE,
                        unknown.get().offer.name() + ": write on its page how many it has");
            }
            // Without a free crew the crew's own factor speaks.
            int people = two.or(() -> any.freeAt(start))
                    .or(() -> enough.units.stream().findFirst())
                    .map(unit -> unit.people.orElse(0))
                    .orElse(0);
            return Factor.atLeast(FactorKind.PEOPLE, people, Hands.LEAST_PEOPLE, "");
        }

        @Override
        public int keepsUntil(int start) {
            int end = SiteClock.endOfDay(start);
            int at = start;
            while (at < end) {
                int until = Math.max(freeUntil(enough, at), freeUntil(unsaid, at));
                if (until >= end - 1) {
                    return end - 1;
                }
                at = until + 1;
                if (judge(at).isBroken()) {
                    return until;
                }
            }
            return end - 1;
        }

        private static int freeUntil(UnitsRule crews, int at) {
            return crews.freeAt(at).isPresent() ? crews.keepsUntil(at) : at;
        }
    }
}
