package org.plumbrow.design.part;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.design.Spot;
import org.plumbrow.web.NumbersAsWritten;

/** One row of a part as it was written, field by field. Figures are checked before they are kept, so reading them holds. */
public record Cells(Map<String, String> byName) {

    public Cells {
        byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
    }

    public static Cells none() {
        return new Cells(Map.of());
    }

    /** A row made by the program; an empty or missing value leaves its field empty. */
    public static Cells of(@Nullable Object... namesAndValues) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int at = 0; at < namesAndValues.length; at += 2) {
            Object value = namesAndValues[at + 1];
            cells.put(String.valueOf(namesAndValues[at]), value == null ? "" : written(value));
        }
        return new Cells(cells);
    }

    private static String written(Object value) {
        if (value instanceof Double figure) {
            return java.math.BigDecimal.valueOf(Math.round(figure * 1000) / 1000.0)
                    .stripTrailingZeros()
                    .toPlainString();
        }
        return value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
    }

    public String text(String name) {
        return byName.getOrDefault(name, "").strip();
    }

    public boolean isEmpty(String name) {
        return text(name).isEmpty();
    }

    public @Nullable String orNull(String name) {
        return isEmpty(name) ? null : text(name);
    }

    public boolean yes(String name) {
        return text(name).equals("yes");
    }

    public @Nullable Double number(String name) {
        return isEmpty(name) ? null : NumbersAsWritten.read(text(name)).doubleValue();
    }

    public double number(String name, double otherwise) {
        Double value = number(name);
        return value == null ? otherwise : value;
    }

    public @Nullable Integer whole(String name) {
        Double value = number(name);
        return value == null ? null : (int) Math.round(value);
    }

    public int whole(String name, int otherwise) {
        Integer value = whole(name);
        return value == null ? otherwise : value;
    }

    public <E extends Enum<E>> @Nullable E choice(String name, Class<E> choices) {
        return Arrays.stream(choices.getEnumConstants())
                .filter(one -> one.name().equals(text(name)))
                .findFirst()
                .orElse(null);
    }

    /** Whole numbers between commas. */
    public List<Integer> list(String name) {
        return Arrays.stream(text(name).split("[,; ]+"))
                .filter(one -> one.matches("\\d{1,4}"))
                .map(Integer::valueOf)
                .toList();
    }

    /** Points of the site plan. */
    public List<Spot> spots(String name) {
        return isEmpty(name) ? List.of() : Spots.read(text(name));
    }

    public @Nullable LocalDate date(String name) {
        return day(text(name)).orElse(null);
    }

    public @Nullable LocalTime time(String name) {
        return clock(text(name)).orElse(null);
    }

    static Optional<LocalDate> day(String written) {
        return read(written, LocalDate::parse);
    }

    static Optional<LocalTime> clock(String written) {
        return read(written, LocalTime::parse);
    }

    private static <T> Optional<T> read(String written, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(written));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    public Cells with(String name, @Nullable Object value) {
        Map<String, String> cells = new LinkedHashMap<>(byName);
        cells.put(name, value == null ? "" : written(value));
        return new Cells(cells);
    }

    boolean isBlank() {
        return byName.values().stream().allMatch(String::isBlank);
    }

    static boolean isFigure(String typed, Range range, boolean whole) {
        try {
            var value = NumbersAsWritten.read(typed);
            return range.holds(value.doubleValue())
                    && (!whole || value.stripTrailingZeros().scale() <= 0);
        } catch (NumberFormatException none) {
            return false;
        }
    }
}
