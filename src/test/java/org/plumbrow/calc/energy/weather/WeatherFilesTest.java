package org.plumbrow.calc.energy.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;

/** Good files in every format, with the quirks that good files have. */
class WeatherFilesTest {

    static WeatherYear read(String text) {
        WeatherReading reading = WeatherFiles.read(text);
        assertThat(reading).as("%s", reading.findings()).isInstanceOf(WeatherReading.Read.class);
        return ((WeatherReading.Read) reading).year();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/energy/weather-sums.csv", useHeadersInDisplayName = true)
    void eachPublicFileHasThePlaceAndTheSumsThatWereCountedInIt(
            String site,
            double latitude,
            double longitude,
            double zone,
            double elevation,
            double ghi,
            double dni,
            double dhi,
            double air,
            double wind) {
        WeatherYear year = ReferenceWeather.of(site).year();
        assertThat(year.place().latitudeDeg()).isCloseTo(latitude, within(0.0001));
        assertThat(year.place().longitudeDeg()).isCloseTo(longitude, within(0.0001));
        assertThat(year.place().utcOffsetHours()).isEqualTo(zone);
        assertThat(year.place().elevationM()).isEqualTo(elevation);
        assertThat(sum(year::ghiWPerM2) / 1000).isCloseTo(ghi, within(0.05));
        assertThat(sum(year::dniWPerM2) / 1000).isCloseTo(dni, within(0.05));
        assertThat(sum(year::dhiWPerM2) / 1000).isCloseTo(dhi, within(0.05));
        assertThat(sum(year::airC) / HOURS).isCloseTo(air, within(0.005));
        assertThat(sum(year::windMPerS) / HOURS).isCloseTo(wind, within(0.005));
        assertThat(year.findings())
                .filteredOn(finding -> finding.severity() == WeatherFinding.Severity.WARNING)
                .isEmpty();
    }

    private static double sum(java.util.function.IntToDoubleFunction column) {
        return IntStream.range(0, HOURS).mapToDouble(column).sum();
    }

    @Test
    void everyFormatGivesTheSameYear() {
        WeatherYear invented = InventedWeather.year();
        WeatherYear epw = read(InventedWeather.text(InventedWeather.epw()));
        WeatherYear tmy3 = read(InventedWeather.text(InventedWeather.tmy3(invented)));
        WeatherYear nsrdb = read(InventedWeather.text(InventedWeather.nsrdb(invented)));
        assertThat(List.of(epw.origin(), tmy3.origin(), nsrdb.origin()))
                .containsExactly(WeatherYear.Origin.EPW, WeatherYear.Origin.TMY3_CSV, WeatherYear.Origin.NSRDB_CSV);
        for (WeatherYear year : List.of(epw, tmy3, nsrdb)) {
            assertThat(year.place()).isEqualTo(InventedWeather.PLACE);
            for (int hour = 0; hour < HOURS; hour++) {
                assertThat(year.ghiWPerM2(hour)).isCloseTo(invented.ghiWPerM2(hour), within(0.51));
                assertThat(year.dniWPerM2(hour)).isCloseTo(invented.dniWPerM2(hour), within(0.51));
                assertThat(year.dhiWPerM2(hour)).isCloseTo(invented.dhiWPerM2(hour), within(0.51));
                assertThat(year.airC(hour)).isCloseTo(invented.airC(hour), within(0.051));
            }
        }
    }

    @Test
    void hoursAreStampedAtTheirEnd() {
        List<String> lines = InventedWeather.epw();
        int row = 8 + HourOfYear.of(1, 31, 24);
        assertThat(lines.get(row)).startsWith("1991,1,31,24,");
        lines.set(row, lines.get(row).replaceFirst("\\?9,[-0-9.]+,", "?9,37.5,"));
        WeatherYear year = read(InventedWeather.text(lines));
        assertThat(year.airC(HourOfYear.firstOf(2) - 1)).isEqualTo(37.5);
        assertThat(HourOfYear.monthOf(HourOfYear.firstOf(2) - 1)).isEqualTo(1);
    }

    @Test
    void marksAndLineEndsAndBlankLinesChangeNothing() {
        String plain = InventedWeather.text(InventedWeather.epw());
        String odd = "\uFEFF" + plain.replace("\n", "\r\n") + "\r\n\r\n";
        WeatherYear expected = read(plain);
        for (String text : List.of(odd, plain.stripTrailing(), plain.replace('\n', '\r'))) {
            WeatherYear year = read(text);
            for (int hour = 0; hour < HOURS; hour += 13) {
                assertThat(year.ghiWPerM2(hour)).isEqualTo(expected.ghiWPerM2(hour));
                assertThat(year.windMPerS(hour)).isEqualTo(expected.windMPerS(hour));
            }
        }
    }

    @Test
    void aQuotedTownWithACommaAndAnExtraFieldInTheFirstLineAreFine() {
        List<String> lines = InventedWeather.epw();
        lines.set(0, lines.get(0) + ",extra");
        assertThat(read(InventedWeather.text(lines)).station()).isEqualTo("SOMEWHERE, TOWN");
    }

    @Test
    void aLeapYearIsReadWithoutItsLeapDay() {
        List<String> lines = InventedWeather.epw();
        int from = 8 + HourOfYear.of(2, 28, 1);
        List<String> leap = lines.subList(from, from + 24).stream()
                .map(line -> line.replaceFirst(",2,28,", ",2,29,"))
                .toList();
        WeatherYear expected = read(InventedWeather.text(lines));
        lines.addAll(from + 24, leap);
        WeatherYear year = read(InventedWeather.text(lines));
        assertThat(year.findings())
                .extracting(WeatherFinding::sentence)
                .contains("Line 1,425: The file is a leap year's. 29 February was left out.");
        for (int hour = 0; hour < HOURS; hour++) {
            assertThat(year.ghiWPerM2(hour)).isEqualTo(expected.ghiWPerM2(hour));
        }
    }

    @Test
    void aPlaceInTheSouthOrWithAHalfHourClockIsFine() {
        for (Place place : List.of(
                new Place(-33.9, 18.6, 40, 2), new Place(19.1, 72.9, 14, 5.5), new Place(-41.3, 174.8, 10, 12))) {
            WeatherYear year = read(InventedWeather.text(InventedWeather.epw(InventedWeather.yearAt(place))));
            assertThat(year.place()).isEqualTo(place);
        }
    }

    @Test
    void aFixedColumnFileWithoutItsLeadingBlanksIsTheSame() {
        String text = ReferenceWeather.MIAMI.text();
        WeatherYear expected = read(text);
        WeatherYear stripped = read(text.lines().map(String::strip).reduce("", (a, b) -> a + b + "\n"));
        for (int hour = 0; hour < HOURS; hour += 11) {
            assertThat(stripped.airC(hour)).isEqualTo(expected.airC(hour));
            assertThat(stripped.windMPerS(hour)).isEqualTo(expected.windMPerS(hour));
        }
    }

    @Test
    void weatherFromFarAwayOrFromAnotherHeightIsSaid() {
        WeatherYear year = InventedWeather.year();
        assertThat(year.distanceFrom(new Place(41.6, -88.3, 230, -6))).isEmpty();
        assertThat(year.distanceFrom(new Place(42.5, -88.25, 210, -6))
                        .orElseThrow()
                        .what())
                .isEqualTo("The weather is from 111 km away, the project lies 0 m higher.");
        assertThat(year.distanceFrom(new Place(41.5, -88.25, 600, -6))).isPresent();
    }
}
