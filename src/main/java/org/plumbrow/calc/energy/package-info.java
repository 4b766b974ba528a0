/**
 * What an array will make: from a year of weather and the sun's track over the irradiance on each plane, the cells'
 * temperature, the losses one by one and the inverters to kilowatt-hours by hour, day, month and year, and how years
 * differ. Start at {@link org.plumbrow.calc.energy.SiteYear} (weather and sun, prepared once) and
 * {@link org.plumbrow.calc.energy.EnergyYield} (the chain).
 * <p>Rules: radiation W/m2 as the mean of an hour, so that its sum is Wh/m2; an hour's kW is its kWh; the sun stands where
 * it is in the middle of the hour; every irradiance uses the apparent sun. Default sky: Hay and Davies. Losses are taken
 * before the inverter, as behind it they would also reduce what has been clipped.
 * <p>Results are estimates for planning: one typical year is a middle year, no promise; see
 * {@link org.plumbrow.calc.energy.YearSpread}.
 */
@NullMarked
@NamedInterface("energy")
package org.plumbrow.calc.energy;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
