package org.plumbrow.calc.energy.weather;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** The five public weather files, which stay outside the project; a test that needs one is skipped where it is absent. */
public enum ReferenceWeather {
    CHICAGO("USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw"),
    DENVER("USA_CO_Denver.Intl.AP.725650_TMY3.epw"),
    TUCSON("USA_AZ_Davis-Monthan.AFB.722745_TMY3.epw"),
    GREENSBORO("723170TYA.CSV"),
    MIAMI("12839.tm2");

    private final String file;

    ReferenceWeather(String file) {
        this.file = file;
    }

    public static ReferenceWeather of(String site) {
        return valueOf(site.toUpperCase(java.util.Locale.ROOT));
    }

    public String text() {
        Path path = Path.of(System.getProperty("plumbrow.reference", "../shared/reference"), "weather", file);
        Assumptions.assumeTrue(Files.exists(path), "the public weather files are not here: " + path);
        try {
            return Files.readString(path, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public WeatherYear year() {
        WeatherReading reading = WeatherFiles.read(text());
        if (reading instanceof WeatherReading.Read read) {
            return read.year();
        }
        throw new AssertionError(file + ": " + reading.findings());
    }
}
