package org.plumbrow.status;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFacts.InCharge;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Under which number customers reach the people in charge. A number belongs to the person, not to the project: it is
 * written once and shown wherever that person is named.
 */
@Service
@Transactional
public class DutyPhones {

    /** Whom a customer may call, in this order. */
    public static final List<Duty> CALLED = List.of(Duty.PROJECT_MANAGER, Duty.PERSON_IN_CHARGE);

    private static final Pattern NUMBER = Pattern.compile("[+(]?[0-9][0-9 ().+-]{5,30}( ?(ext\\.?|x) ?[0-9]{1,6})?");

    private final JdbcClient jdbc;
    private final ProjectAccess projects;
    private final ChangeLog log;
    private final Access access;

    DutyPhones(JdbcClient jdbc, ProjectAccess projects, ChangeLog log, Access access) {
        this.jdbc = jdbc;
        this.projects = projects;
        this.log = log;
        this.access = access;
    }

    /**
     * @param phone empty as long as nobody wrote one
     * @param version 0 as long as nobody wrote one
     */
    public record Reached(Duty duty, String name, String phone, long version) {}

    private record Row(String personKey, String phone, long version) {}

    /** The people of a project whom its customer may call; somebody with both duties once. */
    @Transactional(readOnly = true)
    public List<Reached> of(ProjectFacts project) {
        Map<String, Reached> byKey = new HashMap<>();
        List<String> order = new ArrayList<>();
        for (Duty duty : CALLED) {
            project.inCharge(duty).ifPresent(who -> {
                if (byKey.putIfAbsent(key(who), new Reached(duty, who.name(), "", 0)) == null) {
                    order.add(key(who));
                }
            });
        }
        rows(project.branchId(), order)
                .forEach(row -> byKey.computeIfPresent(
                        row.personKey, (key, who) -> new Reached(who.duty, who.name, row.phone, row.version)));
        return order.stream().map(byKey::get).toList();
    }

    private List<Row> rows(UUID branchId, List<String> keys) {
        if (keys.isEmpty()) {
            return List.of();
        }
        return jdbc.sql(
                        "select person_key, phone, version from duty_phone where branch_id = :branch and person_key in (:keys)")
                .param("branch", branchId)
                .param("keys", keys)
                .query(Row.class)
                .list();
    }

    /** @throws EditedMeanwhile if somebody changed it since @return what is wrong, else it is written */
    public Optional<Refusal> write(ProjectFacts project, Duty duty, long openedVersion, String typed) {
        projects.require(project.id(), May.SHARE_WITH_CUSTOMER);
        String phone = typed.strip();
        if (!phone.isEmpty() && !NUMBER.matcher(phone).matches()) {
            return Optional.of(new Refusal(
                    "phone", "Write the phone number in digits, for example 555-555-0142; or leave it empty."));
        }
        InCharge who = project.inCharge(duty).orElseThrow();
        Row now =
                rows(project.branchId(), List.of(key(who))).stream().findFirst().orElse(new Row(key(who), "", 0));
        EditedMeanwhile.check(openedVersion, now.version);
        if (!phone.equals(now.phone)) {
            write(project.branchId(), now, phone);
            log.happened(project.branchId(), access.actor(), who.name(), "phone for customers", now.phone, phone);
        }
        return Optional.empty();
    }

    private void write(UUID branchId, Row now, String phone) {
        int written = jdbc.sql("""
                insert into duty_phone (branch_id, person_key, version, phone) values (:branch, :key, 1, :phone)
                on conflict on constraint duty_phone_key do update
                   set version = duty_phone.version + 1, phone = excluded.phone where duty_phone.version = :version
                """)
                .param("branch", branchId)
                .param("key", now.personKey)
                .param("phone", phone)
                .param("version", now.version)
                .update();
        if (written == 0) {
            throw new EditedMeanwhile(now.version, now.version + 1);
        }
    }

    /** An account's id; without an account the name, as it is all there is. */
    private static String key(InCharge who) {
        UUID person = who.personId();
        return person == null ? "name:" + who.name().strip().toLowerCase(Locale.ROOT) : person.toString();
    }
}
