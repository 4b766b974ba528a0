package org.plumbrow.design.drawing;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Copies of a record of records, each with one single datum changed: every leaf that there is, by its path. */
final class Mutants {

    private Mutants() {}

    /** The first of a list stands for all of it. */
    static <T extends Record> Map<String, T> of(T whole) {
        Map<String, T> mutants = new LinkedHashMap<>();
        others(whole, whole.getClass(), "").forEach((path, other) -> {
            @SuppressWarnings("unchecked")
            T mutant = (T) other;
            mutants.put(path, mutant);
        });
        return mutants;
    }

    /** A copy in which every text is another. */
    @SuppressWarnings("unchecked")
    static <T extends Record> T withTexts(T whole, UnaryOperator<String> other) {
        return (T) texts(whole, other);
    }

    private static @Nullable Object texts(@Nullable Object value, UnaryOperator<String> other) {
        if (value instanceof String text) {
            return other.apply(text);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(one -> texts(one, other)).toList();
        }
        if (value instanceof Record whole) {
            return copy(
                    whole,
                    Arrays.stream(values(whole)).map(one -> texts(one, other)).toArray());
        }
        return value;
    }

    private static Map<String, Object> others(@Nullable Object value, Class<?> type, String path) {
        Map<String, Object> others = new LinkedHashMap<>();
        if (value instanceof Record whole) {
            RecordComponent[] parts = whole.getClass().getRecordComponents();
            Object[] values = values(whole);
            for (int i = 0; i < parts.length; i++) {
                int at = i;
                others(values[i], parts[i].getType(), path + "." + parts[i].getName())
                        .forEach((name, other) -> {
                            Object[] changed = values.clone();
                            changed[at] = other;
                            others.put(name, copy(whole, changed));
                        });
            }
        } else if (value instanceof List<?> list) {
            if (!list.isEmpty()) {
                others(list.get(0), list.get(0).getClass(), path + "[0]").forEach((name, other) -> {
                    List<Object> changed = new ArrayList<>(list);
                    changed.set(0, other);
                    others.put(name, changed);
                });
            }
        } else {
            Object other = leaf(value, type);
            if (other != null) {
                others.put(path, other);
            }
        }
        return others;
    }

    private static @Nullable Object leaf(@Nullable Object value, Class<?> type) {
        if (type == String.class) {
            return value == null ? "Other" : value + "x";
        }
        if (type == Double.class || type == double.class) {
            return value == null ? 7.0 : (Double) value * 1.1 + 1;
        }
        if (type == Integer.class || type == int.class) {
            return value == null ? 3 : (Integer) value + 1;
        }
        if (type == boolean.class) {
            return !(Boolean) value;
        }
        if (type == LocalDate.class && value != null) {
            return ((LocalDate) value).plusDays(1);
        }
        if (value instanceof Enum<?> one) {
            Object[] all = one.getDeclaringClass().getEnumConstants();
            return all[(one.ordinal() + 1) % all.length];
        }
        if (type == UUID.class || type == long.class || value == null) {
            return null;
        }
        throw new IllegalArgumentException("no other value for " + type);
    }

    private static Object[] values(Record whole) {
        return Arrays.stream(whole.getClass().getRecordComponents())
                .map(part -> {
                    try {
                        part.getAccessor().setAccessible(true);
                        return part.getAccessor().invoke(whole);
                    } catch (ReflectiveOperationException broken) {
                        throw new IllegalStateException(broken);
                    }
                })
                .toArray();
    }

    private static Object copy(Record whole, Object[] values) {
        Class<?>[] types = Arrays.stream(whole.getClass().getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            var constructor = whole.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
