package org.plumbrow.calc.duration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The activities of a project while they are put together. A predecessor that the project does not have (no digging, so
 * no locate) is left out at the end, so a recipe may name whatever could come first.
 */
final class Recipe {

    final ProjectWork work;
    final Quantities quantities;
    private final DurationTables tables;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();

    Recipe(ProjectWork work, DurationTables tables) {
        this.work = work;
        this.tables = tables;
        quantities = new Quantities(work);
    }

    /** An activity being written. */
    final class Draft {
        private final ActivityCode code;
        private final String key;
        private String words;
        private final List<Follows> follows = new ArrayList<>();
        private final Set<Skill> skills = EnumSet.noneOf(Skill.class);
        private Optional<String> group = Optional.empty();
        private boolean outdoor;
        private boolean justInTime;
        private final List<WorkPart> parts = new ArrayList<>();

        private Draft(ActivityCode code, String key) {
            this.code = code;
            this.key = key;
            words = code.words();
        }

        Draft called(String other) {
            words = other;
            return this;
        }

        Draft after(ActivityCode... first) {
            for (ActivityCode each : first) {
                after(each.key(), 0);
            }
            return this;
        }

        Draft after(List<String> keys) {
            keys.forEach(first -> after(first, 0));
            return this;
        }

        Draft after(String first, int lagCalendarDays) {
            follows.add(new Follows(first, lagCalendarDays));
            return this;
        }

        Draft needs(Skill... more) {
            skills.addAll(List.of(more));
            return this;
        }

        Draft inGroup(String name) {
            group = Optional.of(name);
            return this;
        }

        Draft outdoors() {
            outdoor = true;
            return this;
        }

        Draft justInTime() {
            justInTime = true;
            return this;
        }

        Draft rate(String row, Quantity quantity) {
            if (quantity.amount() > 0) {
                parts.add(new WorkPart.Counted(tables.rate(row), quantity, work.home()));
            }
            return this;
        }

        Draft rate(String row, QuantityKind kind) {
            return rate(row, quantities.of(kind));
        }

        /** A fixed time; a home has a row of its own where there is one. */
        Draft fixed(String row) {
            parts.add(new WorkPart.Fixed(tables.fixedTime(row)));
            return this;
        }

        Draft fixedBySize(String row) {
            return fixed(work.home() ? row + "-home" : row);
        }

        Draft waits(String row) {
            parts.add(new WorkPart.Awaited(tables.wait(row)));
            return this;
        }

        String key() {
            return key;
        }

        private ProjectActivity finished(Set<String> existing) {
            List<Follows> real = follows.stream()
                    .filter(first ->
                            existing.contains(first.key()) && !first.key().equals(key))
                    .distinct()
                    .toList();
            return new ProjectActivity(code, key, words, real, skills, group, outdoor, justInTime, parts);
        }
    }

    Draft draft(ActivityCode code) {
        return draft(code, code.key());
    }

    Draft draft(ActivityCode code, String key) {
        return drafts.computeIfAbsent(key, none -> new Draft(code, key));
    }

    /** Keys of all activities with that code. */
    List<String> keys(ActivityCode code) {
        return drafts.values().stream()
                .filter(draft -> draft.code == code)
                .map(Draft::key)
                .toList();
    }

    /** What must be finished before anybody works on the site. */
    List<String> siteIsOpen() {
        return work.home() && !work.onGround()
                ? List.of(ActivityCode.PERMIT.key(), ActivityCode.ZONING.key(), ActivityCode.AGREEMENT.key())
                : List.of(ActivityCode.SITE_START.key());
    }

    boolean digs() {
        return work.onGround()
                || quantities.of(QuantityKind.TRENCH_FT).amount() > 0
                || quantities.of(QuantityKind.BORE_FT).amount() > 0
                || quantities.of(QuantityKind.ROCK_FT).amount() > 0;
    }

    List<ProjectActivity> finished() {
        drafts.values().removeIf(draft -> draft.parts.isEmpty());
        return drafts.values().stream()
                .map(draft -> draft.finished(drafts.keySet()))
                .sorted(Comparator.comparing(ProjectActivity::code))
                .toList();
    }
}
