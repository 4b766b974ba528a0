package org.plumbrow.account.people;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.account.person.NewPassword;
import org.plumbrow.account.person.Passwords;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** An invited person becomes one with an account. Nobody is signed in here: the link is the proof. */
@Service
class Joining {

    private final Invitations invitations;
    private final Memberships memberships;
    private final NewPassword newPassword;
    private final Passwords passwords;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Clock clock;

    Joining(
            Invitations invitations,
            Memberships memberships,
            NewPassword newPassword,
            Passwords passwords,
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Clock clock) {
        this.invitations = invitations;
        this.memberships = memberships;
        this.newPassword = newPassword;
        this.passwords = passwords;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.clock = clock;
    }

    Optional<Invitations.Open> invitation(String token) {
        return everywhere(() -> invitations.behind(token));
    }

    /** @return what is wrong with what was typed; empty when the account is there */
    Optional<Refusal> join(String token, JoinForm form) {
        Optional<Refusal> refused = newPassword.check(form.password(), form.again());
        return refused.isPresent() ? refused : everywhere(() -> joinNow(token, form));
    }

    private Optional<Refusal> joinNow(String token, JoinForm form) {
        Invitations.Open invitation = invitations.behind(token).orElseThrow(LinkHasEnded::new);
        UUID id = Ids.next();
        String name = String.valueOf(form.name()).strip();
        int added = jdbc.sql("""
                        insert into person (id, email, name, password_hash, last_branch_id, created_at)
                        values (?, ?, ?, ?, ?, ?) on conflict do nothing
                        """)
                .params(
                        id,
                        invitation.email(),
                        name,
                        passwords.hash(String.valueOf(form.password())),
                        invitation.branchId(),
                        clock.instant().atOffset(ZoneOffset.UTC))
                .update();
        if (added == 0) {
            return Optional.of(Refusal.ofForm(
                    "There is an account with the address " + invitation.email() + " by now. Sign in with it, and ask "
                            + invitation.invitedBy() + " for the role in " + invitation.branchName() + "."));
        }
        if (!invitations.use(invitation, new Actor(id, name))) {
            throw new LinkHasEnded();
        }
        memberships.add(id, invitation.branchId(), invitation.roles());
        return Optional.empty();
    }

    private <T> Optional<T> everywhere(Supplier<Optional<T>> work) {
        Optional<T> result = BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
        return result == null ? Optional.empty() : result;
    }
}
