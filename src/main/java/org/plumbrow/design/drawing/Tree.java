package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Flow;
import org.plumbrow.design.Run;

/** Follows the runs back from the point of interconnection: a tree whose leaves are the inverters. */
final class Tree {

    private final DesignFacts facts;
    private final Circuits circuits;
    private final Set<String> met = new HashSet<>();

    Tree(Circuits circuits) {
        this.facts = circuits.facts();
        this.circuits = circuits;
    }

    /** What feeds the service, then what no run leads to it. */
    List<Node> roots() {
        met.add(Circuits.POI);
        List<Node> roots = new ArrayList<>(feeders(Circuits.POI));
        for (Run run : facts.runs()) {
            if (run.flow() == Flow.AC
                    && !met.contains(run.to())
                    && leftBy(run.to()).isEmpty()) {
                roots.add(node(run.to(), "", false));
            }
        }
        facts.inverters().stream()
                .filter(inverter -> !met.contains(inverter.mark()))
                .forEach(inverter -> roots.add(node(inverter.mark(), "", false)));
        return withLoose(roots);
    }

    private Optional<Run> leftBy(String mark) {
        return facts.runs().stream()
                .filter(run -> run.flow() == Flow.AC && run.from().equals(mark))
                .findFirst();
    }

    private List<Node> feeders(String mark) {
        List<Node> feeders = new ArrayList<>();
        for (Run run : facts.runs()) {
            if (run.flow() == Flow.AC && run.to().equals(mark) && !met.contains(run.from())) {
                feeders.add(alongRun(run));
            }
        }
        return feeders;
    }

    /** The devices that stand in a run, the last of them nearest to its end. */
    private Node alongRun(Run run) {
        Node node = node(run.from(), run.mark(), true);
        for (Device device : circuits.devicesIn(run)) {
            met.add(device.mark());
            node = new Node(device.mark(), null, device, "", true, List.of(node));
        }
        return node;
    }

    private Node node(String mark, String run, boolean linked) {
        met.add(mark);
        var inverter = facts.inverter(mark).orElse(null);
        return new Node(
                mark,
                inverter,
                circuits.device(mark).orElse(null),
                run,
                linked,
                inverter == null ? feeders(mark) : List.of());
    }

    /** Breakers and disconnects that nobody has put into a run stand last before the service. */
    private List<Node> withLoose(List<Node> roots) {
        List<Node> trunk = new ArrayList<>(roots.stream().filter(Node::linked).toList());
        List<Node> apart = roots.stream().filter(root -> !root.linked()).toList();
        for (Device device : facts.devices()) {
            if (!met.contains(device.mark()) && !atService(device)) {
                trunk = new ArrayList<>(List.of(new Node(device.mark(), null, device, "", true, List.copyOf(trunk))));
            }
        }
        trunk.addAll(apart);
        return trunk;
    }

    /** Meters and panels without a run are the service's own. */
    static boolean atService(Device device) {
        return device.inRun() == null && (device.kind() == DeviceKind.METER || device.kind() == DeviceKind.PANEL);
    }

    List<Device> serviceDevices(DeviceKind kind) {
        return facts.devices().stream()
                .filter(device -> device.kind() == kind && atService(device) && !met.contains(device.mark()))
                .toList();
    }

    static List<Node> with(List<Node> roots, List<String> inverters) {
        List<Node> kept = new ArrayList<>();
        for (Node root : roots) {
            @Nullable Node part = root.with(inverters);
            if (part != null) {
                kept.add(part);
            }
        }
        return kept;
    }
}
