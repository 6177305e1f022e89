package kerfwright.schedule;

/**
 * An instrument on the tray of an appointment.
 *
 * @param appointment the appointment's id
 * @param instrument the instrument
 */
public record TrayPlace(String appointment, InstrumentRef instrument) {
  public static TrayPlace of(String appointment, String type, int index) {
    return new TrayPlace(appointment, new InstrumentRef(type, index));
  }
}
