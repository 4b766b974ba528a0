package org.plumbrow.calc.duration;

/** Equipment that the shipped rates name; a branch says which of it is shared and scarce. */
public enum EquipmentKind {
    POST_DRIVER("post driver"),
    SCREW_DRIVE("screw drive"),
    AUGER("auger"),
    MIXER("mixer"),
    HOIST("crane or hoist"),
    TELEHANDLER("telehandler"),
    LADDER_LIFT("ladder lift"),
    FALL_PROTECTION("fall protection set"),
    CART("cart"),
    LIFT("lift"),
    TRENCHER("trencher or excavator"),
    BORE_RIG("bore rig"),
    LOCATOR("locator"),
    ROCK_SAW("rock saw"),
    CABLE_PULLER("cable puller"),
    TORQUE_TOOLS("torque tools"),
    TEST_SET("test set"),
    TRACTOR("tractor");

    private final String words;

    EquipmentKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
