package org.plumbrow.account;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.person.Devices;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Values for the addresses of the account pages. */
@Component
class AccountSamples implements RouteSamples {

    private final TestWorld world;
    private final Devices devices;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    AccountSamples(TestWorld world, Devices devices, JdbcClient jdbc, TransactionTemplate transaction) {
        this.world = world;
        this.devices = devices;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "personId",
                world.person("Sample", branch.id(), Role.DESIGNER).personId().toString(),
                "invitationId",
                invitation(branch).toString(),
                "invitationToken",
                "there-is-no-such-invitation",
                "resetToken",
                "there-is-no-such-reset");
    }

    @Override
    public Map<String, String> of(Visitor visitor) {
        devices.keep(visitor.personId(), "iPhone");
        return Map.of("deviceId", devices.of(visitor.personId()).get(0).id().toString());
    }

    private UUID invitation(TestBranch branch) {
        UUID id = Ids.next();
        return BranchWall.everywhere(() -> transaction.execute(status -> {
            jdbc.sql("""
                            insert into invitation (id, branch_id, email, name, roles, token_hash, invited_by, created_at, ends_at)
                            values (?, ?, 'bo@firm.example', 'Bo', '{DESIGNER}', ?, ?, '2027-03-01T14:00Z', '2027-03-08T14:00Z')
                            """)
                    .params(id, branch.id(), id.toString(), branch.manager().personId())
                    .update();
            return id;
        }));
    }
}
