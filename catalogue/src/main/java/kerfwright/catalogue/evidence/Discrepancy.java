package kerfwright.catalogue.evidence;

/**
 * How far published figures of a family lie off the models, on the family's scale.
 *
 * <p>scaled(published) = scaled(model) + b(study) + e, b = between t(freedom), e = within N(0, 1)
 *
 * @param family which figures
 * @param between scale of what a whole study lies off: its laboratory, and what the model leaves
 *     out
 * @param freedom degrees of freedom of the t distribution of b; few studies, few degrees
 * @param within standard deviation of one figure about its study's others
 * @param studies calibration studies this rests on
 * @param figures their figures
 */
public record Discrepancy(
    Family family, double between, double freedom, double within, int studies, int figures) {
  public Discrepancy {
    if (!(between > 0 && within > 0 && freedom >= 1)) {
      throw new IllegalArgumentException(
          family + ": between " + between + ", within " + within + ", freedom " + freedom);
    }
  }
}
