package org.plumbrow.schedule.crewweek;

/** What the weather was on the site, as far as it matters to the work. */
enum DayWeather {
    DRY("dry"),
    RAIN("rain"),
    WIND("wind"),
    LIGHTNING("lightning"),
    HEAT("heat"),
    COLD("frost"),
    SNOW("snow");

    private final String words;

    DayWeather(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
