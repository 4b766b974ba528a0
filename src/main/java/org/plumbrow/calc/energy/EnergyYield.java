package org.plumbrow.calc.energy;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;
import static org.plumbrow.calc.energy.sun.HourOfYear.MONTHS;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.HourOfYear;

/**
 * What a site makes in a typical year. Steps: sun in the middle of the hour; beam cut where the sun has set; light on the
 * plane; shade of horizon and rows; reflection at the glass, on the beam only; cell temperature; DC; losses one by one;
 * inverter with its limit; sums by day, month and year.
 */
public final class EnergyYield {

    private final SiteYear site;
    private final Losses losses;
    private final List<GroupYield> groups = new ArrayList<>();
    private final double[] acKwByHour = new double[HOURS];

    private EnergyYield(SiteYear site, List<InverterGroup> groups, Losses losses) {
        this.site = site;
        this.losses = losses;
        groups.forEach(group -> this.groups.add(run(group)));
    }

    /**
     * @param groups one or more; a site with several inverters has one for each that is loaded differently
     * @param losses of all arrays
     */
    public static EnergyYield of(SiteYear site, List<InverterGroup> groups, Losses losses) {
        return new EnergyYield(site, groups, losses);
    }

    private GroupYield run(InverterGroup group) {
        double[] dcKw = new double[site.hours.length];
        List<SectionYield> sections = new ArrayList<>();
        for (ArraySection section : group.sections()) {
            SectionChain chain = new SectionChain(site, section, losses);
            add(dcKw, chain.dcKwPerKw(), section.kwDc());
            sections.add(chain.result());
        }
        return convert(group, List.copyOf(sections), dcKw);
    }

    private static void add(double[] sum, double[] perKw, double kw) {
        for (int at = 0; at < sum.length; at++) {
            sum[at] += kw * perKw[at];
        }
    }

    private GroupYield convert(InverterGroup group, List<SectionYield> sections, double[] dcKw) {
        Inverter inverter = group.inverter();
        double unclipped = 0;
        double sum = 0;
        int clipped = 0;
        for (int at = 0; at < dcKw.length; at++) {
            double without = inverter.unclippedKw(dcKw[at]);
            double ac = Math.min(inverter.acKw(), without);
            clipped += without > ac ? 1 : 0;
            unclipped += without;
            sum += ac;
            acKwByHour[site.hours[at]] += ac;
        }
        return new GroupYield(group, sections, unclipped, sum, clipped);
    }

    public SiteYear site() {
        return site;
    }

    public Losses losses() {
        return losses;
    }

    public List<GroupYield> groups() {
        return List.copyOf(groups);
    }

    public double kwDc() {
        return groups.stream().mapToDouble(each -> each.group().kwDc()).sum();
    }

    /** @return AC power of one hour, kW, which is its kWh */
    public double kwh(int hour) {
        return acKwByHour[hour];
    }

    /** @return {@code double[8760]}, a copy */
    public double[] kwhByHour() {
        return acKwByHour.clone();
    }

    /** @return {@code double[365]} */
    public double[] kwhByDay() {
        double[] days = new double[HOURS / 24];
        for (int hour = 0; hour < HOURS; hour++) {
            days[hour / 24] += acKwByHour[hour];
        }
        return days;
    }

    /** @return {@code double[12]} */
    public double[] kwhByMonth() {
        double[] months = new double[MONTHS];
        for (int hour = 0; hour < HOURS; hour++) {
            months[HourOfYear.monthOf(hour) - 1] += acKwByHour[hour];
        }
        return months;
    }

    public double kwhOfYear() {
        return groups.stream().mapToDouble(GroupYield::acKwh).sum();
    }

    /** Specific yield, kWh for each kW DC. */
    public double kwhPerKw() {
        return kwhOfYear() / kwDc();
    }
}
