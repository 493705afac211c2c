package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.acoustics.Exposure.Scheme.CRITERION_85_EXCHANGE_3;
import static pairwright.acoustics.Exposure.Scheme.CRITERION_90_EXCHANGE_5;
import static pairwright.acoustics.Printed.thenPrints;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ExposureTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/exposure-hours.csv", numLinesToSkip = 1)
    void hoursAreAsPrinted(double levelDba, String exchange3Hours, String exchange5Hours, String exchange3Minutes) {
        thenPrints(exchange3Hours, Exposure.allowedHours(CRITERION_85_EXCHANGE_3, levelDba));
        thenPrints(exchange5Hours, Exposure.allowedHours(CRITERION_90_EXCHANGE_5, levelDba));
        thenPrints(exchange3Minutes, 60 * Exposure.allowedHours(CRITERION_85_EXCHANGE_3, levelDba));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/exposure-dose.csv", numLinesToSkip = 1)
    void dosesAreAsPrinted(
            String parts, String exchange3Percent, String exchange3Dba, String exchange5Percent, String exchange5Dba) {
        thenDoses(CRITERION_85_EXCHANGE_3, givenParts(parts), exchange3Percent, exchange3Dba);
        thenDoses(CRITERION_90_EXCHANGE_5, givenParts(parts), exchange5Percent, exchange5Dba);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/exposure-daily.csv", numLinesToSkip = 1)
    void dailyExposureIsAsPrinted(double levelDba, double hours, String expected) {
        thenPrints(expected, Exposure.dailyExposureDb(levelDba, hours));
    }

    @Test
    void quietPartsCountOnlyFromTheThreshold() {
        Exposure.Part[] parts = givenParts("100x1 90x4 85x3");
        assertEquals(100, Exposure.dosePercentFrom(CRITERION_90_EXCHANGE_5, 90, parts), 1e-9);
        assertEquals(118.75, Exposure.dosePercentFrom(CRITERION_90_EXCHANGE_5, 80, parts), 1e-9);
    }

    @Property(tries = 200)
    void oneExchangeLouderHalvesTheTimeAndAllOfItIsAFullDose(
            @ForAll @DoubleRange(min = 80, max = 115) double levelDba, @ForAll Exposure.Scheme scheme) {
        double hours = Exposure.allowedHours(scheme, levelDba);
        assertEquals(hours / 2, Exposure.allowedHours(scheme, levelDba + scheme.exchangeDb()), 1e-9);
        assertEquals(8, Exposure.allowedHours(scheme, scheme.criterionDba()), 1e-12);
        double halfDay = Math.min(hours, 24) / 2;
        assertEquals(
                100 * halfDay / hours, Exposure.dosePercent(scheme, new Exposure.Part(levelDba, halfDay)), 1e-9);
    }

    private static void thenDoses(Exposure.Scheme scheme, Exposure.Part[] parts, String percent, String average) {
        double dosePercent = Exposure.dosePercent(scheme, parts);
        thenPrints(percent, dosePercent);
        thenPrints(average, Exposure.timeWeightedAverageDba(scheme, dosePercent));
    }

    private static Exposure.Part[] givenParts(String parts) {
        return Arrays.stream(parts.split(" "))
                .map(part -> part.split("x"))
                .map(part -> new Exposure.Part(Double.parseDouble(part[0]), Double.parseDouble(part[1])))
                .toArray(Exposure.Part[]::new);
    }
}
