package org.plumbrow.calc.outage.ranking;

import java.util.List;
import java.util.OptionalInt;
import org.plumbrow.calc.outage.CrewOffer;

/**
 * Who and what is needed.
 *
 * @param crews those with a licensed electrician, the preferred one first
 * @param machines each kind of shared equipment that the work needs; none where it needs none
 */
public record Hands(List<Crew> crews, List<Machine> machines) {

    /** An electrician and a second qualified person. */
    public static final int LEAST_PEOPLE = 2;

    public Hands {
        crews = List.copyOf(crews);
        machines = List.copyOf(machines);
    }

    /**
     * @param qualifiedPeople electricians and others who may work on the open gear, of whom two at least are needed; empty
     *     while nobody has said how many they are
     */
    public record Crew(CrewOffer offer, OptionalInt qualifiedPeople) {
        public Crew(CrewOffer offer, int qualifiedPeople) {
            this(offer, OptionalInt.of(qualifiedPeople));
        }

        /** Does it bring the two that are needed? */
        public boolean isEnough() {
            return qualifiedPeople.orElse(0) >= LEAST_PEOPLE;
        }
    }

    /** A kind of equipment that the day needs, with every unit that the branch has of it. */
    public record Machine(String kind, List<CrewOffer> units) {
        public Machine {
            units = List.copyOf(units);
        }
    }
}
