package org.plumbrow.schedule.plan;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.PlanningProblem;

/**
 * Says whether two plans were made from the same: SHA-256 over everything that a plan is made from, sets in order. A calendar
 * is written once and then named by its number, as every wait of a branch has one with all its holidays.
 */
final class PlanFingerprint {

    private static final ClassValue<Method[]> PARTS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toArray(Method[]::new);
        }
    };

    private final Map<WorkingCalendar, Integer> calendars = new HashMap<>();
    private final Map<WorkingCalendar, Integer> seen = new IdentityHashMap<>();

    private PlanFingerprint() {}

    static String of(PlanningProblem problem) {
        StringBuilder text = new StringBuilder();
        new PlanFingerprint().write(problem, text);
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void write(Object value, StringBuilder text) {
        if (value instanceof WorkingCalendar calendar) {
            calendar(calendar, text);
        } else if (value instanceof Record record) {
            parts(record, text);
        } else if (value instanceof Map<?, ?> map) {
            write(new TreeMap<>(map).entrySet(), text);
        } else if (value instanceof java.util.Set<?> set && !(set instanceof java.util.SortedSet)) {
            write(inOrder(set), text);
        } else if (value instanceof Collection<?> all) {
            all.forEach(one -> write(one, text));
        } else if (value instanceof Map.Entry<?, ?> entry) {
            write(entry.getKey(), text);
            write(entry.getValue(), text);
        } else if (value instanceof Optional<?> maybe) {
            maybe.ifPresentOrElse(one -> write(one, text), () -> text.append('-'));
        } else {
            text.append(value);
        }
        text.append('|');
    }

    /** The numbers follow the order of first appearance, so they are the same for the same problem. */
    private void calendar(WorkingCalendar calendar, StringBuilder text) {
        Integer known = seen.get(calendar);
        if (known == null) {
            known = calendars.get(calendar);
        }
        if (known == null) {
            known = calendars.size();
            calendars.put(calendar, known);
            parts(calendar, text);
        }
        seen.put(calendar, known);
        text.append('#').append(known);
    }

    private void parts(Record record, StringBuilder text) {
        text.append(record.getClass().getSimpleName());
        for (Method part : PARTS.get(record.getClass())) {
            write(read(record, part), text);
        }
    }

    private Collection<String> inOrder(java.util.Set<?> set) {
        TreeSet<String> order = new TreeSet<>();
        for (Object one : set) {
            StringBuilder text = new StringBuilder();
            write(one, text);
            order.add(text.toString());
        }
        return order;
    }

    private static Object read(Record record, Method part) {
        try {
            return part.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
