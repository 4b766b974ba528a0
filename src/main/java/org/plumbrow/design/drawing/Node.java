package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.Device;
import org.plumbrow.design.PlacedInverter;

/**
 * A thing on the way from the inverters to the service, with what feeds it.
 *
 * @param run mark of the run by which it is left towards the service; empty when it stands at a run's end
 * @param linked whether a run leads from it to the service
 */
record Node(
        String mark,
        @Nullable PlacedInverter inverter,
        @Nullable Device device,
        String run,
        boolean linked,
        List<Node> feeders) {

    Stream<Node> all() {
        return Stream.concat(Stream.of(this), feeders.stream().flatMap(Node::all));
    }

    /** Longest way in devices from an inverter to here, this one counted. */
    int depth() {
        int below = feeders.stream().mapToInt(Node::depth).max().orElse(0);
        return below + (inverter == null ? 1 : 0);
    }

    /** The same with only these inverters; null when none of them feeds it. */
    @Nullable
    Node with(List<String> inverters) {
        if (inverter != null) {
            return inverters.contains(mark) ? this : null;
        }
        List<Node> kept = new ArrayList<>();
        for (Node feeder : feeders) {
            Node part = feeder.with(inverters);
            if (part != null) {
                kept.add(part);
            }
        }
        return kept.isEmpty() && !feeders.isEmpty() ? null : new Node(mark, null, device, run, linked, kept);
    }
}
