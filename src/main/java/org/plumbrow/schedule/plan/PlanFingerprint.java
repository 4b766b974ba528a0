package org.plumbrow.schedule.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.plumbrow.calc.planning.PlanningProblem;

/** Says whether two plans were made from the same: SHA-256 over everything that a plan is made from, sets in order. */
final class PlanFingerprint {

    private PlanFingerprint() {}

    static String of(PlanningProblem problem) {
        StringBuilder text = new StringBuilder();
        write(problem, text);
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void write(Object value, StringBuilder text) {
        if (value instanceof Record record) {
            text.append(record.getClass().getSimpleName());
            for (var part : record.getClass().getRecordComponents()) {
                write(read(record, part), text);
            }
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

    private static Collection<String> inOrder(java.util.Set<?> set) {
        TreeSet<String> order = new TreeSet<>();
        for (Object one : set) {
            StringBuilder text = new StringBuilder();
            write(one, text);
            order.add(text.toString());
        }
        return order;
    }

    private static Object read(Record record, java.lang.reflect.RecordComponent part) {
        try {
            return part.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
