package org.plumbrow.design;

/** What a device is. */
public enum DeviceKind {
    BREAKER("breaker"),
    FUSED_DISCONNECT("fused disconnect"),
    UNFUSED_DISCONNECT("disconnect without fuses"),
    PANEL("panel"),
    METER("meter");

    private final String words;

    DeviceKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
