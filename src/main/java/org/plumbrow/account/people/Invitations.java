package org.plumbrow.account.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tokens;
import org.plumbrow.database.Ids;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NewNotice.Recipient;
import org.plumbrow.notice.Outbox;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Invitations to a branch: by link, seven days, once. Who has an account already is given the roles at once. */
@Service
@Transactional
class Invitations {

    static final Duration LIFE = Duration.ofDays(7);

    private final JdbcClient jdbc;
    private final Access access;
    private final Memberships memberships;
    private final Outbox outbox;
    private final OwnAddress ownAddress;
    private final SecurityLog log;
    private final Clock clock;

    Invitations(
            JdbcClient jdbc,
            Access access,
            Memberships memberships,
            Outbox outbox,
            OwnAddress ownAddress,
            SecurityLog log,
            Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.memberships = memberships;
        this.outbox = outbox;
        this.ownAddress = ownAddress;
        this.log = log;
        this.clock = clock;
    }

    /** An invitation that still waits. */
    record Open(
            UUID id,
            UUID branchId,
            String branchName,
            String email,
            String name,
            Set<BranchRole> roles,
            String invitedBy,
            Instant endsAt) {

        public String roleWords() {
            return BranchRole.words(roles);
        }

        String about() {
            return aboutOf(id);
        }

        private static String aboutOf(UUID id) {
            return "invitation:" + id;
        }
    }

    /** @param link what the invited person opens; null when the account was there and the roles hold already */
    record Invited(String name, Optional<String> link) {}

    /** @return why this address cannot be invited */
    Optional<Refusal> refusal(InviteForm form) {
        access.require(May.INVITE);
        boolean ended = jdbc.sql("select exists (select 1 from person where email = ? and ended_at is not null)")
                .param(Credentials.addressOf(String.valueOf(form.email())))
                .query(Boolean.class)
                .single();
        return ended
                ? Optional.of(new Refusal(
                        "email", "The account with this address has ended. A firm owner can open it again."))
                : Optional.empty();
    }

    Invited invite(InviteForm form) {
        BranchCard branch = access.require(May.INVITE);
        String email = Credentials.addressOf(String.valueOf(form.email()));
        String name = String.valueOf(form.name()).strip();
        Set<BranchRole> roles = Set.copyOf(form.roles() == null ? List.of() : form.roles());
        Optional<UUID> known = jdbc.sql("select id from person where email = ? and ended_at is null")
                .param(email)
                .query(UUID.class)
                .optional();
        if (known.isPresent()) {
            return giveAtOnce(known.get(), branch, email, name, roles);
        }
        withdrawEarlier(branch.id(), email);
        UUID id = Ids.next();
        String token = Tokens.next();
        OffsetDateTime now = clock.instant().atOffset(ZoneOffset.UTC);
        jdbc.sql("""
                        insert into invitation (id, branch_id, email, name, roles, token_hash, invited_by, created_at, ends_at)
                        values (:id, :branch, :email, :name, string_to_array(:roles, ','), :hash, :by, :now, :ends)
                        """)
                .param("id", id)
                .param("branch", branch.id())
                .param("email", email)
                .param("name", name)
                .param("roles", String.join(",", roles.stream().map(Enum::name).toList()))
                .param("hash", Tokens.hash(token))
                .param("by", access.visitor().personId())
                .param("now", now)
                .param("ends", now.plus(LIFE))
                .update();
        String link = "/invited/" + token;
        post(id, branch, new Recipient(name, email), roles, link);
        log.write(
                "invited",
                access.actor(),
                "Invited %s to %s as %s.".formatted(email, branch.name(), BranchRole.words(roles)));
        return new Invited(name, Optional.of(link));
    }

    private Invited giveAtOnce(UUID personId, BranchCard branch, String email, String name, Set<BranchRole> roles) {
        memberships.add(personId, branch.id(), roles);
        outbox.post(NewNotice.ofBranch(
                branch.id(),
                new Recipient(name, email),
                "You are now " + BranchRole.words(roles) + " in " + branch.name(),
                """
                You are now %s in %s. Sign in as usual: %s

                You get this because %s gave you this role.
                """.formatted(
                                BranchRole.words(roles),
                                branch.name(),
                                ownAddress.of("/"),
                                access.visitor().name())));
        log.write(
                "roles-changed",
                access.actor(),
                "Gave %s in %s: %s.".formatted(email, branch.name(), BranchRole.words(roles)));
        return new Invited(name, Optional.empty());
    }

    private void post(UUID id, BranchCard branch, Recipient to, Set<BranchRole> roles, String link) {
        outbox.post(NewNotice.toSignIn(
                branch.id(),
                Open.aboutOf(id),
                to,
                "You are invited to " + branch.name() + " as " + BranchRole.words(roles),
                """
                You are invited to %s as %s.

                Open this page within seven days and choose a password; it works once:
                %s

                You get this because %s invited you. If you did not expect it, do nothing.
                """.formatted(
                                branch.name(),
                                BranchRole.words(roles),
                                ownAddress.of(link),
                                access.visitor().name())));
    }

    private void withdrawEarlier(UUID branchId, String email) {
        jdbc.sql(
                        "select id from invitation where branch_id = ? and email = ? and used_at is null and withdrawn_at is null")
                .params(branchId, email)
                .query(UUID.class)
                .list()
                .forEach(this::end);
    }

    private boolean end(UUID id) {
        boolean ended = jdbc.sql(
                                "update invitation set withdrawn_at = ? where id = ? and used_at is null and withdrawn_at is null")
                        .params(clock.instant().atOffset(ZoneOffset.UTC), id)
                        .update()
                == 1;
        outbox.withdraw(Open.aboutOf(id));
        outbox.blank(Open.aboutOf(id));
        return ended;
    }

    List<Open> open() {
        BranchCard branch = access.require(May.INVITE);
        return jdbc.sql(OPEN + " and i.branch_id = :branch order by i.created_at desc, i.id")
                .param("now", clock.instant().atOffset(ZoneOffset.UTC))
                .param("branch", branch.id())
                .query(Invitations::row)
                .list();
    }

    void withdraw(UUID invitationId) {
        BranchCard branch = access.require(May.INVITE);
        Open invitation = open().stream()
                .filter(open -> open.id.equals(invitationId))
                .findFirst()
                .orElseThrow(NotFound::new);
        end(invitationId);
        log.write(
                "invitation-withdrawn",
                access.actor(),
                "Withdrew the invitation of %s to %s.".formatted(invitation.email, branch.name()));
    }

    /** The invitation behind a link, if it still holds; needs the scope of all branches. */
    Optional<Open> behind(String token) {
        return jdbc.sql(OPEN + " and i.token_hash = :hash")
                .param("now", clock.instant().atOffset(ZoneOffset.UTC))
                .param("hash", Tokens.hash(token))
                .query(Invitations::row)
                .optional();
    }

    /** Marks the link as used, once. @return false if somebody was faster */
    boolean use(Open invitation, Actor by) {
        boolean first =
                jdbc.sql("update invitation set used_at = ? where id = ? and used_at is null and withdrawn_at is null")
                                .params(clock.instant().atOffset(ZoneOffset.UTC), invitation.id)
                                .update()
                        == 1;
        if (first) {
            outbox.blank(invitation.about());
            log.write(
                    "invitation-used",
                    by,
                    "Took the invitation to %s as %s.".formatted(invitation.branchName, invitation.roleWords()));
        }
        return first;
    }

    private static final String OPEN = """
            select i.id, i.branch_id, b.name as branch_name, i.email, i.name, i.roles, p.name as invited_by, i.ends_at
              from invitation i join branch b on b.id = i.branch_id join person p on p.id = i.invited_by
             where i.used_at is null and i.withdrawn_at is null and i.ends_at > :now
            """;

    private static Open row(ResultSet row, int number) throws SQLException {
        return new Open(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getString("branch_name"),
                row.getString("email"),
                row.getString("name"),
                BranchRole.of(List.of((String[]) row.getArray("roles").getArray())),
                row.getString("invited_by"),
                row.getTimestamp("ends_at").toInstant());
    }
}
