package org.plumbrow.calc.finance.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Green Button files: open samples and invented ones that stay outside the project, and small ones written here. */
class GreenButtonTest {

    private static final GreenButton.Assumed BRANCH = new GreenButton.Assumed(UseTest.EASTERN, false);

    private static String file(String name) {
        Path path = Path.of(System.getProperty("plumbrow.reference", "../shared/reference"), "greenbutton", name);
        Assumptions.assumeTrue(Files.exists(path), "the open Green Button samples are not here: " + path);
        try {
            return Files.readString(path, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> sentences(UseReading reading) {
        return reading.findings().stream().map(UseFinding::sentence).toList();
    }

    private static String refusal(String xml) {
        UseReading reading = GreenButton.read(xml, BRANCH);
        assertThat(reading.isRefused()).isTrue();
        assertThat(reading.channels()).isEmpty();
        return sentences(reading).get(0);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/finance/green-button-months.csv", useHeadersInDisplayName = true)
    void monthsOfTheSampleFilesAgree(String name, String flow, String month, int intervals, double hours, double kwh) {
        UseReading reading = GreenButton.read(
                file(name), new GreenButton.Assumed(UseTest.EASTERN, name.equals("ESPIIntervalBlock.xml")));
        UseChannel channel = reading.channels().stream()
                .filter(each -> each.flow().words().equals(flow))
                .findFirst()
                .orElseThrow(() -> new AssertionError(sentences(reading)));
        UseChannel.Month read = channel.months().get(YearMonth.parse(month));
        assertThat(read.kwh()).isCloseTo(kwh, within(0.000001));
        assertThat(read.hours()).isCloseTo(hours, within(0.0001));
        assertThat(read.intervalsBegun()).isEqualTo(intervals);
    }

    @Test
    void twelveBillingPeriodsAreAYear() {
        UseYear year = UseYear.of(
                GreenButton.read(file("made/billing-periods.xml"), BRANCH).channels());
        assertThat(year.kwhOfYear().orElseThrow()).isCloseTo(129_600, within(0.001));
    }

    @Test
    void whatIsOddInTheSamplesIsSaid() {
        assertThat(sentences(GreenButton.read(file("made/gap-and-estimate.xml"), BRANCH)))
                .anyMatch(said -> said.contains("nothing is known from") && said.contains("(5.0 h)"))
                .anyMatch(said -> said.contains("1 reading is below zero"))
                .anyMatch(said -> said.contains("estimated 1 of 43 readings"));
        assertThat(sentences(GreenButton.read(file("made/repeated-hours.xml"), BRANCH)))
                .anyMatch(said -> said.contains("6 readings stand twice"))
                .anyMatch(said -> said.contains("stands twice with different values"));
        assertThat(sentences(GreenButton.read(file("made/no-local-time.xml"), BRANCH)))
                .contains("The file has no clock of its own. The branch's time was taken.");
        assertThat(sentences(GreenButton.read(
                        file("Coastal_Multi_Family_Daily_Jan_1_2011_to_Jan_1_2012_RetailCustomer_4.xml"), BRANCH)))
                .anyMatch(said -> said.startsWith("The file's summary says 768.0 kWh"));
    }

    @Test
    void whatIsNoUseIsRefused() {
        assertThat(refusal(file("made/gas.xml"))).startsWith("This is not electricity.");
        assertThat(refusal(file("made/demand-in-watts.xml"))).contains("power in watts, not energy");
        assertThat(refusal(file("made/with-doctype.xml"))).contains("document type or an entity");
        assertThat(refusal(file("ESPIIntervalBlock.xml"))).contains("does not say in what unit");
    }

    @Test
    void registerReadingsAreTakenAsWhatLiesBetweenThem() {
        UseReading reading = GreenButton.read(file("made/register-readings.xml"), BRANCH);
        assertThat(reading.channels().get(0).kwh()).isCloseTo(868, within(1e-9));
        assertThat(sentences(reading)).anyMatch(said -> said.startsWith("The file holds register readings."));
    }

    private static String feed(String type, String readings) {
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <a:feed xmlns:a="http://www.w3.org/2005/Atom" xmlns:e="http://naesb.org/espi">
                <a:entry><a:link rel="self" href="https://here.example/espi/UsagePoint/1"/><a:content><e:UsagePoint>
                <e:ServiceCategory><e:kind>0</e:kind></e:ServiceCategory></e:UsagePoint></a:content></a:entry>
                <a:entry><a:link rel="self" href="/espi/UsagePoint/1/MeterReading/7"/>
                <a:link rel="related" href="https://here.example//espi/ReadingType/3"/>
                <a:content><e:MeterReading/></a:content></a:entry>
                <a:entry><a:link rel="self" href="/espi/ReadingType/3"/><a:content><e:ReadingType>%s</e:ReadingType>
                </a:content></a:entry>
                <a:entry><a:link rel="up" href="/espi/UsagePoint/1/MeterReading/7/IntervalBlock"/>
                <a:content><e:IntervalBlock>%s</e:IntervalBlock></a:content></a:entry>
                </a:feed>
                """.strip().formatted(type, readings);
    }

    private static final String ENERGY = "<e:accumulationBehaviour>4</e:accumulationBehaviour>"
            + "<e:commodity>1</e:commodity><e:flowDirection>1</e:flowDirection>"
            + "<e:powerOfTenMultiplier>3</e:powerOfTenMultiplier><e:uom>72</e:uom>";

    private static String reading(long start, long seconds, String value) {
        return ("<e:IntervalReading><e:timePeriod><e:duration>%d</e:duration><e:start>%d</e:start></e:timePeriod>"
                        + "<e:value>%s</e:value></e:IntervalReading>")
                .formatted(seconds, start, value);
    }

    @Test
    void prefixesAddressesAndMultipliersDoNotMatter() {
        UseReading reading = GreenButton.read(
                "\uFEFF" + feed(ENERGY, reading(1_760_000_000, 3600, "2") + reading(1_760_003_600, 3600, "3")), BRANCH);
        UseChannel channel = reading.channels().get(0);
        assertThat(channel.kwh()).isEqualTo(5);
        assertThat(channel.flow()).isEqualTo(Flow.DELIVERED);
        assertThat(channel.start()).isEqualTo(Instant.ofEpochSecond(1_760_000_000));
    }

    @Test
    void attacksThroughXmlAreRefused() {
        String plain = feed(ENERGY, reading(1_760_000_000, 3600, "2"));
        String declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
        assertThat(refusal(plain.replace(
                        declaration, declaration + "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>")))
                .contains("document type");
        StringBuilder bomb = new StringBuilder(declaration + "<!DOCTYPE a [<!ENTITY a0 \"ha\">");
        for (int depth = 1; depth < 20; depth++) {
            bomb.append("<!ENTITY a%d \"%s\">".formatted(depth, ("&a" + (depth - 1) + ";").repeat(10)));
        }
        assertThat(refusal(plain.replace(declaration, bomb + "]>").replace("<e:value>2", "<e:value>&a19;")))
                .contains("document type");
        assertThat(refusal(plain.replace("<e:value>2", "<e:value>&x;"))).contains("an entity");
        assertThat(refusal("<a>".repeat(100))).contains("nested too deep");
        assertThat(refusal("")).contains("XML is broken");
        assertThat(refusal("<html/>")).contains("no Green Button file");
        assertThat(refusal("x".repeat(50_000_001))).contains("larger than 50 MB");
        assertThat(refusal(plain.substring(0, plain.length() - 40))).contains("XML is broken");
        assertThat(refusal(plain.replace("<e:value>2", "<e:value>two"))).contains("value reads \"two\"");
        assertThat(refusal(feed(ENERGY, reading(1_760_000_000, 0, "2")))).contains("has no duration");
        assertThat(refusal(feed(ENERGY, ""))).contains("there is no reading");
    }

    @Test
    void theMetersOwnRulesOfSummerTimeAreThoseOfItsCountry() {
        ZoneRules own = ClockRules.of(-18_000, 3600, "360E2000", "B40E2000").orElseThrow();
        List<Instant> instants = new ArrayList<>();
        for (int year = 2008; year < 2030; year++) {
            for (int day = 1; day < 29; day++) {
                instants.add(LocalDateTime.of(year, 3, day, 6, 59).toInstant(java.time.ZoneOffset.UTC));
                instants.add(LocalDateTime.of(year, 11, day, 6, 1).toInstant(java.time.ZoneOffset.UTC));
            }
        }
        ZoneRules country = ZoneId.of("America/New_York").getRules();
        assertThat(instants).allMatch(instant -> own.getOffset(instant).equals(country.getOffset(instant)));
        assertThat(ClockRules.of(-18_000, 3600, "360E", "B40E2000")).isEmpty();
        assertThat(ClockRules.of(-25_200, 3600, "FFFFFFFF", "FFFFFFFF")
                        .orElseThrow()
                        .isFixedOffset())
                .isTrue();
    }
}
