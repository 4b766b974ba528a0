package org.plumbrow.account.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Paging;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who is what in the branch being looked at. A change holds at the person's next click; taking the last role away ends
 * the membership, giving one back undoes that.
 */
@Service
@Transactional
class Memberships {

    private static final String OF_BRANCH = """
            select p.id, p.version, p.name, p.email, p.owns_firm, p.second_factor_since is not null as has_second_factor,
                   coalesce(array_agg(m.role) filter (where m.role is not null), '{}') as roles, min(m.since) as since
              from person p left join membership m on m.person_id = p.id and m.branch_id = :branch
             where p.ended_at is null
            """;

    private final JdbcClient jdbc;
    private final Access access;
    private final SecurityLog log;
    private final Clock clock;

    Memberships(JdbcClient jdbc, Access access, SecurityLog log, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.log = log;
        this.clock = clock;
    }

    /** A person in the branch. @param since first day of a role there; null for an owner without one */
    record Member(
            UUID id,
            long version,
            String name,
            String email,
            boolean ownsFirm,
            boolean hasSecondFactor,
            Set<BranchRole> roles,
            @Nullable Instant since) {

        public String roleWords() {
            return ownsFirm && roles.isEmpty() ? "firm owner" : BranchRole.words(roles);
        }
    }

    /** A person of the firm with all branches. */
    record FirmLine(UUID id, String name, String email, boolean ownsFirm, boolean ended, String branches) {}

    List<Member> ofBranch() {
        BranchCard branch = access.require(May.INVITE);
        return jdbc.sql(OF_BRANCH + " group by p.id having count(m.role) > 0 order by p.name, p.id")
                .param("branch", branch.id())
                .query(Memberships::member)
                .list();
    }

    /** @throws NotFound if the person is not of this branch; an owner finds everybody */
    Member find(UUID personId) {
        BranchCard branch = access.require(May.INVITE);
        return find(branch, personId);
    }

    private Member find(BranchCard branch, UUID personId) {
        boolean formerMemberToo = branch.may(May.RUN_FIRM);
        return jdbc.sql(OF_BRANCH + " and p.id = :person group by p.id")
                .param("branch", branch.id())
                .param("person", personId)
                .query(Memberships::member)
                .optional()
                .filter(member -> formerMemberToo || !member.roles().isEmpty() || wasHere(branch.id(), personId))
                .orElseThrow(NotFound::new);
    }

    /** Somebody whose last role was just taken away may be given one back by who took it. */
    private boolean wasHere(UUID branchId, UUID personId) {
        return jdbc.sql("select exists (select 1 from former_member where branch_id = ? and person_id = ?)")
                .params(branchId, personId)
                .query(Boolean.class)
                .single();
    }

    /** @return what is wrong; empty when the person now has exactly these roles in the branch */
    Optional<Refusal> change(UUID personId, Collection<BranchRole> wanted, long openedVersion) {
        BranchCard branch = access.require(May.INVITE);
        Member member = find(branch, personId);
        EditedMeanwhile.check(openedVersion, member.version());
        Visitor asking = access.visitor();
        boolean ownSeat = personId.equals(asking.personId()) && !branch.may(May.RUN_FIRM);
        if (ownSeat && !wanted.contains(BranchRole.MANAGER)) {
            return Optional.of(new Refusal(
                    "roles", "You cannot take the branch from yourself. Ask another manager or the firm's owner."));
        }
        lock(personId, openedVersion);
        give(personId, branch.id(), wanted, member.roles());
        log.write(
                "roles-changed",
                asking.actor(),
                "%s in %s: from %s to %s."
                        .formatted(
                                member.name(),
                                branch.name(),
                                BranchRole.words(member.roles()),
                                BranchRole.words(wanted)));
        return Optional.empty();
    }

    private void lock(UUID personId, long openedVersion) {
        int met = jdbc.sql("update person set version = version + 1 where id = ? and version = ?")
                .params(personId, openedVersion)
                .update();
        if (met == 0) {
            throw new EditedMeanwhile(openedVersion, openedVersion + 1);
        }
    }

    private void give(UUID personId, UUID branchId, Collection<BranchRole> wanted, Set<BranchRole> had) {
        Set<BranchRole> gone = new HashSet<>(had);
        gone.removeAll(wanted);
        for (BranchRole role : gone) {
            jdbc.sql("delete from membership where person_id = ? and branch_id = ? and role = ?")
                    .params(personId, branchId, role.name())
                    .update();
        }
        add(personId, branchId, wanted);
        if (wanted.isEmpty()) {
            jdbc.sql(
                            "insert into former_member (branch_id, person_id, ended_at) values (?, ?, ?) on conflict do nothing")
                    .params(branchId, personId, clock.instant().atOffset(ZoneOffset.UTC))
                    .update();
        }
    }

    /** Gives roles on top of what there is; part of an invitation too. */
    void add(UUID personId, UUID branchId, Collection<BranchRole> roles) {
        for (BranchRole role : roles) {
            jdbc.sql("""
                            insert into membership (person_id, branch_id, role, since) values (?, ?, ?, ?)
                            on conflict do nothing
                            """)
                    .params(personId, branchId, role.name(), clock.instant().atOffset(ZoneOffset.UTC))
                    .update();
        }
        jdbc.sql("delete from former_member where branch_id = ? and person_id = ?")
                .params(branchId, personId)
                .update();
    }

    long peopleOfFirm() {
        access.require(May.RUN_FIRM);
        return jdbc.sql("select count(*) from person").query(Long.class).single();
    }

    List<FirmLine> ofFirm(Paging page) {
        access.require(May.RUN_FIRM);
        return jdbc.sql("""
                        select p.id, p.name, p.email, p.owns_firm, p.ended_at is not null as ended,
                               coalesce(string_agg(distinct b.name, ', ' order by b.name), '') as branches
                          from person p
                          left join membership m on m.person_id = p.id
                          left join branch b on b.id = m.branch_id
                         group by p.id order by p.name, p.id limit :rows offset :from
                        """)
                .param("rows", page.size())
                .param("from", page.offset())
                .query(FirmLine.class)
                .list();
    }

    private static Member member(ResultSet row, int number) throws SQLException {
        Timestamp since = row.getTimestamp("since");
        return new Member(
                row.getObject("id", UUID.class),
                row.getLong("version"),
                row.getString("name"),
                row.getString("email"),
                row.getBoolean("owns_firm"),
                row.getBoolean("has_second_factor"),
                BranchRole.of(List.of((String[]) row.getArray("roles").getArray())),
                since == null ? null : since.toInstant());
    }
}
