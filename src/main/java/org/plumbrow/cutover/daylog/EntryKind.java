package org.plumbrow.cutover.daylog;

/** What an entry of the log says. */
enum EntryKind {
    DONE,
    READING,
    /** A reading outside its limits was read twice and stays. */
    STAYS,
    WRONG,
    PHOTO,
    REVERSAL_TIME,
    REVERSE,
    REVERSE_REASON,
    POWER_ON,
    SIGNED,
    CORRECTED,
    TAKEN_BACK,
    ARRIVED,
    LEFT,
    NEAR_MISS,
    COULD_HAVE,
    WAS_DONE
}
