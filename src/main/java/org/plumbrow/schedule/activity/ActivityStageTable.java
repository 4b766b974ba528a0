package org.plumbrow.schedule.activity;

import static org.plumbrow.calc.duration.ActivityCode.AGREEMENT;
import static org.plumbrow.calc.duration.ActivityCode.COMMISSIONING;
import static org.plumbrow.calc.duration.ActivityCode.CUTOVER;
import static org.plumbrow.calc.duration.ActivityCode.CUTOVER_APPOINTMENT;
import static org.plumbrow.calc.duration.ActivityCode.DESIGN;
import static org.plumbrow.calc.duration.ActivityCode.GROUND_TEST;
import static org.plumbrow.calc.duration.ActivityCode.HAND_OVER;
import static org.plumbrow.calc.duration.ActivityCode.INTERCONNECTION;
import static org.plumbrow.calc.duration.ActivityCode.PERMISSION;
import static org.plumbrow.calc.duration.ActivityCode.PERMIT;
import static org.plumbrow.calc.duration.ActivityCode.SERVICE_INSPECTION;
import static org.plumbrow.calc.duration.ActivityCode.SITE_FINISH;
import static org.plumbrow.calc.duration.ActivityCode.STRUCTURAL_LETTER;
import static org.plumbrow.calc.duration.ActivityCode.SURVEY;
import static org.plumbrow.calc.duration.ActivityCode.ZONING;

import java.util.Map;
import org.plumbrow.project.Stage;

/** At which stage an activity must be done: what a project at that stage has behind it, whoever recorded it. */
final class ActivityStageTable {

    /** What is not named is part of the installation. */
    static final Map<org.plumbrow.calc.duration.ActivityCode, Stage> STAGES = Map.ofEntries(
            Map.entry(SURVEY, Stage.SURVEYED),
            Map.entry(DESIGN, Stage.DESIGNED),
            Map.entry(GROUND_TEST, Stage.DESIGNED),
            Map.entry(STRUCTURAL_LETTER, Stage.DESIGNED),
            Map.entry(PERMIT, Stage.PERMITTED),
            Map.entry(ZONING, Stage.PERMITTED),
            Map.entry(INTERCONNECTION, Stage.PERMITTED),
            Map.entry(AGREEMENT, Stage.PERMITTED),
            Map.entry(SERVICE_INSPECTION, Stage.CUTOVER),
            Map.entry(CUTOVER_APPOINTMENT, Stage.CUTOVER),
            Map.entry(CUTOVER, Stage.CUTOVER),
            Map.entry(PERMISSION, Stage.COMMISSIONED),
            Map.entry(COMMISSIONING, Stage.COMMISSIONED),
            Map.entry(SITE_FINISH, Stage.COMMISSIONED),
            Map.entry(HAND_OVER, Stage.COMMISSIONED));

    private ActivityStageTable() {}
}
