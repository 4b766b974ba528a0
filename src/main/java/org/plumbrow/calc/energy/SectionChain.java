package org.plumbrow.calc.energy;

import static org.plumbrow.calc.energy.sun.HourOfYear.MONTHS;

import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * The chain of one section, from the sky's light to DC, over all lit hours. Constants of the plane stand outside the
 * loop; a lit hour costs some forty additions and multiplications.
 */
final class SectionChain {

    private final SiteYear site;
    private final ArraySection section;
    private final Losses losses;
    private final double[] dcKwPerKw;
    private final double[][] sums = new double[Stage.COUNT][MONTHS];
    private final double[] openShare;

    private final double planeUp;
    private final double planeEast;
    private final double planeNorth;
    private final double sine;
    private final double skyView;
    private final double groundView;
    private final double isotropicKept;
    private final double coverage;

    SectionChain(SiteYear site, ArraySection section, Losses losses) {
        this.site = site;
        this.section = section;
        this.losses = losses;
        this.dcKwPerKw = new double[site.hours.length];
        this.openShare = openShare();
        Plane plane = section.plane();
        this.planeUp = plane.up();
        this.planeEast = plane.east();
        this.planeNorth = plane.north();
        this.sine = plane.sine();
        this.skyView = plane.skyView();
        this.groundView = plane.groundView();
        this.isotropicKept =
                section.rows().map(rows -> rows.isotropicKept(plane.tiltDeg())).orElse(1.0);
        this.coverage = section.rows().map(Rows::coverage).orElse(0.0);
        for (int month = 1; month <= MONTHS; month++) {
            run(month);
        }
    }

    SectionYield result() {
        return new SectionYield(section, sums);
    }

    /** DC power after losses for each kW, {@code double[lit hours]}. */
    double[] dcKwPerKw() {
        return dcKwPerKw;
    }

    /** 1 where the sun stands above the horizon's profile, else 0; empty without a profile. */
    private double[] openShare() {
        if (section.horizon().isEmpty()) {
            return new double[0];
        }
        Horizon around = section.horizon().get();
        SunTrack sun = site.sun();
        double[] open = new double[site.hours.length];
        for (int at = 0; at < open.length; at++) {
            int hour = site.hours[at];
            boolean hidden = 90 - sun.apparentZenithDeg(hour) < around.elevationDeg(sun.azimuthDeg(hour));
            open[at] = hidden ? 0 : 1;
        }
        return open;
    }

    private void run(int month) {
        IncidenceModifier front = section.module().incidence();
        CellHeating heating = section.heating();
        double gamma = section.module().gammaPerK();
        double kept = losses.kept(month);
        double openLight = 0;
        double light = 0;
        double entered = 0;
        double warm = 0;
        for (int at = site.monthStarts[month - 1]; at < site.monthStarts[month]; at++) {
            double cosine =
                    Math.max(0, site.up[at] * planeUp + site.east[at] * planeEast + site.north[at] * planeNorth);
            double open = open(at, cosine);
            double around = site.circumsolar[at] * cosine;
            double wide = site.isotropic[at] * skyView;
            double band = site.horizon[at] * sine;
            double reflected = site.ground[at] * groundView;
            double rest = Math.max(0, around * open + wide * isotropicKept + band) + reflected;
            double plane = site.beam[at] * cosine * open + rest;
            double through = site.beam[at] * front.times(cosine) * open + rest;
            double cellC = site.airC[at] + plane * heating.kelvinPerWPerM2(site.windMPerS[at]);
            double dc = Math.max(0, through * (1 + gamma * (cellC - 25))) / 1000;
            openLight += site.beam[at] * cosine + Math.max(0, around + wide + band) + reflected;
            light += plane;
            entered += through;
            warm += dc;
            dcKwPerKw[at] = dc * kept;
        }
        keep(month, openLight, light, entered, warm, kept);
    }

    private double open(int at, double cosine) {
        double open = openShare.length == 0 ? 1 : openShare[at];
        if (coverage > 0 && cosine > 0 && site.up[at] > 0) {
            open *= Math.min(1, site.up[at] / (coverage * cosine));
        }
        return open;
    }

    private void keep(int month, double openLight, double light, double entered, double warm, double kept) {
        sums[Stage.OPEN_LIGHT.ordinal()][month - 1] = openLight / 1000;
        sums[Stage.LIGHT.ordinal()][month - 1] = light / 1000;
        sums[Stage.ENTERED.ordinal()][month - 1] = entered / 1000;
        sums[Stage.WARM_DC.ordinal()][month - 1] = warm;
        sums[Stage.DC.ordinal()][month - 1] = warm * kept;
    }
}
