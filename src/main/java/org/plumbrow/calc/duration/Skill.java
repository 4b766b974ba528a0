package org.plumbrow.calc.duration;

/** What a crew must be able and allowed to do. */
public enum Skill {
    INSTALLER("array work"),
    ROOF("roof work with fall protection"),
    POST_OPERATOR("post driver or auger operator"),
    EARTH_OPERATOR("trencher or excavator operator"),
    BORE_OPERATOR("directional bore operator"),
    ELECTRICIAN("licensed electrician"),
    SERVICE("qualified for energised testing at the service");

    private final String words;

    Skill(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
