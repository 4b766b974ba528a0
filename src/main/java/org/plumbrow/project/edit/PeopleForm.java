package org.plumbrow.project.edit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.PersonCard;
import org.plumbrow.branch.Written;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** Who acts for what, as chosen and typed: one row a duty, in their order. */
record PeopleForm(@Nullable List<DutyForm> duties, @Nullable String version) {

    /** Somebody of the branch, or a name without an account. */
    record DutyForm(@Nullable String person, @Nullable String name) {}

    static PeopleForm of(Values values, long version) {
        List<DutyForm> duties = new ArrayList<>();
        for (Duty duty : Duty.values()) {
            String at = "duties[" + duty.ordinal() + "].";
            duties.add(new DutyForm(values.get(at + "person"), values.get(at + "name")));
        }
        return new PeopleForm(duties, Long.toString(version));
    }

    Map<Duty, ProjectFacts.InCharge> read(
            Entered entered, List<PersonCard> people, Map<Duty, ProjectFacts.InCharge> now) {
        Map<Duty, ProjectFacts.InCharge> inCharge = new EnumMap<>(Duty.class);
        for (Duty duty : Duty.values()) {
            DutyForm row = row(duty);
            String at = "duties[" + duty.ordinal() + "].";
            String name = entered.within(at + "name", "the name", row.name, ProjectLimits.LONGEST_NAME);
            String person = Entered.text(row.person);
            if (!person.isEmpty()) {
                chosen(person, people, now.get(duty), inCharge, duty, entered, at);
            } else if (!name.isEmpty()) {
                inCharge.put(duty, new ProjectFacts.InCharge(null, name));
            }
        }
        return inCharge;
    }

    private static void chosen(
            String person,
            List<PersonCard> people,
            ProjectFacts.@Nullable InCharge before,
            Map<Duty, ProjectFacts.InCharge> inCharge,
            Duty duty,
            Entered entered,
            String at) {
        if (before != null
                && before.personId() != null
                && before.personId().toString().equals(person)) {
            inCharge.put(duty, before);
            return;
        }
        people.stream()
                .filter(card -> card.id().toString().equals(person))
                .findFirst()
                .ifPresentOrElse(
                        card -> inCharge.put(duty, new ProjectFacts.InCharge(card.id(), card.name())),
                        () -> entered.refuse(at + "person", "Choose somebody of the branch."));
    }

    /** A row that was not sent is a blank one. */
    private DutyForm row(Duty duty) {
        DutyForm sent = duties != null && duties.size() > duty.ordinal() ? duties.get(duty.ordinal()) : null;
        return sent == null ? new DutyForm("", "") : sent;
    }

    List<Written> written(Map<UUID, String> names) {
        List<Written> fields = new ArrayList<>();
        for (Duty duty : Duty.values()) {
            DutyForm row = row(duty);
            String at = "duties[" + duty.ordinal() + "].";
            String person = Entered.text(row.person);
            String called = person.isEmpty() ? "" : names.getOrDefault(UUID.fromString(person), person);
            fields.add(Written.of(duty.words(), at + "person", person, called));
            fields.add(Written.of(duty.words() + ", by name", at + "name", Entered.text(row.name)));
        }
        return fields;
    }
}
