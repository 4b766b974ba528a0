package org.plumbrow;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.plumbrow.account.BranchOpened;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Role;
import org.plumbrow.web.SignedIn;
import org.plumbrow.web.Visitor;
import org.plumbrow.web.VisitorSource;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.stereotype.Component;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Branches with people for tests. Each call makes a new branch, so that tests never meet each other's rows.
 * {@code world.branch()} · {@code world.as(branch.manager(), () -> …)} · {@code .with(world.signedIn(branch.manager()))}.
 */
@Component
public class TestWorld {

    private static final AtomicInteger NEXT = new AtomicInteger();

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Access access;
    private final VisitorSource people;

    private final ApplicationEventPublisher events;
    private final Clock clock;

    TestWorld(
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Access access,
            VisitorSource people,
            ApplicationEventPublisher events,
            Clock clock) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.access = access;
        this.people = people;
        this.events = events;
        this.clock = clock;
    }

    /** A branch in Eastern time with one person in each role; the owner owns the firm and so sees every test's branch. */
    public record TestBranch(
            UUID id,
            String code,
            Visitor owner,
            Visitor manager,
            Visitor projectManager,
            Visitor designer,
            Visitor crewLead) {

        public Visitor in(Role role) {
            return switch (role) {
                case OWNER -> owner;
                case MANAGER -> manager;
                case PROJECT_MANAGER -> projectManager;
                case DESIGNER -> designer;
                case CREW_LEAD -> crewLead;
            };
        }
    }

    public TestBranch branch() {
        return branch(ZoneId.of("America/New_York"));
    }

    public TestBranch branch(ZoneId zone) {
        UUID id = Ids.next();
        String code = letters(NEXT.incrementAndGet());
        everywhere(() -> {
            jdbc.sql("insert into branch (id, code, name, zone) values (?, ?, ?, ?)")
                    .params(id, code, "Branch " + code, zone.getId())
                    .update();
            events.publishEvent(new BranchOpened(id, Actor.PLUMBROW, clock.instant()));
            return id;
        });
        return new TestBranch(
                id,
                code,
                person("Olwen", id, Role.OWNER),
                person("Ines", id, Role.MANAGER),
                person("Tamsin", id, Role.PROJECT_MANAGER),
                person("Dov", id, Role.DESIGNER),
                person("Jory", id, Role.CREW_LEAD));
    }

    /** A new person with these roles in the branch. */
    public Visitor person(String name, UUID branchId, Role... roles) {
        UUID id = Ids.next();
        everywhere(() -> {
            jdbc.sql(
                            "insert into person (id, email, name, owns_firm, last_branch_id, created_at) values (?, ?, ?, ?, ?, now())")
                    .params(
                            id,
                            name.toLowerCase(java.util.Locale.ROOT) + "." + id + "@test.example",
                            name,
                            List.of(roles).contains(Role.OWNER),
                            branchId)
                    .update();
            for (Role role : roles) {
                if (role != Role.OWNER) {
                    jdbc.sql("insert into membership (person_id, branch_id, role, since) values (?, ?, ?, now())")
                            .params(id, branchId, role.name())
                            .update();
                }
            }
            return id;
        });
        return people.find(id).orElseThrow();
    }

    /** Runs the work as this person, as a request of theirs would. */
    public <T> T as(Visitor visitor, Supplier<T> work) {
        return access.as(visitor, work);
    }

    /** As {@link #as(Visitor, Supplier)}, for work without a result. */
    public void as(Visitor visitor, Runnable work) {
        access.as(visitor, () -> {
            work.run();
            return Boolean.TRUE;
        });
    }

    /** Signs the request in. */
    public RequestPostProcessor signedIn(Visitor visitor) {
        SignedIn who = new SignedIn(visitor.personId());
        return authentication(UsernamePasswordAuthenticationToken.authenticated(who, null, List.of()));
    }

    private <T> T everywhere(Supplier<T> work) {
        return BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
    }

    private static String letters(int number) {
        StringBuilder code = new StringBuilder("T");
        for (int rest = number; rest > 0 || code.length() < 3; rest /= 26) {
            code.append((char) ('A' + rest % 26));
        }
        return code.toString();
    }
}
