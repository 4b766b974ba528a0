package org.plumbrow.cutover.ridethrough;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.ridethrough.house.LivestockHouse;
import org.plumbrow.cutover.ridethrough.LoadCard.Input;
import org.plumbrow.cutover.ridethrough.LoadCard.Way;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.PartForm;

/** Makes the cards of a site at one hour. */
final class LoadCards {

    /** An outage is looked into so far. */
    private static final double HORIZON_MINUTES = 480;

    private static final List<LoadKind> SUFFERING =
            List.of(LoadKind.HOUSES, LoadKind.TANK, LoadKind.STORES, LoadKind.GREENHOUSES, LoadKind.HOME);

    private LoadCards() {}

    /** @param outside null where there is no weather: then only what does not ask for it has a card */
    static List<LoadCard> of(OnSite site, @Nullable HourOutside outside, int outageMinutes) {
        List<LoadCard> cards = new ArrayList<>();
        for (LoadKind kind : SUFFERING) {
            for (Cells row : site.rows(kind)) {
                if (outside != null || !asksForWeather(kind)) {
                    cards.add(card(kind, row, outside == null ? new HourOutside(0, 0, 0, 0) : outside, outageMinutes));
                }
            }
        }
        return cards;
    }

    static boolean asksForWeather(LoadKind kind) {
        return kind == LoadKind.HOUSES || kind == LoadKind.STORES || kind == LoadKind.GREENHOUSES;
    }

    private static LoadCard card(LoadKind kind, Cells row, HourOutside outside, int outageMinutes) {
        List<Way> ways = kind == LoadKind.HOUSES
                ? houseWays(new HouseLoad(row), outside)
                : List.of(new Way("", LoadAnswers.stands(kind, row, outside, HORIZON_MINUTES)));
        List<Input> inputs = new ArrayList<>(written(kind, row));
        inputs.addAll(derived(kind, row));
        if (asksForWeather(kind)) {
            inputs.addAll(weather(outside));
        }
        String name = row.isEmpty("mark") ? kind.title() : row.text("mark");
        return new LoadCard(kind, name, outageMinutes, ways, inputs);
    }

    private static List<Way> houseWays(HouseLoad house, HourOutside outside) {
        LivestockHouse closed = house.closed();
        List<Way> ways = new ArrayList<>();
        if (house.opens()) {
            ways.add(
                    new Way("with the curtains or vents open", house.stands(house.opened(), outside, HORIZON_MINUTES)));
            ways.add(new Way("if they do not open", house.stands(closed, outside, HORIZON_MINUTES)));
        } else {
            ways.add(new Way("closed", house.stands(closed, outside, HORIZON_MINUTES)));
        }
        ways.add(new Way(
                "closed, only the air warms (mass factor 1)",
                house.stands(closed.withMassFactor(1), outside, HORIZON_MINUTES)));
        return ways;
    }

    /** Every field as written. */
    static List<Input> written(LoadKind kind, Cells row) {
        return kind.cols().stream()
                .filter(col -> !row.isEmpty(col.name()) && !col.name().equals("mark"))
                .map(col -> new Input(col.label(), PartForm.words(col, row.text(col.name()), Col::options)))
                .toList();
    }

    private static List<Input> derived(LoadKind kind, Cells row) {
        return switch (kind) {
            case HOUSES -> {
                LivestockHouse house = new HouseLoad(row).closed();
                yield List.of(
                        figure("Animals’ heat at 68 °F, sensible and latent", house.hpu() * house.uplift(), "kW"),
                        figure("Air volume V", house.volumeM3(), "m³"),
                        figure("Heat through the envelope UA", house.uaWPerK(), "W/K"),
                        figure("Mass factor k", house.massFactor(), "times the air"),
                        new Input(
                                "Doubt, either way",
                                "animals’ heat 10 %, envelope 20 %, air changes 30 %, outdoors 2 K, start 1 K (common"
                                        + " practice)"));
            }
            case TANK ->
                List.of(
                        figure("Milk M·c", StoreLoads.tank(row).milkKg() * 3.9, "kJ/K"),
                        figure(
                                "Heat through the insulation UA",
                                StoreLoads.tank(row).uaWPerK(),
                                "W/K"));
            case STORES -> {
                var balance = StoreLoads.store(row).balance(0);
                yield List.of(
                        figure("Product and air C", balance.capacityJPerK() / 1000, "kJ/K"),
                        figure("Heat through the envelope UA", balance.lossWPerK(), "W/K"));
            }
            case GREENHOUSES -> {
                var balance = StoreLoads.greenhouse(row).balance(0, 0);
                yield List.of(
                        figure("Air and what stands in it C", balance.capacityJPerK() / 1000, "kJ/K"),
                        figure("Heat through cover and air G", balance.lossWPerK(), "W/K"));
            }
            default -> List.of();
        };
    }

    private static List<Input> weather(HourOutside outside) {
        return List.of(
                new Input("Outdoors, warm end", degrees(outside.warmC())),
                new Input("Outdoors, cold end", degrees(outside.coldC())),
                figure("Humidity outdoors", outside.relativeHumidityPercent(), "%"),
                figure("Sun on flat ground, at its most", outside.sunWPerM2(), "W/m²"));
    }

    static String degrees(double degC) {
        return String.format(Locale.US, "%.0f °F (%.1f °C)", UsUnits.fahrenheit(degC), degC)
                .replace('-', '−');
    }

    private static Input figure(String what, double value, String unit) {
        return new Input(what, String.format(Locale.US, value < 20 ? "%,.1f" : "%,.0f", value) + " " + unit);
    }
}
