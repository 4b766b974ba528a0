package org.plumbrow.notice;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** A notice with a calendar entry in each branch. */
@Component
class NoticeSamples implements RouteSamples {

    private final TestWorld world;
    private final Outbox outbox;
    private final TransactionTemplate transaction;

    NoticeSamples(TestWorld world, Outbox outbox, TransactionTemplate transaction) {
        this.world = world;
        this.outbox = outbox;
        this.transaction = transaction;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID id = world.as(
                branch.projectManager(),
                () -> transaction.execute(status -> outbox.post(NoticeTest.powerOff(branch.id()))));
        return Map.of("noticeId", String.valueOf(id));
    }
}
