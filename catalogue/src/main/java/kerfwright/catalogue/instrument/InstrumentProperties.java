package kerfwright.catalogue.instrument;

import java.util.List;
import kerfwright.catalogue.Remark;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an instrument, whichever way it was named (ISO 6360 number, US size or
 * properties). What is unknown is null and stays so.
 *
 * @param kind material and way of working
 * @param iso the ISO 6360 number in groups of three, where known
 * @param us the US size, where known
 * @param shape family of the head
 * @param shapeName the catalogue's name of the shape
 * @param grit grit class of a diamond instrument or polisher
 * @param blades number of blades of a bur
 * @param crossCut true where the blades carry cross cuts
 * @param safeEnd true where the tip does not cut
 * @param abrasive what a polisher carries, e.g. diamond; empty where unknown
 * @param headDiameter largest diameter of the working part
 * @param headLength length of the working part
 * @param shank type of shank
 * @param overallLength overall length
 * @param maximumSpeed the maker's limit; an instrument without one is never planned with
 * @param assumed what was filled in because the list did not say
 */
public record InstrumentProperties(
    InstrumentKind kind,
    @Nullable String iso,
    @Nullable String us,
    ShapeFamily shape,
    String shapeName,
    @Nullable GritClass grit,
    @Nullable Integer blades,
    boolean crossCut,
    boolean safeEnd,
    String abrasive,
    Length headDiameter,
    Length headLength,
    ShankType shank,
    Length overallLength,
    @Nullable RotationalSpeed maximumSpeed,
    List<Remark> assumed) {
  public InstrumentProperties {
    safeEnd = safeEnd || shape == ShapeFamily.TAPER_SAFE_END;
    assumed = List.copyOf(assumed);
  }

  /** An instrument whose tip cuts and whose abrasive is not given. */
  public InstrumentProperties(
      InstrumentKind kind,
      @Nullable String iso,
      @Nullable String us,
      ShapeFamily shape,
      String shapeName,
      @Nullable GritClass grit,
      @Nullable Integer blades,
      boolean crossCut,
      Length headDiameter,
      Length headLength,
      ShankType shank,
      Length overallLength,
      @Nullable RotationalSpeed maximumSpeed,
      List<Remark> assumed) {
    this(
        kind,
        iso,
        us,
        shape,
        shapeName,
        grit,
        blades,
        crossCut,
        false,
        "",
        headDiameter,
        headLength,
        shank,
        overallLength,
        maximumSpeed,
        assumed);
  }

  /** True where the end removes material when pressed along the axis. */
  public boolean cutsAtTip() {
    return shape.cutsAtTip() && !safeEnd;
  }

  /** How far the tip stands out of the chuck. */
  public Length overhang() {
    return new Length(Math.max(0, overallLength.metres() - shank.heldLength().metres()));
  }
}
