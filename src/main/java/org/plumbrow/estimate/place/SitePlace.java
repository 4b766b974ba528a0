package org.plumbrow.estimate.place;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.project.ProjectFacts;

/** Where the sun is seen from: the project's own coordinates, else the place of its weather. */
final class SitePlace {

    private static final double DEGREES_AN_HOUR = 15;

    private SitePlace() {}

    /** @return null where neither is known; the height above the sea is left out, as it only bends a low sun */
    static @Nullable Place of(ProjectFacts project, @Nullable EnergyInputs inputs) {
        BigDecimal latitude = project.site().latitudeDeg();
        BigDecimal longitude = project.site().longitudeDeg();
        if (latitude == null || longitude == null) {
            return inputs == null ? null : inputs.site().weather().place();
        }
        try {
            double hours = Math.rint(longitude.doubleValue() / DEGREES_AN_HOUR);
            return new Place(latitude.doubleValue(), longitude.doubleValue(), 0, hours);
        } catch (Range.OutOfRange nowhere) {
            return null;
        }
    }
}
