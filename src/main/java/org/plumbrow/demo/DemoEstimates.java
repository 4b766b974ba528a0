package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.estimate.site.SizeLimits;
import org.plumbrow.estimate.site.UseBook;
import org.plumbrow.estimate.site.WeatherLibrary;
import org.plumbrow.estimate.site.YieldEditing;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** The valley's invented weather and caps, the use of some sites, and each project's yield: before it was signed. */
@Component
@WithDemo
class DemoEstimates implements DemoChapter {

    private static final LocalTime AT_NINE = LocalTime.of(9, 0);
    private static final double M_PER_S_PER_MPH = 0.44704;
    private static final Place VALLEY = new Place(41.93, -77.33, 410, -5);

    private final WeatherLibrary weather;
    private final SizeLimits limits;
    private final UseBook use;
    private final YieldEditing yields;
    private final BranchSettings settings;
    private final Access access;
    private final List<SeedRow> meters;

    DemoEstimates(
            WeatherLibrary weather,
            SizeLimits limits,
            UseBook use,
            YieldEditing yields,
            BranchSettings settings,
            Access access) {
        this.weather = weather;
        this.limits = limits;
        this.use = use;
        this.yields = yields;
        this.settings = settings;
        this.access = access;
        this.meters = SeedRow.of("use.csv");
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.SIGNED) {
            tell(told, cast, story, passed);
        }
    }

    /** As the branch manager and then the project manager, on the morning of that day. */
    private void tell(Told told, Cast cast, Story story, LocalDate day) {
        StoryClock.at(story.at(day, AT_NINE), () -> {
            access.as(cast.manager(), () -> {
                if (weather.ofBranch(cast.branchId()).isEmpty()) {
                    begin(cast.branchId());
                }
                return told;
            });
            return access.as(cast.visitor(told.row().text("project_manager")), () -> {
                meters.stream()
                        .filter(row -> row.text("key").equals(told.key()))
                        .forEach(row -> type(told.id(), row, YearMonth.from(day)));
                yields.compute(told.id());
                return told;
            });
        });
    }

    private void begin(UUID branchId) {
        List<SeedRow> rows = SeedRow.of("weather-means.csv");
        double[] ghi = figures(rows, "ghi");
        double[] air =
                Arrays.stream(figures(rows, "air_f")).map(f -> (f - 32) / 1.8).toArray();
        double[] wind = Arrays.stream(figures(rows, "wind_mph"))
                .map(mph -> mph * M_PER_S_PER_MPH)
                .toArray();
        weather.type(branchId, "Quillback Valley, invented means", true, new MonthlyMeans(VALLEY, ghi, air, wind));
        SeedRow.of("size-limits.csv").forEach(row -> limit(branchId, row));
    }

    private static double[] figures(List<SeedRow> rows, String column) {
        return rows.stream()
                .mapToDouble(row -> row.figure(column).doubleValue())
                .toArray();
    }

    private void limit(UUID branchId, SeedRow row) {
        String whose = row.text("whose");
        UUID utility = settings.utilities(branchId).stream()
                .filter(each -> each.name().equals(whose))
                .findFirst()
                .map(UtilityFacts::id)
                .orElse(null);
        limits.change(
                branchId,
                -1,
                new SizeLimits.Limit(utility, -1, whose, maybe(row, "most_offset_percent"), maybe(row, "most_kw_ac")));
    }

    private static @Nullable Double maybe(SeedRow row, String column) {
        return row.has(column) ? row.figure(column).doubleValue() : null;
    }

    /** The twelve whole months before that day, whatever month it is. */
    private void type(UUID project, SeedRow row, YearMonth month) {
        YearMonth first = month.minusMonths(12);
        List<Double> kwh = java.util.stream.IntStream.range(0, 12)
                .mapToObj(at ->
                        row.figure(column(first.plusMonths(at).getMonth())).doubleValue())
                .toList();
        use.type(project, row.text("meter"), first, kwh);
    }

    private static String column(Month month) {
        return month.name().substring(0, 3).toLowerCase(Locale.ROOT);
    }
}
