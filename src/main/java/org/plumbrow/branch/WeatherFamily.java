package org.plumbrow.branch;

/** Work outdoors that rain, snow and mud stop alike. */
public enum WeatherFamily {
    GROUND("Posts, trench and bore"),
    STRUCTURE("Racks and modules on the ground"),
    ROOF("Work on roofs"),
    ELECTRICAL("Wiring in the open");

    private final String words;

    WeatherFamily(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
