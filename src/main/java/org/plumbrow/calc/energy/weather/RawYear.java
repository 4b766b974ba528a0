package org.plumbrow.calc.energy.weather;

import java.util.List;
import org.plumbrow.calc.energy.sun.Place;

/** A file's header and rows, not yet judged. */
record RawYear(WeatherYear.Origin origin, String station, Place place, List<RawHour> hours) {}
