package org.plumbrow.calc.outage.ranking;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.WindowSearch;

/** One of several crews or machines is free for the whole visit: before the outage, during it and after it. */
record UnitsRule(FactorKind kind, List<Unit> units, int planned, String none) implements Rule {

    private static final int BEFORE = WindowSearch.VISIT_BEFORE_MINUTES;
    private static final int AFTER = WindowSearch.VISIT_AFTER_MINUTES;
    private static final int LEAST_PEOPLE = 2;

    /** @param people how many of them are qualified */
    record Unit(CrewOffer offer, int people, Spans busy) {}

    static UnitsRule crews(SiteSpans site, Hands hands, int planned) {
        return new UnitsRule(FactorKind.CREW, units(site, hands), planned, "the branch has none");
    }

    /** Is one of them free that brings two qualified people? */
    static Rule people(SiteSpans site, Hands hands, int planned) {
        List<Unit> enough = units(site, hands).stream()
                .filter(unit -> unit.people >= LEAST_PEOPLE)
                .toList();
        return new People(
                new UnitsRule(FactorKind.PEOPLE, enough, planned, ""),
                new UnitsRule(FactorKind.CREW, units(site, hands), planned, ""));
    }

    static UnitsRule machine(SiteSpans site, Hands.Machine machine, int planned) {
        List<Unit> units = machine.units().stream()
                .map(one -> new Unit(one, 0, site.busy(one)))
                .toList();
        return new UnitsRule(FactorKind.MACHINE, units, planned, machine.kind() + ": the branch has none");
    }

    private static List<Unit> units(SiteSpans site, Hands hands) {
        return hands.crews().stream()
                .map(crew -> new Unit(crew.offer(), crew.qualifiedPeople(), site.busy(crew.offer())))
                .toList();
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

    /** @param any the crews whatever their people: says what is lacking when a crew is free but too small */
    record People(UnitsRule enough, UnitsRule any) implements Rule {
        @Override
        public Factor judge(int start) {
            Optional<Unit> free = enough.freeAt(start).or(() -> any.freeAt(start));
            // Without a free crew the crew's own factor speaks.
            int people = free.map(Unit::people).orElse(enough.units.isEmpty() ? 0 : enough.units.get(0).people);
            return Factor.atLeast(FactorKind.PEOPLE, people, LEAST_PEOPLE, "");
        }

        @Override
        public int keepsUntil(int start) {
            int end = SiteClock.endOfDay(start);
            int at = start;
            while (at < end) {
                boolean enoughFree = enough.freeAt(at).isPresent();
                int until = enoughFree ? enough.keepsUntil(at) : at;
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
    }
}
