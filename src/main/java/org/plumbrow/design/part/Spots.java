package org.plumbrow.design.part;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.design.Spot;
import org.plumbrow.web.NumbersAsWritten;

/** Points of the site plan as they are typed: "0 -20; 40 -20". */
final class Spots {

    static final String HOW =
            "Write each point as feet east and feet north of the meter with a space between, points apart by semicolons,"
                    + " for example 0 -20; 40 -20. At most 40 points, each within 5,000 ft.";

    private static final int MOST = 40;
    private static final double FARTHEST_FT = 5000;

    private Spots() {}

    /** None where anything in it cannot be read. */
    static List<Spot> read(String typed) {
        List<Spot> spots = new ArrayList<>();
        for (String point : typed.strip().split("\\s*;\\s*")) {
            String[] figures = point.strip().replace('\u2212', '-').split("\\s+");
            if (figures.length != 2) {
                return List.of();
            }
            try {
                double east = NumbersAsWritten.read(figures[0]).doubleValue();
                double north = NumbersAsWritten.read(figures[1]).doubleValue();
                if (Math.abs(east) > FARTHEST_FT || Math.abs(north) > FARTHEST_FT) {
                    return List.of();
                }
                spots.add(new Spot(east, north));
            } catch (NumberFormatException none) {
                return List.of();
            }
        }
        return spots.size() > MOST ? List.of() : spots;
    }
}
