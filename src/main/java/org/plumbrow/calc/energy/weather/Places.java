package org.plumbrow.calc.energy.weather;

import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.Place;

/** The place of a file's header, or why there is none. */
final class Places {

    private static final double DEGREES_AN_HOUR = 15;
    private static final double MOST_DEGREES_FROM_ZONE = 30;

    private Places() {}

    static Place checked(int line, double latitude, double longitude, double elevationM, double utcOffset) {
        Place place;
        try {
            place = new Place(latitude, longitude, elevationM, utcOffset);
        } catch (Range.OutOfRange wrong) {
            throw new Unreadable(
                    line,
                    "The %s %s lies outside %s to %s %s."
                            .formatted(
                                    wrong.quantity(),
                                    wrong.value(),
                                    wrong.range().least(),
                                    wrong.range().most(),
                                    wrong.range().unit()),
                    "Correct the header of the file.");
        }
        if (degreesFromZone(place) > MOST_DEGREES_FROM_ZONE) {
            throw new Unreadable(
                    line,
                    "Longitude %s does not fit the time zone %s.".formatted(longitude, utcOffset),
                    "Check the signs: east of Greenwich and ahead of UTC are positive.");
        }
        return place;
    }

    /** How far the place lies from the middle of its time zone, degrees of longitude, 0 to 180. */
    static double degreesFromZone(Place place) {
        double apart = Math.abs(place.longitudeDeg() - DEGREES_AN_HOUR * place.utcOffsetHours()) % 360;
        return Math.min(apart, 360 - apart);
    }
}
