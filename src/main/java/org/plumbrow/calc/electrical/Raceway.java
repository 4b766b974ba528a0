package org.plumbrow.calc.electrical;

/** What conductors lie in. */
public enum Raceway {
    PVC_40("PVC schedule 40"),
    PVC_80("PVC schedule 80"),
    EMT("EMT"),
    RMC("rigid metal conduit"),
    DIRECT_BURIED("direct buried"),
    FREE_AIR("free air");

    private final String words;

    Raceway(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isConduit() {
        return this != DIRECT_BURIED && this != FREE_AIR;
    }
}
