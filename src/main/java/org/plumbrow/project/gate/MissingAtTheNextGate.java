package org.plumbrow.project.gate;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.NextGate;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** What keeps the next gate shut, for the project page. */
@Component
class MissingAtTheNextGate implements NextGate {

    private final Gates gates;

    MissingAtTheNextGate(Gates gates) {
        this.gates = gates;
    }

    @Override
    public Optional<View> of(ProjectFacts project) {
        return gates.next(project).map(MissingAtTheNextGate::view);
    }

    private static View view(GateView gate) {
        long blocking = gate.items().stream().filter(ItemView::blocks).count();
        return new View(
                gate.to(),
                (int) blocking,
                gate.missing().stream()
                        .sorted(GateBook::bySoonest)
                        .map(item -> item(gate.projectId(), item))
                        .toList(),
                "/projects/" + gate.projectId() + "/gate");
    }

    private static Item item(UUID projectId, ItemView item) {
        return new Item(
                item.asked().words(),
                "/projects/" + projectId + "/gate-items/" + item.code(),
                item.kindWords(),
                item.state().shape(),
                item.sentence(),
                item.who(),
                item.by());
    }
}
