package org.plumbrow.account;

import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.web.Role;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The people of a branch, for choosing and naming them. One query each; sees what the caller's branches allow. */
@Service
@Transactional(readOnly = true)
public class BranchPeople {

    private static final String PEOPLE = """
            select p.id, p.name, p.email, m.role
              from membership m join person p on p.id = m.person_id
             where m.branch_id = :branch and p.ended_at is null
             order by p.name, p.id
            """;

    private final JdbcClient jdbc;

    BranchPeople(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private record Row(UUID id, String name, String email, String role) {}

    /** Everybody with a role in this branch, by name; a firm owner without one is not among them. */
    public List<PersonCard> of(UUID branchId) {
        Map<UUID, PersonCard> byId = new LinkedHashMap<>();
        jdbc.sql(PEOPLE)
                .param("branch", branchId)
                .query(Row.class)
                .list()
                .forEach(row -> byId.computeIfAbsent(
                                row.id, id -> new PersonCard(id, row.name, row.email, EnumSet.noneOf(Role.class)))
                        .roles()
                        .add(Role.valueOf(row.role)));
        return List.copyOf(byId.values());
    }

    public List<PersonCard> of(UUID branchId, Role role) {
        return of(branchId).stream()
                .filter(person -> person.roles().contains(role))
                .toList();
    }

    public Optional<PersonCard> find(UUID branchId, UUID personId) {
        return of(branchId).stream()
                .filter(person -> person.id().equals(personId))
                .findFirst();
    }

    /** What these people are called, those included whose account has ended. */
    public Map<UUID, String> names(Collection<UUID> personIds) {
        if (personIds.isEmpty()) {
            return Map.of();
        }
        record Named(UUID id, String name) {}
        return jdbc
                .sql("select id, name from person where id in (:ids)")
                .param("ids", Set.copyOf(personIds))
                .query(Named.class)
                .stream()
                .collect(Collectors.toMap(Named::id, Named::name));
    }
}
