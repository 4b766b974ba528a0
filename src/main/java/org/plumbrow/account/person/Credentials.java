package org.plumbrow.account.person;

import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** What a person proves to be themselves with. Looked up before anybody is signed in, hence across all branches. */
@Component
public class Credentials {

    private static final String OF_PERSON = """
            select p.id, p.name, p.email, p.password_hash, p.second_factor_since is not null as has_second_factor,
                   not p.second_factor_excused and p.second_factor_since is null and (p.owns_firm or exists (
                       select 1 from membership m where m.person_id = p.id and m.role = 'MANAGER')) as owes_second_factor
              from person p
             where p.ended_at is null and
            """;

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Passwords passwords;

    Credentials(JdbcClient jdbc, TransactionTemplate transaction, Passwords passwords) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.passwords = passwords;
    }

    /**
     * A person at the door.
     *
     * @param owesSecondFactor owners and managers must have one; the demo's people are excused
     */
    public record Proof(
            UUID id,
            String name,
            String email,
            @Nullable String passwordHash,
            boolean hasSecondFactor,
            boolean owesSecondFactor) {

        public Actor actor() {
            return new Actor(id, name);
        }
    }

    /** An address as we keep it: without blanks around, in lower case. */
    public static String addressOf(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT);
    }

    public Optional<Proof> ofAddress(String typed) {
        return everywhere(() -> jdbc.sql(OF_PERSON + " p.email = :email")
                .param("email", addressOf(typed))
                .query(Proof.class)
                .optional());
    }

    public Optional<Proof> of(UUID personId) {
        return everywhere(() -> jdbc.sql(OF_PERSON + " p.id = :id")
                .param("id", personId)
                .query(Proof.class)
                .optional());
    }

    /** Part of a transaction that also ends what the old password had opened. */
    public void change(UUID personId, String newPassword) {
        jdbc.sql("update person set password_hash = ?, version = version + 1 where id = ?")
                .params(passwords.hash(newPassword), personId)
                .update();
    }

    private Optional<Proof> everywhere(Supplier<Optional<Proof>> query) {
        Optional<Proof> found = BranchWall.everywhere(() -> transaction.execute(status -> query.get()));
        return found == null ? Optional.empty() : found;
    }
}
