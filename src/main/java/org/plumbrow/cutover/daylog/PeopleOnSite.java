package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Who is on site on the day, as the log says it: the person in charge since it was opened, everybody else as they came. */
record PeopleOnSite(List<Person> all, List<Signed> signed) {

    static final PeopleOnSite NOBODY = new PeopleOnSite(List.of(), List.of());

    PeopleOnSite {
        all = List.copyOf(all);
        signed = List.copyOf(signed);
    }

    /** Who has signed which hold point as whom. */
    record Signed(Hold hold, Hold.Part part, String name) {}

    /**
     * @param arrival the entry that says so; null of the person in charge
     * @param leftAt null while they are there
     */
    record Person(
            @Nullable UUID arrival,
            String name,
            String role,
            Instant from,
            @Nullable Instant leftAt) {

        public boolean isThere() {
            return leftAt == null;
        }
    }

    static PeopleOnSite of(DayLog log, LogState state) {
        List<Person> people = new ArrayList<>();
        people.add(new Person(null, log.personInCharge(), "person in charge", log.openedAt(), null));
        for (LogState.Effective one : state.of(EntryKind.ARRIVED)) {
            LogEntry arrived = one.entry();
            people.add(new Person(
                    arrived.id(),
                    String.valueOf(one.value()),
                    arrived.reason() == null ? "" : arrived.reason(),
                    one.at(),
                    left(state, arrived.id()).orElse(null)));
        }
        return new PeopleOnSite(
                people,
                Arrays.stream(Hold.values())
                        .flatMap(hold -> signed(state, hold))
                        .toList());
    }

    private static Stream<Signed> signed(LogState state, Hold hold) {
        return state.signatures(hold).stream()
                .flatMap(one -> Stream.ofNullable(one.entry().signature()))
                .map(signature -> new Signed(hold, signature.part(), signature.name()));
    }

    private static Optional<Instant> left(LogState state, UUID arrival) {
        return state.of(EntryKind.LEFT).stream()
                .filter(one -> arrival.equals(one.entry().corrects()))
                .map(LogState.Effective::at)
                .findFirst();
    }

    boolean isThere(String name) {
        return all.stream().anyMatch(person -> person.isThere() && same(person.name, name));
    }

    /** Whether the list has had them, there or gone. */
    boolean knows(String name) {
        return all.stream().anyMatch(person -> same(person.name, name));
    }

    Optional<Person> there(UUID arrival) {
        return all.stream()
                .filter(person -> arrival.equals(person.arrival) && person.isThere())
                .findFirst();
    }

    /** "Tamsin, Sil". */
    String names() {
        return all.stream().filter(Person::isThere).map(Person::name).distinct().collect(Collectors.joining(", "));
    }

    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return name.replaceAll("\\s+", " ").strip().toLowerCase(Locale.ROOT);
    }
}
