package org.plumbrow.estimate.place;

import java.util.List;
import org.plumbrow.project.ProjectTitle;

/**
 * Roof and ground beside one another, as the page shows them. No money.
 *
 * @param against whether the decision differs from the contract's mounting
 * @param changes what has to change then, and where
 * @param remarks what stands with every yield: invented weather, assumptions
 * @param missing why there is no yield; empty when there is one
 */
record PlaceView(
        ProjectTitle title,
        Placement placement,
        boolean against,
        List<Change> changes,
        Side roof,
        Side ground,
        List<Row> rows,
        List<String> remarks,
        List<String> missing) {

    /** @param key last word of the message key of its heading */
    record Row(String key, Cell roof, Cell ground) {}

    /** @param href where it is changed @param editOnly whether only those who may change the project open that page */
    record Change(String sentence, String href, String link, boolean editOnly) {}

    /** Whether one of the two gives more for each kilowatt. */
    public boolean isComparable() {
        return roof.kwhPerKw().isPresent() && ground.kwhPerKw().isPresent();
    }

    /** Of the ground over the roof, %; only when comparable. */
    public double groundGivesMorePercent() {
        return 100 * (ground.kwhPerKw().orElseThrow() / roof.kwhPerKw().orElseThrow() - 1);
    }
}
