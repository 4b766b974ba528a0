package org.plumbrow.design;

import java.util.List;

/**
 * Where something is, as measured.
 *
 * @param mark of the array (its lower left corner, seen with its foot below), inverter, combiner, device or run; empty
 *     for lines and buildings
 * @param name of lines and buildings
 */
public record Placed(PlaceKind kind, String mark, String name, List<Spot> points) {
    public Placed {
        points = List.copyOf(points);
    }
}
