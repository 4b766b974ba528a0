package org.plumbrow.status.page;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PlannedDates;

/**
 * When the stages to come are planned, as the published plan has it; the outage that was told outweighs the plan. A day
 * that has passed tells nothing about what is to come and is left out.
 *
 * @param byStage the day on which a stage is planned to be reached
 * @param told whether the day of the power cut was told, and so is no guess
 * @param building whether somebody builds, or has begun to
 * @param buildingFrom when building is planned to begin, if that is still to come
 */
record Ahead(Map<Stage, LocalDate> byStage, boolean told, boolean building, Optional<LocalDate> buildingFrom) {

    private static final Set<ActivityCode> BUILDING =
            EnumSet.range(ActivityCode.SITE_START, ActivityCode.ELECTRICAL_FINISH);

    private static final Map<Stage, Set<ActivityCode>> REACHED_BY = Map.of(
            Stage.SURVEYED, EnumSet.of(ActivityCode.SURVEY),
            Stage.DESIGNED, EnumSet.of(ActivityCode.DESIGN),
            Stage.PERMITTED,
                    EnumSet.of(
                            ActivityCode.PERMIT,
                            ActivityCode.ZONING,
                            ActivityCode.INTERCONNECTION,
                            ActivityCode.AGREEMENT),
            Stage.INSTALLED, BUILDING,
            Stage.CUTOVER, EnumSet.of(ActivityCode.CUTOVER),
            Stage.COMMISSIONED, EnumSet.range(ActivityCode.PERMISSION, ActivityCode.HAND_OVER));

    static final Ahead NOTHING = new Ahead(Map.of(), false, false, Optional.empty());

    static Ahead of(List<PlannedDates> plan, Optional<OutageFacts> told, LocalDate today) {
        Map<Stage, LocalDate> byStage = new EnumMap<>(Stage.class);
        REACHED_BY.forEach((stage, codes) ->
                finish(plan, codes).filter(day -> !day.isBefore(today)).ifPresent(day -> byStage.put(stage, day)));
        Optional<LocalDate> toldDay = told.map(OutageFacts::day).filter(day -> !day.isBefore(today));
        toldDay.ifPresent(day -> byStage.put(Stage.CUTOVER, day));
        oneAfterTheOther(byStage);
        Optional<LocalDate> from = plan.stream()
                .filter(row -> BUILDING.contains(row.code()))
                .map(row -> row.start().date())
                .min(Comparator.naturalOrder());
        boolean begun = plan.stream().anyMatch(row -> BUILDING.contains(row.code()) && row.isDone())
                || from.filter(day -> !day.isAfter(today)).isPresent();
        return new Ahead(byStage, toldDay.isPresent(), begun, from.filter(day -> day.isAfter(today)));
    }

    /** Crews may still work on the ground when the power is switched over; to a customer stages follow each other. */
    private static void oneAfterTheOther(Map<Stage, LocalDate> byStage) {
        LocalDate next = LocalDate.MAX;
        for (int i = Stage.values().length - 1; i >= 0; i--) {
            LocalDate own = byStage.getOrDefault(Stage.values()[i], LocalDate.MAX);
            next = own.isBefore(next) ? own : next;
            byStage.replace(Stage.values()[i], next);
        }
    }

    private static Optional<LocalDate> finish(List<PlannedDates> plan, Set<ActivityCode> codes) {
        return plan.stream()
                .filter(row -> codes.contains(row.code()))
                .map(row -> row.finish().date())
                .max(Comparator.naturalOrder());
    }

    /** Whether the day is fixed, and not only planned. */
    boolean isFixed(Stage stage) {
        return stage == Stage.CUTOVER && told;
    }

    Optional<LocalDate> day(Stage stage) {
        return Optional.ofNullable(byStage.get(stage));
    }
}
