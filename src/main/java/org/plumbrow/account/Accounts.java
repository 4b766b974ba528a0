package org.plumbrow.account;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Passwords;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Role;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Founds the firm and gives people their accounts: for the first run and for the demo. Asks nobody who may; people of a
 * running firm are invited.
 */
@Service
public class Accounts {

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Passwords passwords;
    private final Clock clock;

    Accounts(JdbcClient jdbc, TransactionTemplate transaction, Passwords passwords, Clock clock) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** Whether anybody could sign in. */
    public boolean anybody() {
        return jdbc.sql("select exists (select 1 from person)")
                .query(Boolean.class)
                .single();
    }

    /** @throws org.springframework.dao.DataIntegrityViolationException constraint {@code firm_is_the_only_one} */
    public void found(String firmName) {
        jdbc.sql("insert into firm (id, name) values (?, ?)")
                .params(Ids.next(), firmName.strip())
                .update();
    }

    /**
     * A new account.
     *
     * @param secondFactorExcused for the demo's people: even owners and managers sign in with the password alone
     */
    public record NewAccount(String name, String email, String password, boolean secondFactorExcused) {}

    public UUID open(NewAccount account) {
        return insert(account, passwords.hash(account.password()));
    }

    /** Several people at once; a password that they share, as the demo's people do, is hashed once. */
    public List<UUID> open(List<NewAccount> accounts) {
        Map<String, String> hashes = new HashMap<>();
        return accounts.stream()
                .map(account -> insert(account, hashes.computeIfAbsent(account.password(), passwords::hash)))
                .toList();
    }

    private UUID insert(NewAccount account, String passwordHash) {
        UUID id = Ids.next();
        jdbc.sql("""
                        insert into person (id, email, name, password_hash, second_factor_excused, created_at)
                        values (?, ?, ?, ?, ?, ?)
                        """)
                .params(
                        id,
                        Credentials.addressOf(account.email()),
                        account.name().strip(),
                        passwordHash,
                        account.secondFactorExcused(),
                        clock.instant().atOffset(ZoneOffset.UTC))
                .update();
        return id;
    }

    /** Gives roles in a branch, on top of what the person has; {@link Role#OWNER} is the whole firm's. */
    public void give(UUID personId, UUID branchId, Set<Role> roles) {
        BranchWall.within(
                branchId,
                () -> transaction.execute(status -> {
                    roles.forEach(role -> give(personId, branchId, role));
                    return personId;
                }));
    }

    private void give(UUID personId, UUID branchId, Role role) {
        if (role == Role.OWNER) {
            jdbc.sql("update person set owns_firm = true where id = ?")
                    .param(personId)
                    .update();
        } else {
            jdbc.sql("""
                            insert into membership (person_id, branch_id, role, since) values (?, ?, ?, ?)
                            on conflict do nothing
                            """)
                    .params(personId, branchId, role.name(), clock.instant().atOffset(ZoneOffset.UTC))
                    .update();
        }
    }
}
