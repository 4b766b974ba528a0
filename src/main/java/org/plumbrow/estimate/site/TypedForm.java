package org.plumbrow.estimate.site;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Entered;

/** Use by calendar month, as typed from the bills: twelve months or more, without a gap. */
record TypedForm(
        @Nullable String name,
        @Nullable String first,
        List<MonthForm> months,
        @Nullable String version) {

    static final Range KWH = new Range(0, 10_000_000, "kWh");
    private static final int LEAST = 12;
    private static final int MOST = 36;
    private static final int LONGEST_NAME = 80;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.US);

    record MonthForm(@Nullable String kwh) {
        static final MonthForm BLANK = new MonthForm("");

        boolean isBlank() {
            return Entered.text(kwh).isEmpty();
        }
    }

    TypedForm {
        List<MonthForm> all = new ArrayList<>();
        int rows = Math.min(MOST, Math.max(LEAST, months == null ? 0 : months.size()));
        for (int at = 0; at < rows; at++) {
            MonthForm sent = months == null || at >= months.size() ? null : months.get(at);
            all.add(sent == null ? MonthForm.BLANK : sent);
        }
        months = all;
    }

    /** The last whole twelve (or more) months before this day. */
    static TypedForm blank(LocalDate today, @Nullable String asked, int count) {
        int rows = Math.min(MOST, Math.max(LEAST, count));
        YearMonth usual = YearMonth.from(today).minusMonths(rows);
        List<MonthForm> months = new ArrayList<>();
        for (int at = 0; at < rows; at++) {
            months.add(MonthForm.BLANK);
        }
        return new TypedForm("", parsed(asked, usual).toString(), months, "-1");
    }

    static TypedForm of(UseMeter meter) {
        UseMeter.TypedUse typed = java.util.Objects.requireNonNull(meter.typed());
        List<MonthForm> months = typed.kwh().stream()
                .map(kwh -> new MonthForm(Entered.written(kwh)))
                .toList();
        return new TypedForm(meter.name(), typed.first(), months, String.valueOf(meter.version()));
    }

    private static YearMonth parsed(@Nullable String written, YearMonth otherwise) {
        try {
            YearMonth month = YearMonth.parse(Entered.text(written));
            return month.getYear() >= 1990 && month.getYear() <= 2100 ? month : otherwise;
        } catch (DateTimeException e) {
            return otherwise;
        }
    }

    /** What stands before each row: "Mar 2026". */
    List<String> labels() {
        YearMonth from = parsed(first, YearMonth.of(2026, Month.JANUARY));
        List<String> labels = new ArrayList<>();
        for (int at = 0; at < months.size(); at++) {
            labels.add(MONTH.format(from.plusMonths(at)));
        }
        return labels;
    }

    String nameIn(Entered entered) {
        return entered.given("name", "what this meter is called", name, LONGEST_NAME);
    }

    UseMeter.TypedUse read(Entered entered) {
        YearMonth none = YearMonth.of(1900, Month.JANUARY);
        YearMonth from = parsed(first, none);
        if (from.equals(none)) {
            entered.errors().reject("refused", "Write the first month as 2026-03.");
        }
        int last = months.size();
        while (last > 0 && months.get(last - 1).isBlank()) {
            last--;
        }
        List<String> labels = labels();
        List<Double> kwh = new ArrayList<>();
        for (int at = 0; at < Math.max(last, LEAST); at++) {
            String what = "the use of " + labels.get(at);
            kwh.add(entered.required(
                    "months[%d].kwh".formatted(at), what, months.get(at).kwh(), KWH));
        }
        return new UseMeter.TypedUse(from.toString(), kwh);
    }

    List<Written> written() {
        List<Written> all = new ArrayList<>();
        all.add(Written.of("Meter", "name", name));
        all.add(Written.of("First month", "first", first));
        List<String> labels = labels();
        for (int at = 0; at < months.size(); at++) {
            all.add(Written.of(
                    labels.get(at) + ", kWh",
                    "months[%d].kwh".formatted(at),
                    months.get(at).kwh()));
        }
        return all;
    }
}
