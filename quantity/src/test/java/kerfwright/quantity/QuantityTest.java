package kerfwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
  /** pi D n; any machining handbook. Check values worked out by hand from the formula. */
  @ParameterizedTest
  @CsvSource({"1.6,200000,16.755", "1.2,160000,10.053", "1.0,400000,20.944", "3.0,21220.66,3.3333"})
  void rimSpeedIsPiTimesDiameterTimesSpeed(double diameterMm, double rpm, double metresPerSecond) {
    assertEquals(
        metresPerSecond,
        RotationalSpeed.ofRpm(rpm).rimSpeed(Length.ofMillimetres(diameterMm)).metresPerSecond(),
        5e-4);
  }

  @Test
  void unitsGoThereAndBack() {
    assertEquals(1.25, Length.ofMillimetres(1.25).millimetres(), 1e-12);
    assertEquals(35, Length.ofMicrometres(35).micrometres(), 1e-12);
    assertEquals(50, FlowRate.ofMillilitresPerMinute(50).millilitresPerMinute(), 1e-12);
    assertEquals(1e-6 / 60, FlowRate.ofMillilitresPerMinute(1).cubicMetresPerSecond(), 1e-18);
    assertEquals(2.33, Torque.ofNewtonMillimetres(2.33).newtonMillimetres(), 1e-12);
    assertEquals(37, Temperature.ofCelsius(37).celsius(), 1e-9);
  }

  @Test
  void aDifferenceOfTemperaturesIsNotATemperature() {
    Temperature body = Temperature.ofCelsius(37);
    assertEquals(-12, Temperature.ofCelsius(25).minus(body).kelvins(), 1e-9);
    assertEquals(42.5, body.plus(TemperatureDifference.ofKelvins(5.5)).celsius(), 1e-9);
  }

  @Test
  void aFaultNamesQuantityValueUnitAndLimit() {
    String said = assertThrows(IllegalArgumentException.class, () -> new Torque(-1)).getMessage();
    assertTrue(said.contains("Torque") && said.contains("-1.0 newton"), said);
    assertThrows(IllegalArgumentException.class, () -> new Length(Double.NaN));
  }

  @Test
  void aRangeIsOrdered() {
    Length thin = Length.ofMillimetres(1);
    Length thick = Length.ofMillimetres(2);
    assertThrows(IllegalArgumentException.class, () -> new Range<>(thick, thin, thick));
    assertFalse(new Range<>(thin, thin, thick).isExact());
    assertTrue(Range.exactly(thin).isExact());
  }

  @Test
  void memoryNeverFeedsALimit() {
    assertFalse(Basis.FROM_MEMORY.mayFeedSafetyLimit());
    assertTrue(Basis.SEEN.mayFeedSafetyLimit());
  }
}
