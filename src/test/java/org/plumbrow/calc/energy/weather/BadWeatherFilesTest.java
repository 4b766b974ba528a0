package org.plumbrow.calc.energy.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.energy.sun.HourOfYear;

/** Files that went wrong: each is refused or warned of with its line and its cure. */
class BadWeatherFilesTest {

    private static final int HEADER = 8;
    private static final int GHI = 13;
    private static final int DNI = 14;
    private static final int DHI = 15;
    private static final int AIR = 6;
    private static final int WIND = 21;

    private final List<String> lines = InventedWeather.epw();

    private String refusal() {
        return refusal(InventedWeather.text(lines));
    }

    private static String refusal(String text) {
        WeatherReading reading = WeatherFiles.read(text);
        assertThat(reading).as("%s", reading.findings()).isInstanceOf(WeatherReading.Refused.class);
        return reading.findings().get(0).sentence();
    }

    private List<String> warnings() {
        return WeatherFilesTest.read(InventedWeather.text(lines)).findings().stream()
                .map(WeatherFinding::sentence)
                .toList();
    }

    private void edit(int hour, int column, String value) {
        String[] cells = lines.get(HEADER + hour).split(",", -1);
        cells[column] = value;
        lines.set(HEADER + hour, String.join(",", cells));
    }

    private void editAll(BiFunction<Integer, String[], String[]> change) {
        for (int hour = 0; hour < HOURS; hour++) {
            String[] cells = lines.get(HEADER + hour).split(",", -1);
            lines.set(HEADER + hour, String.join(",", change.apply(hour, cells)));
        }
    }

    private static final int NOON = HourOfYear.of(7, 4, 12);

    @Test
    void aFileThatStopsIsRefusedWithItsLastHour() {
        assertThat(refusal(InventedWeather.text(lines.subList(0, lines.size() - 100))))
                .isEqualTo("Line 8,668: The file ends at 12/27, hour 20: 8,660 of 8,760 hours. "
                        + "Bring the whole file; nothing is made up for the hours that lack.");
    }

    @Test
    void aRowCutInTheMiddleIsRefusedWithTheLastGoodLine() {
        int last = lines.size() - 1;
        lines.set(last, lines.get(last).substring(0, 40));
        assertThat(refusal()).startsWith("Line 8,768:").endsWith("the last good line is 8,767.");
    }

    @Test
    void aMissingDoubledOrSwappedRowIsNamed() {
        List<String> whole = List.copyOf(lines);
        lines.remove(HEADER + NOON);
        assertThat(refusal())
                .startsWith("Line 4,436: 7/4, hour 12 is expected, 7/4, hour 13 is found")
                .contains("missing");
        lines.clear();
        lines.addAll(whole);
        lines.add(HEADER + NOON, whole.get(HEADER + NOON));
        assertThat(refusal()).startsWith("Line 4,437: 7/4, hour 13 is expected, 7/4, hour 12 is found");
        lines.clear();
        lines.addAll(whole);
        java.util.Collections.swap(lines, HEADER + NOON, HEADER + NOON + 1);
        assertThat(refusal()).startsWith("Line 4,436:");
    }

    @Test
    void aLeapDayInAYearThatLacksItsLastDayIsRefused() {
        int from = HEADER + HourOfYear.of(2, 28, 1);
        lines.addAll(
                from + 24,
                lines.subList(from, from + 24).stream()
                        .map(line -> line.replaceFirst(",2,28,", ",2,29,"))
                        .toList());
        assertThat(refusal(InventedWeather.text(lines.subList(0, HEADER + HOURS))))
                .contains("The file holds 29 February, but 8,760 hours in place of 8,784.");
    }

    @Test
    void hoursFromZeroAreRefused() {
        editAll((hour, cells) -> {
            cells[3] = String.valueOf(hour % 24);
            return cells;
        });
        assertThat(refusal()).startsWith("Line 9: The hours count from 0").endsWith("count from 1 to 24.");
    }

    @Test
    void aFewMissingHoursAreFilledAndSaid() {
        edit(NOON, GHI, "9999");
        edit(NOON, DNI, "9999");
        edit(NOON, DHI, "9999");
        edit(NOON, AIR, "99.9");
        edit(NOON, WIND, "999");
        WeatherYear year = WeatherFilesTest.read(InventedWeather.text(lines));
        assertThat(year.findings())
                .extracting(WeatherFinding::sentence)
                .contains(
                        "Line 4,436: global horizontal radiation is missing in 1 hour, first here. "
                                + "It was taken from the same hour of the days around.",
                        "Line 4,436: air temperature is missing in 1 hour, first here. "
                                + "It was drawn straight between the hours around.")
                .anyMatch(sentence -> sentence.contains("taken as 1 m/s"));
        assertThat(year.windMPerS(NOON)).isEqualTo(1);
        assertThat(year.ghiWPerM2(NOON)).isEqualTo((year.ghiWPerM2(NOON - 24) + year.ghiWPerM2(NOON + 24)) / 2);
        assertThat(year.airC(NOON))
                .isBetween(
                        Math.min(year.airC(NOON - 1), year.airC(NOON + 1)),
                        Math.max(year.airC(NOON - 1), year.airC(NOON + 1)));
    }

    @Test
    void manyMissingHoursAreRefused() {
        IntStream.range(NOON, NOON + 25).forEach(hour -> edit(hour, GHI, "9999"));
        assertThat(refusal()).contains("global horizontal radiation is missing in more than 24 hours of month 7.");
    }

    @Test
    void airMissingForMoreThanSixHoursIsRefused() {
        IntStream.range(NOON, NOON + 6).forEach(hour -> edit(hour, AIR, "99.9"));
        assertThat(warnings()).anyMatch(sentence -> sentence.contains("air temperature is missing in 6 hours"));
        edit(NOON + 6, AIR, "99.9");
        assertThat(refusal()).startsWith("Line 4,436: air temperature is missing for more than 6 hours running.");
    }

    @Test
    void aFileWithGlobalOnlyIsSplitAndSaysSo() {
        editAll((hour, cells) -> {
            cells[DNI] = "0";
            cells[DHI] = "9999";
            return cells;
        });
        assertThat(warnings()).anyMatch(sentence -> sentence.contains("split from the global (Erbs 1982)"));
    }

    @Test
    void exchangedColumnsAreRecognised() {
        editAll((hour, cells) -> {
            String direct = cells[DNI];
            cells[DNI] = cells[DHI];
            cells[DHI] = direct;
            return cells;
        });
        assertThat(refusal()).contains("the columns of direct and diffuse seem exchanged");
    }

    @ParameterizedTest
    @CsvSource({"1,1 h too late", "-1,1 h too early", "2,2 h too late"})
    void rowsShiftedInTimeAreRefusedWithTheShift(int rows, String said) {
        List<String> whole = List.copyOf(lines);
        editAll((hour, cells) -> {
            String[] from =
                    whole.get(HEADER + Math.floorMod(hour - rows, HOURS)).split(",", -1);
            System.arraycopy(from, GHI, cells, GHI, 3);
            return cells;
        });
        assertThat(refusal()).contains("its rows seem stamped " + said);
    }

    @ParameterizedTest
    @CsvSource({
        "41.5;-88.25;-6.0,41.5;88.25;-6.0",
        "41.5;-88.25;-6.0,-88.25;41.5;-6.0",
        "41.5;-88.25;-6.0,41.5;-88.25;6.0"
    })
    void aHeaderWithWrongSignsIsRefused(String right, String wrong) {
        UnaryOperator<String> commas = text -> text.replace(';', ',');
        lines.set(0, lines.get(0).replace(commas.apply(right), commas.apply(wrong)));
        assertThat(refusal()).startsWith("Line 1: Longitude").contains("does not fit the time zone");
    }

    @Test
    void aLatitudeOfTheWrongSignDoesNotFitTheSun() {
        lines.set(0, lines.get(0).replace("41.5,", "-41.5,"));
        assertThat(refusal()).contains("does not fit the sun of this place").contains("latitude");
    }

    @Test
    void otherSeparatorsAndOtherFilesAreNamed() {
        String text = InventedWeather.text(lines);
        assertThat(refusal(text.replace(',', ';'))).contains("The cells are separated by semicolons.");
        assertThat(refusal(text.replace(',', '\t'))).contains("separated by tabs");
        assertThat(refusal("")).isEqualTo("This file is empty. Bring an EPW, TMY3, NSRDB or TM2 file of one year.");
        assertThat(refusal("PK\u0003\u0004")).contains("seems to be a ZIP or a spreadsheet");
        assertThat(refusal("<!DOCTYPE html><html>")).contains("seems to be a web page");
        assertThat(refusal("a,b,c\n1,2,3\n")).contains("none of the weather formats");
        assertThat(refusal("LOCATION\0")).contains("bytes that are not text");
        assertThat(refusal(InventedWeather.text(lines.subList(0, HEADER)))).contains("no hour");
        assertThat(refusal("LOCATION," + "x".repeat(20_000))).startsWith("Line 1: The line is longer");
        assertThat(refusal("x".repeat(10_000_001))).startsWith("The file is larger than 10 MB.");
    }

    @Test
    void wrongUnitsAreRefused() {
        List<String> whole = List.copyOf(lines);
        Consumer<Double> scale = factor -> editAll((hour, cells) -> {
            for (int column : new int[] {GHI, DNI, DHI}) {
                cells[column] = String.valueOf(Math.round(Double.parseDouble(cells[column]) * factor));
            }
            return cells;
        });
        scale.accept(3.6);
        assertThat(refusal()).contains("lies outside -5 to").endsWith("Check the unit and the columns of the file.");
        lines.clear();
        lines.addAll(whole);
        scale.accept(0.2);
        assertThat(refusal()).contains("Check the unit: mean W/m2 or Wh/m2 of each hour are expected.");
        lines.clear();
        lines.addAll(whole);
        edit(NOON, AIR, "82.4");
        assertThat(refusal())
                .isEqualTo("Line 4,436: air temperature 82.4 lies outside -60 to 60 degC. "
                        + "Check the unit and the columns of the file.");
    }

    @Test
    void aWordInAColumnIsNamedWithItsColumn() {
        edit(NOON, GHI, "n/a");
        assertThat(refusal())
                .startsWith("Line 4,436: global horizontal radiation (column 14) reads \"n/a\", a number is expected.");
    }

    @Test
    void moreThanOneRecordAnHourIsRefused() {
        lines.set(7, "DATA PERIODS,1,4,Data,Sunday,1/ 1,12/31");
        assertThat(refusal()).startsWith("Line 8: The file holds 4 records an hour.");
    }

    @Test
    void aRadiationThatTheSunDoesNotSendIsWarnedOfThenRefused() {
        edit(HourOfYear.of(12, 21, 12), GHI, "1200");
        assertThat(warnings()).anyMatch(sentence -> sentence.contains("more radiation than the sun sends in 1 hour"));
        IntStream.rangeClosed(1, 25).forEach(day -> edit(HourOfYear.of(12, day, 12), GHI, "1200"));
        assertThat(refusal()).contains("more radiation than the sun sends");
    }

    @Test
    void aLittleBelowZeroAtNightIsZero() {
        edit(2, GHI, "-3");
        assertThat(WeatherFilesTest.read(InventedWeather.text(lines)).ghiWPerM2(2))
                .isZero();
    }

    @Test
    void oneRealYearIsSaid() {
        editAll((hour, cells) -> {
            cells[0] = "2011";
            return cells;
        });
        assertThat(warnings()).anyMatch(sentence -> sentence.contains("All hours are of 2011: one real year"));
    }

    @Test
    void aTypicalYearFileWithoutItsBeamColumnNamesWhatLacks() {
        String text = InventedWeather.text(InventedWeather.tmy3(InventedWeather.year()));
        assertThat(refusal(text.replace("DNI (W/m^2)", "Nothing (W/m^2)")))
                .startsWith("Line 2: There is no column for direct normal radiation (\"dni\").");
    }

    @Test
    void satelliteHoursAtTheFullHourOrInUniversalTimeAreRefusedWithTheDownloadToChoose() {
        String text = InventedWeather.text(InventedWeather.nsrdb(InventedWeather.year()));
        assertThat(refusal(text.replace(",30,", ",0,")))
                .startsWith("Line 4: The minute is 0, 30 is expected.")
                .contains("interval of 60 minutes");
        assertThat(refusal(text.replaceFirst(",-6,210.0,-6", ",0,210.0,-6"))).contains("not those of the local clock");
    }
}
