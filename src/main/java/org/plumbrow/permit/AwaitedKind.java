package org.plumbrow.permit;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;

/** What is waited for. The names are stored. */
public enum AwaitedKind {
    PERMIT("Electrical permit", ActivityCode.PERMIT, "permit-review"),
    BUILDING_PERMIT("Building or structural permit, or its exemption", ActivityCode.PERMIT, "permit-review"),
    ZONING("Zoning, driveway, erosion or road permit", ActivityCode.ZONING, "zoning"),
    INTERCONNECTION("Interconnection application", ActivityCode.INTERCONNECTION, "interconnection-fast"),
    AGREEMENT("Interconnection agreement", ActivityCode.AGREEMENT, "agreement"),
    PERMISSION("Permission to operate", ActivityCode.PERMISSION, "permission"),
    LOCATE("Locate ticket", ActivityCode.LOCATE, "locate"),
    RACKING_DELIVERY("Delivery of racking", ActivityCode.RACKING_DELIVERY, "racking-delivery"),
    MODULES_DELIVERY("Delivery of modules", ActivityCode.MODULES_DELIVERY, "modules-delivery"),
    INVERTERS_DELIVERY("Delivery of inverters", ActivityCode.INVERTERS_DELIVERY, "inverters-delivery"),
    GEAR_DELIVERY("Delivery of AC gear", ActivityCode.GEAR_DELIVERY, "gear-delivery"),
    GROUND_INSPECTION("Inspection of the foundation", null, "inspection"),
    TRENCH_INSPECTION("Inspection of the trench", null, "inspection"),
    SERVICE_INSPECTION("Inspection of the service side", ActivityCode.SERVICE_INSPECTION, "inspection"),
    INSPECTION("Electrical inspection", ActivityCode.INSPECTION, "inspection"),
    FINAL_INSPECTION("Final inspection", null, "inspection"),
    STRUCTURAL_LETTER("Structural letter", ActivityCode.STRUCTURAL_LETTER, "structural-letter"),
    GROUND_TEST("Ground test", ActivityCode.GROUND_TEST, "ground-test");

    private static final BigDecimal SMALL_KW = BigDecimal.TEN;
    private static final BigDecimal FAST_KW = BigDecimal.valueOf(2_000);

    private final String words;
    private final @Nullable ActivityCode activity;
    private final String row;

    AwaitedKind(String words, @Nullable ActivityCode activity, String row) {
        this.words = words;
        this.activity = activity;
        this.row = row;
    }

    public String words() {
        return words;
    }

    /** What of the plan ends with it; empty where the plan has no such wait. */
    public Optional<ActivityCode> activity() {
        return Optional.ofNullable(activity);
    }

    public boolean isInspection() {
        return row.equals("inspection");
    }

    boolean needsResult() {
        return isInspection() || this == LOCATE;
    }

    /** The row of the branch's table of waits that it begins with. */
    String waitCode(ProjectFacts project) {
        if ((this == PERMIT || this == BUILDING_PERMIT) && project.site().has(SiteLoad.HOME)) {
            return "permit-counter";
        }
        BigDecimal kw = project.contract().systemKwAc();
        if (this == INTERCONNECTION && kw != null && kw.compareTo(SMALL_KW) <= 0) {
            return "interconnection-small";
        }
        return this == INTERCONNECTION && kw != null && kw.compareTo(FAST_KW) > 0 ? "interconnection-study" : row;
    }
}
