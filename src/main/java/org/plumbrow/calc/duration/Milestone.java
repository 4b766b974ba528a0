package org.plumbrow.calc.duration;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What a date can be promised for, and the activities that must be finished for it. */
public enum Milestone {
    SURVEY_DONE("survey done", EnumSet.of(ActivityCode.SURVEY)),
    DESIGN_DONE("design done", EnumSet.of(ActivityCode.DESIGN)),
    PERMITS_IN_HAND("permits in hand", EnumSet.of(ActivityCode.PERMIT, ActivityCode.ZONING)),
    AGREEMENT_SIGNED("interconnection agreement", EnumSet.of(ActivityCode.AGREEMENT)),
    ARRAY_BUILT("array built", EnumSet.of(ActivityCode.RACKING, ActivityCode.MODULES)),
    DISCONNECT_SET("disconnect set", EnumSet.of(ActivityCode.AC_GEAR, ActivityCode.CONDUCTORS)),
    ELECTRICAL_COMPLETION("electrical completion", EnumSet.of(ActivityCode.ELECTRICAL_FINISH)),
    INSPECTION_PASSED("inspection passed", EnumSet.of(ActivityCode.INSPECTION)),
    CUTOVER_DONE("cutover done", EnumSet.of(ActivityCode.CUTOVER)),
    PERMISSION_GIVEN("permission to operate", EnumSet.of(ActivityCode.PERMISSION)),
    SYSTEM_ON("system on", EnumSet.of(ActivityCode.COMMISSIONING)),
    HANDED_OVER("handed over", EnumSet.of(ActivityCode.HAND_OVER));

    private final String words;
    private final Set<ActivityCode> codes;

    Milestone(String words, Set<ActivityCode> codes) {
        this.words = words;
        this.codes = Set.copyOf(codes);
    }

    public String words() {
        return words;
    }

    /** The activities that must be finished for it. */
    public Set<ActivityCode> codes() {
        return codes;
    }

    /** The keys of those activities of a project that must be finished. */
    public List<String> keysIn(List<ProjectActivity> activities) {
        return activities.stream()
                .filter(activity -> codes.contains(activity.code()))
                .map(ProjectActivity::key)
                .toList();
    }
}
