package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/** One inverter in its place. @param array mark of the array beside which it stands; null at the service */
public record PlacedInverter(
        String mark, InverterType type, @Nullable String array, String place) {}
