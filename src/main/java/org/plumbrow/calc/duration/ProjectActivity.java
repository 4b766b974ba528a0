package org.plumbrow.calc.duration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One activity of a project with its duration. The parts of an activity are done one after the other by one crew, or
 * waited for one after the other.
 *
 * @param key unique in the project and lasting: "racking", "racking-2" for a second array
 * @param words as people call it
 * @param predecessors all of them activities of the same project
 * @param continuityGroup works of one group are done by one crew
 * @param justInTime a wait that is begun as late as its successors allow
 * @param parts at least one
 */
public record ProjectActivity(
        ActivityCode code,
        String key,
        String words,
        List<Follows> predecessors,
        Set<Skill> skills,
        Optional<String> continuityGroup,
        boolean outdoor,
        boolean justInTime,
        List<WorkPart> parts) {

    public ProjectActivity {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("activity " + key + " has no part");
        }
        predecessors = List.copyOf(predecessors);
        skills = Set.copyOf(skills);
        parts = List.copyOf(parts);
    }

    public ActivityCode.Kind kind() {
        return code.kind();
    }

    /** People that the largest of its rows is meant for; 0 for a wait. */
    public int crewSize() {
        return parts.stream().mapToInt(WorkPart::crew).max().orElse(0);
    }

    /** The smallest crew that may do it: half of what its largest row is meant for (common practice, no source). */
    public int leastPeople() {
        return (crewSize() + 1) / 2;
    }

    /** The first of its rows that is counted: what is asked for when somebody reports how much was done. */
    public Optional<WorkPart.Counted> counted() {
        return parts.stream()
                .filter(WorkPart.Counted.class::isInstance)
                .map(WorkPart.Counted.class::cast)
                .findFirst();
    }

    /** Days with each row's own crew; of a wait its days, counted as {@link #dayKind()} says. */
    public Spread days() {
        return parts.stream().map(WorkPart::days).reduce(Spread.ZERO, Spread::plus);
    }

    /** Days with one crew of that many people for all of it. */
    public Spread daysFor(int people) {
        WorkRate.PEOPLE.check("people of the crew", people);
        return parts.stream().map(part -> part.daysFor(people)).reduce(Spread.ZERO, Spread::plus);
    }

    /** Whose days a wait counts; working days for work. */
    public WaitTime.DayKind dayKind() {
        return parts.get(0) instanceof WorkPart.Awaited awaited ? awaited.time().dayKind() : WaitTime.DayKind.WORKING;
    }

    /** Whether it is a wait whose days are the 10, 50 and 90 of 100 of what was measured, and no least, usual and most. */
    public boolean isMeasuredWait() {
        return parts.get(0) instanceof WorkPart.Awaited awaited
                && awaited.time().shape() == WaitTime.Shape.LOG_NORMAL;
    }

    /** Equipment kinds that its rows name, and the largest number of each. */
    public Map<EquipmentKind, Integer> equipment() {
        Map<EquipmentKind, Integer> all = new EnumMap<>(EquipmentKind.class);
        parts.forEach(part -> part.equipment().forEach((kind, count) -> all.merge(kind, count, Math::max)));
        return Map.copyOf(all);
    }

    /** For the crews that the rows are meant for. */
    public Explanation explanation() {
        List<String> steps =
                new ArrayList<>(parts.stream().map(WorkPart::formula).toList());
        steps.add(result(days()));
        return explained(steps);
    }

    /** For one crew of that many people. */
    public Explanation explanationFor(int people) {
        List<String> steps = new ArrayList<>();
        for (WorkPart part : parts) {
            steps.add(part.formula());
            Spread own = part.daysFor(people);
            if (!own.equals(part.days())) {
                steps.add("with %d people instead of %d: %s crew-days".formatted(people, part.crew(), Figures.of(own)));
            }
        }
        steps.add(result(daysFor(people)));
        return explained(steps);
    }

    private String result(Spread days) {
        return kind() == ActivityCode.Kind.WAIT
                ? "%s: %s %s".formatted(words, Figures.of(days), dayKind().words())
                : "%s: %s days, planned as %s"
                        .formatted(words, Figures.of(days), Figures.of(days.halfDaysTypical() / 2.0));
    }

    private Explanation explained(List<String> steps) {
        return new Explanation(
                parts.stream()
                        .map(WorkPart::inputs)
                        .flatMap(List::stream)
                        .distinct()
                        .toList(),
                steps,
                parts.stream().map(WorkPart::source).distinct().collect(Collectors.toList()));
    }
}
