package org.plumbrow.estimate.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.Inverter;
import org.plumbrow.calc.energy.InverterGroup;
import org.plumbrow.calc.energy.Losses;
import org.plumbrow.calc.energy.ModuleFit;
import org.plumbrow.calc.energy.OrientationMap;
import org.plumbrow.calc.energy.Plane;
import org.plumbrow.calc.energy.RowSpacing;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.estimate.EnergyInputs;
import org.springframework.stereotype.Component;

/** Maps of yield over tilt and azimuth, kept in memory while their inputs are the same. */
@Component
class OrientationBook {

    private static final int KEPT = 32;
    private static final int TILT_STEP = 5;
    private static final int MOST_TILT = 60;
    private static final int AZIMUTH_STEP = 15;
    private static final int HALF_TURN = 90;
    private static final double M_PER_FT = 0.3048;
    private static final double SQ_FT_PER_ACRE = 43_560;

    private final Map<Key, OrientationMap> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, OrientationMap> eldest) {
            return size() > KEPT;
        }
    };

    private record Key(
            SiteYear site, ArraySection section, Inverter inverter, List<Losses.Line> losses, List<Double> snow) {}

    /** One array with the inverter's share that is its own. */
    private record Turned(ArraySection section, Inverter inverter) {}

    OrientationView of(EnergyInputs inputs, OrientationView.Choice asked) {
        List<Turned> all = new ArrayList<>();
        inputs.groups().forEach(group -> group.sections().forEach(section -> all.add(turned(group, section))));
        int at = Math.min(Math.max(0, asked.array()), all.size() - 1);
        Turned turned = all.get(at);
        OrientationMap map = map(inputs, turned);
        double own = ownKwhPerKw(inputs, turned);
        Plane plane = turned.section.plane();
        OrientationMap.Best best = map.best();
        double top = Math.max(best.kwhPerKw(), own);
        return new OrientationView(
                new OrientationView.Choice(at, asked.rowFt(), asked.freeHours()),
                all.stream().map(each -> each.section.name()).toList(),
                turned.section.name(),
                plane.tiltDeg(),
                plane.azimuthDeg(),
                own,
                own >= best.kwhPerKw() ? plane.tiltDeg() : best.plane().tiltDeg(),
                own >= best.kwhPerKw() ? plane.azimuthDeg() : best.plane().azimuthDeg(),
                top,
                own / top,
                java.util.Arrays.stream(map.azimuthsDeg())
                        .mapToObj(azimuth -> (int) Math.round(azimuth) % 360)
                        .toList(),
                rows(map, plane, top),
                new Spacings(inputs, turned.section, asked).of(map, top));
    }

    private static Turned turned(InverterGroup group, ArraySection section) {
        double share = section.kwDc() / group.kwDc();
        double kwAc = Math.max(Inverter.AC_KW.least(), group.inverter().acKw() * share);
        return new Turned(section, new Inverter(kwAc, group.inverter().efficiency()));
    }

    private OrientationMap map(EnergyInputs inputs, Turned turned) {
        List<Double> snow = java.util.Arrays.stream(inputs.losses().snowPercentByMonth())
                .boxed()
                .toList();
        // The own plane does not count: turned arrays that are else alike share a map.
        Key key = new Key(
                inputs.site(),
                turned.section.facing(new Plane(0, 0)),
                turned.inverter,
                inputs.losses().lines(),
                snow);
        synchronized (kept) {
            OrientationMap known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        OrientationMap made = OrientationMap.of(
                inputs.site(), turned.section, turned.inverter, inputs.losses(), tilts(), azimuths(inputs.site()));
        synchronized (kept) {
            kept.put(key, made);
        }
        return made;
    }

    private static double[] tilts() {
        return OrientationMap.steps(0, MOST_TILT, MOST_TILT / TILT_STEP + 1);
    }

    /** A quarter turn to each side of the equator's direction. */
    private static double[] azimuths(SiteYear site) {
        double middle = site.weather().place().latitudeDeg() >= 0 ? 180 : 0;
        double[] steps = OrientationMap.steps(middle - HALF_TURN, middle + HALF_TURN, 2 * HALF_TURN / AZIMUTH_STEP + 1);
        for (int at = 0; at < steps.length; at++) {
            steps[at] = (steps[at] + 360) % 360;
        }
        return steps;
    }

    private static double ownKwhPerKw(EnergyInputs inputs, Turned turned) {
        Plane plane = turned.section.plane();
        return OrientationMap.of(
                        inputs.site(),
                        turned.section,
                        turned.inverter,
                        inputs.losses(),
                        new double[] {plane.tiltDeg()},
                        new double[] {plane.azimuthDeg()})
                .best()
                .kwhPerKw();
    }

    private static List<OrientationView.Row> rows(OrientationMap map, Plane own, double top) {
        int ownTilt = nearest(map.tiltsDeg(), own.tiltDeg());
        int ownAzimuth = nearest(map.azimuthsDeg(), own.azimuthDeg());
        OrientationMap.Best best = map.best();
        List<OrientationView.Row> rows = new ArrayList<>();
        for (int tilt = map.tiltsDeg().length - 1; tilt >= 0; tilt--) {
            List<OrientationView.Cell> cells = new ArrayList<>();
            for (int azimuth = 0; azimuth < map.azimuthsDeg().length; azimuth++) {
                double share = map.kwhPerKw()[tilt][azimuth] / top;
                boolean isBest = best.plane().tiltDeg() == map.tiltsDeg()[tilt]
                        && best.plane().azimuthDeg() == map.azimuthsDeg()[azimuth];
                cells.add(new OrientationView.Cell(
                        (int) Math.floor(100 * share + 0.5),
                        band(share),
                        tilt == ownTilt && azimuth == ownAzimuth,
                        isBest));
            }
            rows.add(new OrientationView.Row((int) Math.round(map.tiltsDeg()[tilt]), cells));
        }
        return rows;
    }

    private static String band(double share) {
        if (share >= 0.985) {
            return "near-1";
        }
        if (share >= 0.955) {
            return "near-2";
        }
        return share >= 0.895 ? "near-3" : "near-4";
    }

    private static int nearest(double[] steps, double angle) {
        int nearest = 0;
        for (int at = 1; at < steps.length; at++) {
            nearest = apart(steps[at], angle) < apart(steps[nearest], angle) ? at : nearest;
        }
        return nearest;
    }

    private static double apart(double one, double other) {
        double turn = Math.abs(one - other) % 360;
        return Math.min(turn, 360 - turn);
    }

    /** What rows need at each tilt, facing as the array does. */
    private record Spacings(EnergyInputs inputs, ArraySection section, OrientationView.Choice choice) {

        List<OrientationView.Spacing> of(OrientationMap map, double top) {
            int azimuth = nearest(map.azimuthsDeg(), section.plane().azimuthDeg());
            int own = nearest(map.tiltsDeg(), section.plane().tiltDeg());
            List<OrientationView.Spacing> all = new ArrayList<>();
            for (int tilt = 1; tilt < map.tiltsDeg().length && map.tiltsDeg()[tilt] <= 45; tilt++) {
                all.add(at(map.tiltsDeg()[tilt], 100 * map.kwhPerKw()[tilt][azimuth] / top, tilt == own));
            }
            return all;
        }

        private OrientationView.Spacing at(double tiltDeg, double percent, boolean own) {
            int tilt = (int) Math.round(tiltDeg);
            try {
                double widthM = choice.rowFt() * M_PER_FT;
                RowSpacing spacing = RowSpacing.free(
                        inputs.site().weather().place(),
                        new Plane(tiltDeg, section.plane().azimuthDeg()),
                        widthM,
                        choice.freeHours());
                double sqFt = spacing.landM2PerKw(widthM, ModuleFit.W_PER_M2) / (M_PER_FT * M_PER_FT);
                return new OrientationView.Spacing(
                        tilt,
                        percent,
                        spacing.pitchM() / M_PER_FT,
                        spacing.gapM() / M_PER_FT,
                        sqFt * section.kwDc() / SQ_FT_PER_ACRE,
                        sqFt,
                        own);
            } catch (IllegalArgumentException tooLow) {
                return new OrientationView.Spacing(tilt, percent, null, null, null, null, own);
            }
        }
    }
}
