package org.plumbrow.calc.energy.weather;

import java.util.List;

/** What came of reading a weather file. */
public sealed interface WeatherReading {

    /** Everything the reader has to say, worst first. */
    List<WeatherFinding> findings();

    /** The file can be used; its warnings stay with every figure made from it. */
    record Read(WeatherYear year) implements WeatherReading {
        @Override
        public List<WeatherFinding> findings() {
            return year.findings();
        }
    }

    /** The file cannot be used; each finding says why and what to do. */
    record Refused(List<WeatherFinding> findings) implements WeatherReading {
        public Refused {
            findings = List.copyOf(findings);
        }
    }
}
