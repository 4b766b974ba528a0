package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/**
 * A device on the way from the inverters to the service.
 *
 * @param inRun mark of the run that it stands at the end of and protects
 * @param interruptingKa null when not stated
 * @param whoMayOpen "anybody", "the utility", "qualified people"
 * @param utilityDisconnect the one that the utility asks for: visible break, lockable, outside
 * @param toMeterFt its distance to the meter
 * @param utilityLetter whether the utility has agreed to a longer distance in writing
 */
public record Device(
        String mark,
        DeviceKind kind,
        String name,
        @Nullable String inRun,
        double ratedA,
        double ratedV,
        @Nullable Double interruptingKa,
        String place,
        String whoMayOpen,
        boolean utilityDisconnect,
        @Nullable Double toMeterFt,
        boolean utilityLetter) {}
