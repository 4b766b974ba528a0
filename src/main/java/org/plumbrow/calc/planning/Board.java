package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.HalfDay;

/** The plan while it is being made: what is placed, who is booked, what cannot hold. */
final class Board {

    final PlanningProblem problem;
    final TimeLine time;
    final Network network;
    final CrewTimeline[] crews;
    final Map<String, Integer> crewNumbers = new HashMap<>();
    final Map<String, EquipmentTimeline> equipment = new HashMap<>();
    final Placement[] placed;
    final boolean[] unplanned;
    final List<Finding> findings = new ArrayList<>();
    /** What nothing free starts before. */
    final Readiness earliest;

    private @Nullable PlanWords words;

    Board(PlanningProblem problem) {
        this.problem = problem;
        time = new TimeLine(problem);
        network = new Network(problem.activities());
        earliest = Readiness.offOrOn(problem.today(), new Bound.Today(), problem, time);
        crews = new CrewTimeline[problem.crews().size()];
        for (int crew = 0; crew < crews.length; crew++) {
            crews[crew] = new CrewTimeline(problem.crews().get(crew), time);
            crewNumbers.put(crews[crew].crew.id(), crew);
        }
        problem.equipment().forEach(kind -> equipment.put(kind.id(), new EquipmentTimeline(kind, time)));
        placed = new Placement[problem.activities().size()];
        unplanned = new boolean[placed.length];
    }

    Activity activity(int number) {
        return network.activities.get(number);
    }

    void place(int number, HalfDay start, HalfDay finish, Bound bound) {
        placed[number] = new Placement(activity(number).id(), start, finish, Optional.empty(), bound);
    }

    /** Books crew and equipment for a run of the crew's present half-days. */
    void book(int number, Spot spot) {
        CrewTimeline crew = crews[spot.crew()];
        crew.book(spot.index(), spot.length(), number);
        for (EquipmentNeed need : activity(number).equipment()) {
            EquipmentTimeline timeline = equipment.get(need.equipmentId());
            if (timeline != null) {
                timeline.book(spot.start(), spot.finish(), need.count(), number);
            }
        }
        placed[number] = new Placement(
                activity(number).id(),
                time.at(spot.start()),
                time.at(spot.finish()),
                Optional.of(crew.crew.id()),
                spot.bound());
    }

    /** Says what is wrong; kinds that leave the activity without a date mark it so. */
    void find(int number, Finding.Kind kind, String sentence) {
        findings.add(new Finding(kind, activity(number).id(), sentence));
        unplanned[number] |= kind.unplanned();
    }

    String name(int number) {
        return words().activity(activity(number).id());
    }

    /** Made when something is found: most plans need none. */
    PlanWords words() {
        if (words == null) {
            words = new PlanWords(problem);
        }
        return words;
    }
}
