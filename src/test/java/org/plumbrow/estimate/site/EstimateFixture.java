package org.plumbrow.estimate.site;

import java.time.YearMonth;
import java.util.Collections;
import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.springframework.stereotype.Component;

/** Weather for tests: twelve made-up means of a valley at 41 degrees north. */
@Component
public class EstimateFixture {

    static final double[] GHI = {1.9, 2.7, 3.7, 4.7, 5.5, 6.0, 5.9, 5.2, 4.2, 3.0, 2.0, 1.6};
    static final double[] AIR = {-3, -2, 3, 9, 15, 19.5, 22, 21, 17, 11, 5, -0.5};
    static final double[] WIND = {3.5, 3.5, 3.6, 3.4, 2.9, 2.6, 2.4, 2.3, 2.4, 2.8, 3.2, 3.4};

    private final TestWorld world;
    private final WeatherLibrary library;
    private final UseBook use;

    EstimateFixture(TestWorld world, WeatherLibrary library, UseBook use) {
        this.world = world;
        this.library = library;
        this.use = use;
    }

    public static MonthlyMeans means(double latitude, double longitude) {
        return new MonthlyMeans(new Place(latitude, longitude, 400, -5), GHI, AIR, WIND);
    }

    public UUID weather(TestBranch branch, String name) {
        return weather(branch, name, 40.9, -77.7);
    }

    public UUID weather(TestBranch branch, String name, double latitude, double longitude) {
        return world.as(branch.manager(), () -> library.type(branch.id(), name, true, means(latitude, longitude)));
    }

    /** Twelve months of 2026, each of so many kWh. */
    public UUID use(TestBranch branch, UUID project, String meter, double kwhAMonth) {
        return world.as(
                branch.projectManager(),
                () -> use.type(project, meter, YearMonth.of(2026, 1), Collections.nCopies(12, kwhAMonth)));
    }
}
